using System.Text;
using NodaTime.Text;

namespace PaperFlock.Sheets.Issues;

/// <summary>
/// Reads records of format 1, which nobody writes any more: text with one line a leaf, its rows indented below it, and a check sum of it all on the last line.
/// </summary>
/// <remarks>
/// Parts of a line are parted by <c> | </c>; a last day follows after <c> @</c>. A backslash stands before any of <c>\ | @</c> in the words themselves.
/// Lines end with LF; a record that came back with CRLF is read all the same.
/// </remarks>
public static class IssueRecordText
{
    private const string First = "PaperFlock issues, format 1";

    /// <returns>Null when it is not a whole and unaltered record of this format.</returns>
    public static IssueRecord? Read(string text)
    {
        var plain = text.Replace("\r\n", "\n", StringComparison.Ordinal);
        var end = plain.LastIndexOf("sum | ", StringComparison.Ordinal);
        if (end < 0 || !plain.StartsWith(First + "\n", StringComparison.Ordinal) || plain[end..] != $"sum | {Sum(plain[..end])}\n")
        {
            return null;
        }

        try
        {
            return Parse(plain[..end].Split('\n', StringSplitOptions.RemoveEmptyEntries)) is { IsSound: true } record ? record : null;
        }
        catch (Exception e) when (e is FormatException or ArgumentOutOfRangeException or OverflowException or UnparsableValueException)
        {
            // The sum holds, so it was written by a program that writes another format under this one's name.
            return null;
        }
    }

    private static IssueRecord? Parse(string[] lines)
    {
        var (pack, paper, split) = (string.Empty, string.Empty, false);
        var issues = ImmutableArray.CreateBuilder<EarlierIssueLine>();
        var leaves = ImmutableArray.CreateBuilder<IssuedLeaf>();
        for (var i = 1; i < lines.Length;)
        {
            var parts = Split(lines[i++]);
            switch (parts[0].Words)
            {
                case "pack":
                    pack = parts[1].Words;
                    break;
                case "paper":
                    paper = parts[1].Words;
                    break;
                case "files":
                    split = parts[1].Words == "split";
                    break;
                case "issue":
                    issues.Add(new EarlierIssueLine(Number(parts[1].Words), Day(parts[2].Words), parts[3].Words));
                    break;
                case "leaf":
                    var rows = ImmutableArray.CreateBuilder<LeafRow>();
                    for (; i < lines.Length && lines[i].StartsWith("  ", StringComparison.Ordinal); i++)
                    {
                        var cells = Split(lines[i][2..]);
                        rows.Add(new LeafRow(RowKey.Named(RowKind.Earlier, cells[0].Words) with { Last = cells[0].Last }, [.. cells.Skip(1)]));
                    }

                    var replaces = parts[3].Words["replaces ".Length..];
                    leaves.Add(new IssuedLeaf(
                        new Leaf(parts[1].Words, parts[5].Words, parts[6].Words, rows.ToImmutable(), parts[6].Last),
                        Number(parts[2].Words["issue ".Length..]),
                        replaces == "none" ? null : Number(replaces)));
                    break;
            }
        }

        return new EarlierRecord(pack, paper, split, issues.ToImmutable(), leaves.ToImmutable()).ToRecord();
    }

    /// <summary>The parts of a line, each with its last day.</summary>
    private static List<LeafCell> Split(string line)
    {
        var parts = new List<LeafCell>();
        var (words, day) = (new StringBuilder(), (StringBuilder?)null);
        for (var i = 0; i < line.Length; i++)
        {
            if (line[i] == '\\' && i + 1 < line.Length)
            {
                (day ?? words).Append(line[++i]);
            }
            else if (line[i] == '@')
            {
                day = new StringBuilder();
            }
            else if (line[i] == '|')
            {
                Finish();
            }
            else
            {
                (day ?? words).Append(line[i]);
            }
        }

        Finish();
        return parts;

        void Finish()
        {
            parts.Add(new LeafCell(words.ToString().Trim(' '), day is null ? null : Day(day.ToString().Trim(' '))));
            (words, day) = (new StringBuilder(), null);
        }
    }

    /// <summary>FNV-1a, 128 bits wide, in 32 hexadecimal digits: http://www.isthe.com/chongo/tech/comp/fnv/</summary>
    private static string Sum(string text)
    {
        var (sum, prime) = (new UInt128(0x6C62272E07BB0142, 0x62B821756295C58D), new UInt128(1UL << 24, 315));
        foreach (var value in Encoding.UTF8.GetBytes(text))
        {
            sum = unchecked((sum ^ value) * prime);
        }

        return sum.ToString("X32", CultureInfo.InvariantCulture);
    }

    private static LocalDate Day(string text) => LocalDatePattern.Iso.Parse(text).Value;

    private static int Number(string text) => int.Parse(text, NumberStyles.None, CultureInfo.InvariantCulture);
}
