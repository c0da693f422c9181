using System.Text;
using PaperFlock.Flocks.Reading;

namespace PaperFlock.Fuzz;

/// <summary>Makes a case from a seed and its number alone, so that any one can be made again by itself.</summary>
/// <param name="good">Flock files with nothing wrong: as likely to be taken as the bad ones, few as they are, for the reader gets furthest in them.</param>
/// <param name="bad">Flock files with something wrong.</param>
/// <param name="pack">A PDF with a record in it.</param>
internal sealed class CaseMaker(IReadOnlyList<byte[]> good, IReadOnlyList<byte[]> bad, byte[] pack)
{
    /// <summary>One case in so many is huge: each takes as long as hundreds of others.</summary>
    private const int HugeEvery = 5000;

    /// <summary>Nor is a PDF read in no time.</summary>
    private const int PdfEvery = 50;

    private const int ListEvery = 20;

    private static readonly byte[] List = "tag;name;weight;condition;scan;marks\r\nZZ 0123456 00901;Bracken;72 kg;3;2;2026-08-14\r\nZZ 0123456 00902;Campion;70,5;2.5;1;15/08/2026\r\nZZ-0123456-00903;\"Sorrel; the old one\";;;;\r\n"u8.ToArray();

    private static readonly byte[] Marks = "\n\r\t :-#[]{}\"'&*!|>%@`,?~0"u8.ToArray();

    private static readonly string[] Words =
    [
        "", "~", "null", "no", "on", "Yes", "true", "0123", "0o17", "0x10", "12:30", "1e3", ".inf", ".nan", "-0", "10/08/2026", "10 Aug 2026", "2026-02-30", "\u201c2026-08-10\u201d",
        "\u20182026-08-10\u2019", "2026\u201308\u201310", "2026-08-10\u00a0", "2026-08-\u200b10", "\"2026-08-10", "7,5", "72 kg", "1e400 kg", "99999999999999999999999999999999 kg",
        "[1", "[]", "{}", "{a: b}", "[[[]]]", "&a 1", "*a", "!!int 3", "!x", "|", ">-", "<<: *a", "? x", "@", "`", "%", "- -", "# remark", "'", "\ud83d\udc11", "\ufeff", "\0", "\u2028", "\u0085", "Mars/Base",
    ];

    private static readonly string[] Repeats =
    [
        "[", "{", "{a: ", "- ", "? ", "a:\n", "*a ", "&a ", "!", "\"", "'", "\n", "\t", " ", "x", "\u7f8a", "\r", "#", "- tag: ZZ 1\n", "  - tag: [1]\n", "x: 1\n", "- &a [*a, *a]\n", "[1, ", "\ud83d\udc11", "---\n", "%",
    ];

    public (CaseKind Kind, byte[] Bytes) Make(int seed, int number)
    {
        var random = new Random(HashOf(seed, number));
        if (number % HugeEvery == HugeEvery - 1)
        {
            return (CaseKind.Huge, Huge(random));
        }

        if (number % PdfEvery == PdfEvery - 2)
        {
            return (CaseKind.Pdf, Damaged(pack, random));
        }

        if (number % ListEvery == ListEvery - 3)
        {
            return (CaseKind.List, random.Next(2) == 0 ? Damaged(List, random) : Cells(random));
        }

        var kind = (CaseKind)random.Next((int)CaseKind.Huge);
        return (kind, kind switch
        {
            CaseKind.Noise => Noise(random),
            CaseKind.Marks => Some(random, 200, () => Marks[random.Next(Marks.Length)]),
            CaseKind.Damaged => Damaged(Sample(random), random),
            CaseKind.Spliced => Spliced(random),
            CaseKind.Clumsy => Clumsy(random),
            _ => Encoding.UTF8.GetBytes(ValidFlock.Make(random)),
        });
    }

