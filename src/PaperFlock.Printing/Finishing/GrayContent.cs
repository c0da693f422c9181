using System.Buffers;
using System.IO.Compression;
using PdfSharp.Pdf;

namespace PaperFlock.Printing.Finishing;

/// <summary>
/// Says black as one grey (DeviceGray 0) where Skia says it as three colours, so that a colour printer uses its black and
/// nothing else. See 8.6.4.2 and Table 74 for the operators. Not thread-safe: one for each thread.
/// </summary>
internal sealed class GrayContent : IDisposable
{
    private static readonly SearchValues<byte> EndsOfWord = SearchValues.Create(" \t\r\n\f\0()<>[]{}/%"u8);

    private const int CopiedAtOnce = 1 << 14;

    // Kept from page to page: a pack has hundreds.
    private readonly MemoryStream _painted = new();
    private readonly MemoryStream _grey = new();
    private readonly MemoryStream _compressed = new();

    /// <summary>Rewrites a page's content stream in place, compressed.</summary>
    public void Rewrite(PdfDictionary contents)
    {
        var stream = contents.Stream!;
        // Put together first: the compressor is called once for a page, and not once for each word.
        _grey.SetLength(0);
        Rewrite(Painted(contents), _grey);
        _compressed.SetLength(0);
        using (var zip = new ZLibStream(_compressed, CompressionLevel.Optimal, leaveOpen: true))
        {
            zip.Write(_grey.GetBuffer(), 0, (int)_grey.Length);
        }

        stream.Value = _compressed.ToArray();
        contents.Elements.SetName("/Filter", "/FlateDecode");
        contents.Elements.Remove("/DecodeParms");
    }

    /// <summary>What the painter wrote. It leaves a few words as they are, since compressing would not make them fewer.</summary>
    private ReadOnlySpan<byte> Painted(PdfDictionary contents)
    {
        var bytes = contents.Stream!.Value;
        if (!contents.Elements.ContainsKey("/Filter"))
        {
            return bytes;
        }

        _painted.SetLength(0);
        using (var unzip = new ZLibStream(new MemoryStream(bytes), CompressionMode.Decompress))
        {
            unzip.CopyTo(_painted, CopiedAtOnce);
        }

        return _painted.GetBuffer().AsSpan(0, (int)_painted.Length);
    }

    public void Dispose()
    {
        _painted.Dispose();
        _grey.Dispose();
        _compressed.Dispose();
    }

    /// <exception cref="InvalidOperationException">The content paints in a colour.</exception>
    public static void Rewrite(ReadOnlySpan<byte> content, Stream output)
    {
        // Where the last three operands begin and end, newest first: operators follow their operands.
        (int Start, int End) first = default, second = default, third = default;
        var copied = 0;
        for (var at = 0; at < content.Length;)
        {
            var end = EndOfToken(content, at);
            var token = content[at..end];
            if (token.SequenceEqual("rg"u8) || token.SequenceEqual("RG"u8))
            {
                var grey = content[first.Start..first.End];
                if (!grey.SequenceEqual(content[second.Start..second.End]) || !grey.SequenceEqual(content[third.Start..third.End]))
                {
                    throw new InvalidOperationException("a page is painted in colour");
                }

                output.Write(content[copied..third.Start]);
                output.Write(grey);
                output.Write(token[0] == 'r' ? " g"u8 : " G"u8);
                copied = end;
            }

            if (!IsSpace(token[0]))
            {
                (third, second, first) = (second, first, (at, end));
            }

            at = end;
        }

        output.Write(content[copied..]);
    }

    /// <summary>Strings are one token, so that no letter in them is taken for an operator.</summary>
    private static int EndOfToken(ReadOnlySpan<byte> content, int start)
    {
        switch (content[start])
        {
            case (byte)'(':
                return EndOfString(content, start);
            case (byte)'<':
                var close = content[start..].IndexOf((byte)'>');
                return close < 0 ? content.Length : start + close + 1;
            default:
                var length = content[(start + 1)..].IndexOfAny(EndsOfWord);
                var isWord = !EndsOfWord.Contains(content[start]) || content[start] == '/';
                return !isWord ? start + 1 : length < 0 ? content.Length : start + 1 + length;
        }
    }

    private static int EndOfString(ReadOnlySpan<byte> content, int start)
    {
        var depth = 0;
        for (var at = start; at < content.Length; at++)
        {
            switch (content[at])
            {
                case (byte)'\\':
                    at++;
                    break;
                case (byte)'(':
                    depth++;
                    break;
                case (byte)')' when --depth == 0:
                    return at + 1;
                default:
                    break;
            }
        }

        return content.Length;
    }

    private static bool IsSpace(byte value) => value is (byte)' ' or (byte)'\n' or (byte)'\r' or (byte)'\t' or (byte)'\f' or 0;
}
