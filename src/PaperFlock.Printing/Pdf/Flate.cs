using System.IO.Compression;

namespace PaperFlock.Printing.Pdf;

/// <summary>The compression of PDF that is named FlateDecode (ISO 32000-1, 7.4.4): deflate with a zlib head.</summary>
internal static class Flate
{
    /// <summary>Of a stream's dictionary.</summary>
    public const string Entry = "/Filter/FlateDecode";

    public static byte[] Compress(ReadOnlySpan<byte> bytes)
    {
        // A page becomes a quarter of what it was.
        using var output = new MemoryStream(bytes.Length / 3);
        using (var zip = new ZLibStream(output, CompressionLevel.Optimal, leaveOpen: true))
        {
            zip.Write(bytes);
        }

        return output.ToArray();
    }
}