    /// <summary>Neighbouring numbers must not give kindred cases. The finaliser of SplitMix64, from memory.</summary>
    private static int HashOf(int seed, int number)
    {
        unchecked
        {
            var mixed = ((ulong)(uint)seed << 32 | (uint)number) + 0x9E3779B97F4A7C15UL;
            mixed = (mixed ^ (mixed >> 30)) * 0xBF58476D1CE4E5B9UL;
            mixed = (mixed ^ (mixed >> 27)) * 0x94D049BB133111EBUL;
            return (int)(mixed ^ (mixed >> 31));
        }
    }

    private static byte[] Some(Random random, int most, Func<byte> next) => [.. Enumerable.Range(0, random.Next(most + 1)).Select(_ => next())];

    private static byte[] Noise(Random random)
    {
        var bytes = new byte[random.Next(400)];
        random.NextBytes(bytes);
        return bytes;
    }

    private byte[] Sample(Random random)
    {
        var from = random.Next(2) == 0 ? good : bad;
        return from[random.Next(from.Count)];
    }

    private static byte[] Cells(Random random)
    {
        var rows = Encoding.UTF8.GetString(List).Split("\r\n").Select(row => row.Split(';')).ToArray();
        for (var slips = random.Next(1, 6); slips > 0; slips--)
        {
            var row = rows[random.Next(rows.Length)];
            row[random.Next(row.Length)] = Words[random.Next(Words.Length)];
        }

        return Encoding.UTF8.GetBytes(string.Join("\r\n", rows.Select(row => string.Join(random.Next(30) == 0 ? '\t' : ';', row))));
    }

    private static byte[] Damaged(byte[] sample, Random random)
    {
        var file = sample.ToList();
        for (var slips = random.Next(1, 9); slips > 0 && file.Count > 1; slips--)
        {
            var at = random.Next(file.Count);
            var odd = random.Next(2) == 0 ? Marks[random.Next(Marks.Length)] : (byte)random.Next(256);
            switch (random.Next(5))
            {
                case 0:
                    file[at] = odd;
                    break;
                case 1:
                    file.Insert(at, odd);
                    break;
                case 2:
                    file.RemoveAt(at);
                    break;
                case 3:
                    file.RemoveRange(at, Math.Min(random.Next(80), file.Count - at));
                    break;
                default:
                    file.InsertRange(at, file.GetRange(at, Math.Min(random.Next(200), file.Count - at)));
                    break;
            }
        }

        return [.. file];
    }

    private byte[] Spliced(Random random)
    {
        var text = new StringBuilder();
        for (var pieces = random.Next(1, 7); pieces > 0; pieces--)
        {
            var lines = Encoding.UTF8.GetString(Sample(random)).Split('\n');
            var from = random.Next(lines.Length);
            text.AppendJoin('\n', lines.Skip(from).Take(random.Next(1, 30))).Append(random.Next(8) == 0 ? "\r\n" : "\n");
        }

        return Encoding.UTF8.GetBytes(text.ToString());
    }

    private byte[] Clumsy(Random random)
    {
        var lines = Encoding.UTF8.GetString(Sample(random)).Split('\n');
        for (var slips = random.Next(1, 5); slips > 0; slips--)
        {
            var at = random.Next(lines.Length);
            var colon = lines[at].IndexOf(':', StringComparison.Ordinal);
            lines[at] = $"{(colon < 0 ? lines[at] : lines[at][..(colon + 1)])} {Words[random.Next(Words.Length)]}";
        }

        return Encoding.UTF8.GetBytes(string.Join('\n', lines));
    }

    private byte[] Huge(Random random)
    {
        var piece = Encoding.UTF8.GetBytes(Repeats[random.Next(Repeats.Length)]);
        var head = random.Next(2) == 0 ? [] : Sample(random);
        var size = random.Next(FlockReader.MostBytes / 2, FlockReader.MostBytes + 2);
        var file = new byte[size];
        head.AsSpan(0, Math.Min(head.Length, size)).CopyTo(file);
        for (var at = head.Length; at < size; at += piece.Length)
        {
            piece.AsSpan(0, Math.Min(piece.Length, size - at)).CopyTo(file.AsSpan(at));
        }

        return file;
    }
}
