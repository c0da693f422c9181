using System.IO.Compression;

namespace PaperFlock.Pdf.Writing;

/// <summary>The compression of PDF that is named FlateDecode (ISO 32000-1, 7.4.4): deflate with a zlib head.</summary>
internal static class Flate
{
    /// <summary>Of a stream's dictionary.</summary>
    public const string Entry = "/Filter/FlateDecode";

    public static byte[] Compress(ReadOnlySpan<byte> bytes)
    {
        using var compressed = new MemoryStream();
        using (var zip = new ZLibStream(compressed, CompressionLevel.Optimal, leaveOpen: true))
        {
            zip.Write(bytes);
        }

        return compressed.ToArray();
    }

    /// <param name="limit">Bytes beyond which it is not inflated further.</param>
    /// <returns>Null for more than that, however little it was compressed.</returns>
    /// <exception cref="InvalidDataException">The bytes are damaged.</exception>
    public static byte[]? Inflate(ReadOnlyMemory<byte> bytes, int limit)
    {
        using var zip = new ZLibStream(new MemoryStream(bytes.ToArray(), writable: false), CompressionMode.Decompress);
        using var inflated = new MemoryStream();
        var part = new byte[1 << 14];
        try
        {
            int read;
            while ((read = zip.Read(part)) > 0)
            {
                if (inflated.Length + read > limit)
                {
                    return null;
                }

                inflated.Write(part, 0, read);
            }

            return inflated.ToArray();
        }
        catch (IOException e)
        {
            throw new InvalidDataException("the compressed bytes are damaged", e);
        }
    }
}
