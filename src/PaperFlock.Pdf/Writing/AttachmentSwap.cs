using System.Buffers.Binary;
using System.IO.Hashing;
using System.Text.RegularExpressions;

namespace PaperFlock.Pdf.Writing;

/// <summary>Puts another stream in the place of an attachment's in a finished file, and moves all that stands behind it.</summary>
internal static partial class AttachmentSwap
{
    /// <summary>A file of the largest size we read has no more objects.</summary>
    private const int MostObjects = 1 << 20;

    public static ReadOnlySpan<byte> AfterStream => "\nendstream\nendobj\n"u8;

    /// <param name="pdf">Whole, and one of ours.</param>
    /// <param name="start">Where the attachment's object begins.</param>
    /// <param name="end">Where the next one does.</param>
    /// <returns>Null where it is not as we write it.</returns>
    public static byte[]? Of(ReadOnlySpan<byte> pdf, int start, int end, ReadOnlySpan<byte> bytes)
    {
        var tail = pdf.LastIndexOf("startxref\n"u8);
        var table = int.Parse(Encoding.ASCII.GetString(pdf[(tail + "startxref\n".Length)..^"\n%%EOF\n".Length]), CultureInfo.InvariantCulture);
        var attached = Attached().Match(Head(pdf[start..end]));
        var places = Places().Match(Head(pdf[table..tail]));
        if (!attached.Success || !places.Success || end > table)
        {
            return null;
        }

        var (length, objects) = (Number(places, "length"), Number(places, "size"));
        var (before, compressed) = (Head(pdf[table..tail]).Length, Flate.Compress(bytes));
        if (objects > MostObjects || length > tail - table - before || Flate.Inflate(pdf.Slice(table + before, length).ToArray(), CrossReference.Length * objects) is not { } entries)
        {
            return null;
        }

        using var swapped = new MemoryStream(pdf.Length + compressed.Length);
        swapped.Write(pdf[..start]);
        Write($"{attached.Groups["number"]} 0 obj\n<</Length {compressed.Length}{attached.Groups["type"]}{bytes.Length}{attached.Groups["rest"]}");
        swapped.Write(compressed);
        swapped.Write(AfterStream);
        var moved = (int)swapped.Position - end;
        swapped.Write(pdf[end..table]);
        var id = Convert.ToHexString(XxHash128.Hash(swapped.GetBuffer().AsSpan(0, (int)swapped.Position)));
        var shifted = Flate.Compress(Shifted(entries, start, moved));
        Write($"{places.Groups["number"]} 0 obj\n<</Length {shifted.Length}{places.Groups["type"]}{objects}{places.Groups["root"]}/ID[<{id}><{id}>]{Flate.Entry}>>\nstream\n");
        swapped.Write(shifted);
        swapped.Write(AfterStream);
        Write($"startxref\n{table + moved}\n%%EOF\n");
        return swapped.ToArray();

        void Write(FormattableString text) => swapped.Write(Encoding.Latin1.GetBytes(FormattableString.Invariant(text)));
    }

    private static byte[] Shifted(byte[] entries, int after, int by)
    {
        for (var at = 0; at < entries.Length; at += CrossReference.Length)
        {
            var where = entries.AsSpan(at + 1, sizeof(uint));
            if (entries[at] == 1 && BinaryPrimitives.ReadUInt32BigEndian(where) is var place && place > after)
            {
                BinaryPrimitives.WriteUInt32BigEndian(where, (uint)(place + by));
            }
        }

        return entries;
    }

    /// <summary>An object up to where its stream begins.</summary>
    private static string Head(ReadOnlySpan<byte> body) => Encoding.Latin1.GetString(body[..(body.IndexOf(">>\nstream\n"u8) + ">>\nstream\n".Length)]);

    private static int Number(Match match, string group) => int.TryParse(match.Groups[group].ValueSpan, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : int.MaxValue;

    [GeneratedRegex(@"^(?<number>\d+) 0 obj\n<</Length \d+(?<type>/Type/EmbeddedFile/Subtype/[^/<>]+/Params<</Size )\d+(?<rest>>>/Filter/FlateDecode>>\nstream\n)$", RegexOptions.CultureInvariant | RegexOptions.NonBacktracking)]
    private static partial Regex Attached();

    [GeneratedRegex(@"^(?<number>\d+) 0 obj\n<</Length (?<length>\d+)(?<type>/Type/XRef/W\[1 4 2\]/Size )(?<size>\d+)(?<root>/Root \d+ 0 R/Info \d+ 0 R)/ID\[<[0-9A-F]{32}><[0-9A-F]{32}>\]/Filter/FlateDecode>>\nstream\n$", RegexOptions.CultureInvariant | RegexOptions.NonBacktracking)]
    private static partial Regex Places();
}
