using System.IO.Compression;

namespace PaperFlock.Pdf.Writing;

/// <summary>The compression of PDF that is named FlateDecode (ISO 32000-1, 7.4.4): deflate with a zlib head.</summary>
internal static class Flate
{
    /// <summary>Of a stream's dictionary.</summary>
    public const string Entry = "/Filter/FlateDecode";

    public static byte[] Compress(ReadOnlySpan<byte> bytes)
    {
        // A page comes down to about a quarter.
        using var compressed = new MemoryStream(bytes.Length / 4);
        using (var zip = new ZLibStream(compressed, CompressionLevel.Optimal, leaveOpen: true))
        {
            zip.Write(bytes);
        }

        return compressed.ToArray();
    }

    /// <param name="length">What it was before it was compressed.</param>
    /// <returns>Null where the bytes are damaged, or it is not so long.</returns>
    public static byte[]? Inflate(ReadOnlyMemory<byte> bytes, int length)
    {
        using var zip = new ZLibStream(new MemoryStream(bytes.ToArray(), writable: false), CompressionMode.Decompress);
        var inflated = new byte[length];
        try
        {
            return zip.ReadAtLeast(inflated, length, throwOnEndOfStream: false) == length && zip.ReadByte() < 0 ? inflated : null;
        }
        catch (Exception e) when (e is InvalidDataException or IOException)
        {
            return null;
        }
    }
}
