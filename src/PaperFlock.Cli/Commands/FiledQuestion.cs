using PaperFlock.Sheets.Issues;

namespace PaperFlock.Cli.Commands;

/// <summary>Which issue is in the binder: nobody knows but the keeper.</summary>
internal static class FiledQuestion
{
    /// <summary>Asks whoever sits at a keyboard, where the newest issue is not known to be filed; else the newest counts, and that is said.</summary>
    /// <returns>What is known, with the issue to compare with.</returns>
    /// <exception cref="UsageException">None of them is in the binder, or the answers end.</exception>
    public static EarlierIssue Ask(EarlierIssue before, string flock, Host host)
    {
        var record = before.Record!;
        if (record.Filed == record.Last.Number)
        {
            return before;
        }

        if (host.InIsTerminal)
        {
            var filed = Answer(record, before.File!, flock, host);
            return before.ComparedWith(filed) with { Record = record with { Filed = filed } };
        }

        var last = record.Last.Number;
        host.Out.WriteLine($"issue {last}, in {before.File}, is taken to be in your binder: you have not said so yet. "
            + $"If it is, type: {Messages.Program} pack {flock} --printed" + (record.Issues.Length > 1 ? $"; if not, --since {record.Issues[^2].Number} goes by the one before" : ""));
        return before;
    }

    private static int Answer(IssueRecord record, string file, string flock, Host host)
    {
        host.Out.WriteLine($"Which issue is in your binder? {file} knows of these:");
        host.WriteBelow(record.Issues.Select(issue => $"{issue.Number.ToString(CultureInfo.InvariantCulture),3}  {ScreenText.Day(issue.On)}  {issue.What}"));

        while (true)
        {
            var typed = host.Ask("Type its number, or `none` > ") ?? throw new UsageException("the answers end before you have said which issue is in your binder: nothing was written");
            if (typed.Equals("none", StringComparison.OrdinalIgnoreCase))
            {
                throw new UsageException($"then every leaf is to be printed; nothing was written. Type: {Messages.Program} pack {flock}");
            }

            if (int.TryParse(typed, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && record.Find(number) is not null)
            {
                return number;
            }

            host.Out.WriteLine($"  '{typed}' is none of them");
        }
    }
}
