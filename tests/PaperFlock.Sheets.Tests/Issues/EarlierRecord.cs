using System.Text;
using NodaTime;
using NodaTime.Text;
using PaperFlock.Sheets.Issues;

namespace PaperFlock.Sheets.Tests.Issues;

/// <summary>Writes a record in format 1, as the program did until it kept records as JSON.</summary>
internal static class EarlierRecord
{
    public static string Of(IssueRecord record)
    {
        var text = new StringBuilder("PaperFlock issues, format 1\n# What has been printed of this pack, leaf by leaf.\n");
        Line("pack", record.Pack);
        Line("paper", record.Last.Paper);
        Line("files", record.Last.Split ? "split" : "one");
        foreach (var issue in record.Issues)
        {
            Line("issue", Number(issue.Number), LocalDatePattern.Iso.Format(issue.On), issue.What);
        }

        foreach (var (leaf, issue, replaces) in record.Last.Leaves)
        {
            var title = Escape(leaf.Title) + At(leaf.Last);
            text.Append(CultureInfo.InvariantCulture, $"leaf | {Escape(leaf.Id)} | issue {issue} | replaces {(replaces is { } old ? Number(old) : "none")} | {new string('0', 32)} | {Escape(leaf.Label)} | {title}\n");
            foreach (var row in leaf.Rows)
            {
                text.Append("  ").Append(Escape(row.Key.Name)).Append(At(row.Key.Last));
                foreach (var cell in row.Cells)
                {
                    text.Append(" | ").Append(Escape(cell.Words)).Append(At(cell.Last));
                }

                text.Append('\n');
            }
        }

        return WithSum(text.ToString());

        void Line(params string[] parts) => text.Append(string.Join(" | ", parts.Select(Escape))).Append('\n');
    }

    public static string WithSum(string text) => $"{text}sum | {Fnv1a(Encoding.UTF8.GetBytes(text))}\n";

    private static string Escape(string words) => words.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("|", "\\|", StringComparison.Ordinal).Replace("@", "\\@", StringComparison.Ordinal);

    private static string At(LocalDate? day) => day is { } d ? $" @{LocalDatePattern.Iso.Format(d)}" : "";

    private static string Number(int value) => value.ToString(CultureInfo.InvariantCulture);

    /// <summary>Offset basis and prime of 128 bits as RFC 9923 gives them.</summary>
    private static string Fnv1a(byte[] bytes)
    {
        var prime = (UInt128.One << 88) + 0x13B;
        var sum = UInt128.Parse("6C62272E07BB014262B821756295C58D", NumberStyles.HexNumber, CultureInfo.InvariantCulture);
        foreach (var value in bytes)
        {
            sum = unchecked((sum ^ value) * prime);
        }

        return sum.ToString("X32", CultureInfo.InvariantCulture);
    }
}
