using System.IO.Compression;

namespace PaperFlock.Printing.Pdf;

/// <summary>The compression of PDF that is named FlateDecode (ISO 32000-1, 7.4.4): deflate with a zlib head. Not thread-safe.</summary>
internal sealed class Flate : IDisposable
{
    /// <summary>Of a stream's dictionary.</summary>
    public const string Entry = "/Filter/FlateDecode";

    // Kept from page to page.
    private readonly MemoryStream _compressed = new();

    public byte[] Compress(ReadOnlySpan<byte> bytes)
    {
        _compressed.SetLength(0);
        using (var zip = new ZLibStream(_compressed, CompressionLevel.Optimal, leaveOpen: true))
        {
            zip.Write(bytes);
        }

        return _compressed.ToArray();
    }

    public void Dispose() => _compressed.Dispose();
}
