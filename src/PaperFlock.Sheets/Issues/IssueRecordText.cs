using System.Collections.Immutable;
using System.Globalization;
using System.IO.Hashing;
using System.Text;
using NodaTime;
using NodaTime.Text;

namespace PaperFlock.Sheets.Issues;

/// <summary>
/// The record as text a person can read: one line a leaf, its rows indented below it, and a check sum of it all on the last line, so that
/// a record that was altered or cut short is known for what it is.
/// </summary>
/// <remarks>
/// Parts of a line are parted by <c> | </c>; a last day follows after <c> @</c>. A backslash stands before any of <c>\ | @</c> in the words themselves.
/// Lines end with LF; a record that came back with CRLF is read all the same.
/// </remarks>
public static class IssueRecordText
{
    private const string First = "PaperFlock issues, format 1";

    public static string Write(IssueRecord record)
    {
        using var bytes = new MemoryStream();
        Write(record, bytes);
        return Encoding.UTF8.GetString(bytes.GetBuffer(), 0, (int)bytes.Length);
    }

    /// <summary>In UTF-8, line by line: of a large flock it is some millions of bytes.</summary>
    public static void Write(IssueRecord record, Stream output)
    {
        var text = new StringBuilder();
        var hash = new XxHash128();
        Line(First);
        Line("# What has been printed of this pack, leaf by leaf. `paperflock pack --changed` holds the flock against it.");
        Line("# Leave it as it is: if it is lost or altered, the next issue prints every leaf again, and nothing worse.");
        Line(Join("pack", record.Pack));
        Line(Join("paper", record.Paper));
        Line(Join("files", record.Split ? "split" : "one"));
        foreach (var issue in record.Issues)
        {
            Line(Join("issue", Number(issue.Number), Iso(issue.On), issue.What));
        }

        foreach (var (leaf, issue, replaces) in record.Leaves)
        {
            Line(Join("leaf", leaf.Id, $"issue {Number(issue)}", replaces is { } old ? $"replaces {Number(old)}" : "replaces none", leaf.Fingerprint, leaf.Label, leaf.Title) + At(leaf.Last));
            foreach (var row in leaf.Rows)
            {
                text.Append("  ");
                Part(row.Key, row.Last);
                foreach (var cell in row.Cells)
                {
                    text.Append(" | ");
                    Part(cell.Words, cell.Last);
                }

                text.Append('\n');
            }

            PassOn();
        }

        PassOn();
        Line(Join("sum", Convert.ToHexString(hash.GetCurrentHash())));
        PassOn();

        void Line(string line) => text.Append(line).Append('\n');

        void Part(string words, LocalDate? last) => Escape(words, text).Append(At(last));

        void PassOn()
        {
            var bytes = Encoding.UTF8.GetBytes(text.ToString());
            hash.Append(bytes);
            output.Write(bytes);
            text.Clear();
        }
    }

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
            return Parse(plain[..end].Split('\n', StringSplitOptions.RemoveEmptyEntries));
        }
        catch (Exception e) when (e is FormatException or ArgumentOutOfRangeException or OverflowException or UnparsableValueException)
        {
            // The sum holds, so it was written by a program that writes another format under this one's name.
            return null;
        }
    }

    private static IssueRecord? Parse(string[] lines)
    {
        string? pack = null, paper = null, files = null;
        var issues = ImmutableArray.CreateBuilder<IssueLine>();
        var leaves = ImmutableArray.CreateBuilder<IssuedLeaf>();
        for (var i = 1; i < lines.Length;)
        {
            var parts = Split(lines[i++]);
            switch (parts[0].Words)
            {
                case ['#', ..]:
                    break;
                case "pack":
                    pack = parts[1].Words;
                    break;
                case "paper":
                    paper = parts[1].Words;
                    break;
                case "files":
                    files = parts[1].Words;
                    break;
                case "issue":
                    issues.Add(new IssueLine(Number(parts[1].Words), Day(parts[2].Words), parts[3].Words));
                    break;
                case "leaf":
                    var rows = ImmutableArray.CreateBuilder<LeafRow>();
                    for (; i < lines.Length && lines[i].StartsWith("  ", StringComparison.Ordinal); i++)
                    {
                        var cells = Split(lines[i][2..]);
                        rows.Add(new LeafRow(cells[0].Words, [.. cells.Skip(1)], cells[0].Last));
                    }

                    var leaf = new Leaf(parts[1].Words, parts[5].Words, parts[6].Words, parts[6].Last, rows.ToImmutable());
                    if (leaf.Fingerprint != parts[4].Words)
                    {
                        return null;
                    }

                    var replaces = parts[3].Words["replaces ".Length..];
                    leaves.Add(new IssuedLeaf(leaf, Number(parts[2].Words["issue ".Length..]), replaces == "none" ? null : Number(replaces)));
                    break;
                default:
                    return null;
            }
        }

        return pack is null || paper is null || files is null || issues.Count == 0 ? null : new IssueRecord(pack, paper, files == "split", issues.ToImmutable(), leaves.ToImmutable());
    }

    private static string Join(params string[] parts) => string.Join(" | ", parts.Select(p => Escape(p, new StringBuilder()).ToString()));

    private static StringBuilder Escape(string words, StringBuilder text)
    {
        foreach (var c in words)
        {
            if (c is '\\' or '|' or '@')
            {
                text.Append('\\');
            }

            text.Append(c is '\n' or '\r' ? ' ' : c);
        }

        return text;
    }

    private static string At(LocalDate? day) => day is { } d ? $" @{Iso(d)}" : string.Empty;

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

    private static string Sum(string text) => Convert.ToHexString(XxHash128.Hash(Encoding.UTF8.GetBytes(text)));

    private static string Iso(LocalDate day) => LocalDatePattern.Iso.Format(day);

    private static LocalDate Day(string text) => LocalDatePattern.Iso.Parse(text).Value;

    private static string Number(int value) => value.ToString(CultureInfo.InvariantCulture);

    private static int Number(string text) => int.Parse(text, NumberStyles.None, CultureInfo.InvariantCulture);
}
