using System.CommandLine;
using PaperFlock.Flocks.Drafting;
using PaperFlock.Flocks.Lists;

namespace PaperFlock.Cli.Commands;

/// <summary>Adds the ewes of a list to a flock file, after those it has, and changes nothing else in it.</summary>
internal static class AddEwesCommand
{
    public const string ListArgument = "LIST.csv";

    /// <summary>Rows named one by one: nobody reads on.</summary>
    private const int MostShown = 60;

    /// <summary>Twice as many characters as a tag may have: more was never one.</summary>
    private const int MostOfATag = 40;

    public static Command Describe(Argument<string> flock, Option<LocalDate?> asOf, Host host)
    {
        var list = new Argument<string>(ListArgument) { Description = "the list: the first row has the headings, and each row after it a ewe" };
        var goodRows = new Option<bool>("--good-rows") { Description = "take the good rows even if others are refused" };
        var tagColumn = new Option<string?>(ListTables.Option) { HelpName = "COLUMN", Description = ListTables.About };
        var ewes = new Command("ewes", "add the ewes of a list (CSV, as a spreadsheet saves it)") { flock, list, goodRows, tagColumn, asOf };
        ewes.SetAction(typed => Run(
            typed.GetRequiredValue(flock), typed.GetRequiredValue(list), typed.GetValue(tagColumn), typed.GetValue(goodRows), FlockLoader.Today(typed.GetValue(asOf), host), host));
        return new Command("add", "add to a flock file what is already in a list") { ewes };
    }

    /// <summary>Tells what is wrong with a list and what became of each row.</summary>
    /// <returns>Null where its ewes may be taken: no row is refused, or the good ones are wanted alone and there are some. Else why not.</returns>
    public static string? Report(string file, EweList list, bool goodRows, Host host)
    {
        DiagnosticsOut.Write(list.Source, list.Found, host);
        var good = list.Good.Length;
        var mayTake = good > 0 && (!list.HasErrors || goodRows);
        var (refused, cells) = (list.Rows.Length - good, list.Rows.Where(r => r.Ewe is not null).Sum(r => r.LeftOut.Length));
        host.Out.WriteLine(
            $"{file}: {ScreenText.Count(mayTake ? good : 0, "row")} taken, {(refused == 0 ? "none" : $"{refused}")} refused{(cells == 0 ? "" : $", {ScreenText.Count(cells, "cell")} left out")}");
        // Those with something to look at come first to a list too long to be read.
        foreach (var row in list.Rows.OrderBy(r => r.Ewe is not null && r.LeftOut.IsEmpty && list.Rows.Length > MostShown).Take(MostShown))
        {
            var fate = row.Ewe is null ? "REFUSED  " : mayTake ? "" : "good, not taken  ";
            var tag = row.Tag.Length <= MostOfATag ? row.Tag : $"{row.Tag[..MostOfATag]}…";
            var who = row.Ewe is null || row.Name is null ? tag : $"{tag}  {row.Name}";
            var without = row.Ewe is null || row.LeftOut.IsEmpty ? "" : $"  without {ScreenText.List(row.LeftOut)}";
            host.Out.WriteLine($"  line {row.Line}: {fate}{who}{without}".TrimEnd());
        }

        if (list.Rows.Length > MostShown)
        {
            host.Out.WriteLine($"  and {list.Rows.Length - MostShown} more");
        }

        return mayTake ? null : $"nothing was taken from {file}{(good > 0 ? ": put the rows right, or take the good ones with --good-rows" : "")}";
    }

    /// <param name="path">As typed, as is <paramref name="listPath"/>.</param>
    /// <param name="goodRows">Rows that are refused do not keep the others out.</param>
    private static int Run(string path, string listPath, string? tagColumn, bool goodRows, Func<DateTimeZone, LocalDate> today, Host host)
    {
        if (FlockLoader.Open(path, InputFile.Read(path, host), today, host) is not { } file)
        {
            return ExitStatus.FlockErrors;
        }

        var bag = new DiagnosticBag();
        var isPrintable = PackMaker.Unprintable(file.Reading).IsEmpty;
        var (csv, table) = ListTables.Open(listPath, tagColumn, EweList.IsKnown, bag, host);
        var list = EweList.Read(csv, table, file.Flock.Season.TupIn.Year, bag, ewes =>
        {
            // A flock that cannot be printed as it is would be no reason against the rows.
            var edit = With(ewes);
            return (edit.Source, [.. edit.Diagnostics, .. isPrintable && edit.File is { } made ? PackMaker.Unprintable(made.Reading) : []]);
        });
        if (Report(listPath, list, goodRows, host) is { } whyNot)
        {
            host.Error.WriteLine(Messages.Complaint(whyNot));
            return ExitStatus.FlockErrors;
        }

        var changed = With(list.Good).File ?? throw new InvalidOperationException("Ewes tried together are refused together.");
        host.Stop.ThrowIfCancellationRequested();
        FlockWriter.Write(path, file, changed, host);

        host.Out.WriteLine($"wrote {path}: {ScreenText.Count(list.Good.Length, "ewe")} added, {changed.Flock.Ewes.Length} in all");
        if (changed.Flock.Ewes.Count(e => e.Tag.StartsWith("____", StringComparison.Ordinal)) is > 0 and var unnamed)
        {
            host.Out.WriteLine($"  {ScreenText.Count(unnamed, "ewe")} without a tag {(unnamed == 1 ? "is" : "are")} still in the file: take the lines `- tag: ____` away if they are the same sheep");
        }

        host.Out.WriteLine(Messages.Next(Messages.Typed("check", path), Messages.Typed("pack", path)));
        return list.HasErrors ? ExitStatus.FlockErrors : ExitStatus.Clean;

        FlockEdit With(IEnumerable<DraftEwe> ewes) => file.Apply(AddToList.Ewes(ewes.Select(e => FlockValue.Section(e.Lines))));
    }
}
