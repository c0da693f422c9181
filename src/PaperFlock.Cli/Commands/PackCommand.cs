using System.CommandLine;
using PaperFlock.Cli.Pictures;
using PaperFlock.Planning;
using PaperFlock.Sheets;

namespace PaperFlock.Cli.Commands;

/// <summary>Makes the pack and writes it; of many flocks, each on its own.</summary>
internal static class PackCommand
{
    /// <summary>An A4 page is then 992 by 1403 dots: all of it on a screen, and the small print still to be read.</summary>
    private const double PictureDotsPerInch = 120;

    public static Command Describe(Argument<string[]> flocks, Option<string> into, Option<bool> overwrite, Option<LocalDate?> asOf, Host host)
    {
        var sheets = new Option<string[]>("--sheets")
        {
            HelpName = "a,b,…",
            Description = $"print only some, into a file named by them: any code at the foot of a page, such as CARD-00101, or all of a kind: {string.Join(", ", SheetChoice.Names)}",
            CustomParser = TypedValues.Sheets,
        };
        var from = CommandLine.Day("--from", "first day of a sitter's pack: only the leaves for those days");
        var to = CommandLine.Day("--to", "last day of a sitter's pack, included");
        var split = new Option<bool>("--split") { Description = "a PDF for each way of printing: binder, planner, pinned, cards, logs" };
        var changed = new Option<bool>("--changed") { Description = "only leaves that differ from those in your binder, with a list of what to take out and put in" };
        var since = new Option<string>("--since") { HelpName = "N|FILE.pdf", Description = "only leaves that differ from those of that issue, by its number or in its file" };
        var printed = new Option<bool>("--printed") { Description = "say that the newest issue, or that of --since, is in your binder; makes no pack" };
        var dryRun = new Option<bool>("--dry-run") { Description = "with --changed or --since: says what would be printed and why, and writes nothing" };
        var look = new Option<bool>("--look") { Description = "a draft to look at, marked so on every page; it is no issue" };
        var png = new Option<bool>("--png") { Description = "a picture of every page as well" };
        var pack = new Command("pack", "make the pack, a PDF to print") { flocks, into, sheets, from, to, split, changed, since, printed, dryRun, look, png, overwrite, asOf };
        pack.SetAction(typed =>
        {
            var words = SheetChoice.Read(typed.GetValue(sheets) ?? []);
            var options = new PackOptions(
                typed.GetValue(into),
                new PackRequest(words.Sheets, null, typed.GetValue(split), typed.GetValue(changed) || (typed.GetValue(since) is not null && !typed.GetValue(printed))) { Codes = words.Codes, Draft = typed.GetValue(look) },
                typed.GetValue(png),
                typed.GetValue(asOf),
                typed.GetValue(dryRun))
            {
                Since = typed.GetValue(since),
                Printed = typed.GetValue(printed),
                Overwrite = typed.GetValue(overwrite),
            };
            options = options with { Request = options.Request with { Days = Days(typed.GetValue(from), typed.GetValue(to), options.Request) } };
            var files = FlockFiles.Find(typed.GetRequiredValue(flocks), host);
            if (WhyNotTogether(options, files.Length) is { } whyNot)
            {
                throw new UsageException(whyNot);
            }

            return Run(files, options, host);
        });
        return pack;
    }

    private static string? WhyNotTogether(PackOptions options, int flocks)
    {
        var request = options.Request;
        return request is { Changed: true, IsOfAll: false } ? "--changed and --since are of the whole pack: leave out --sheets, --from and --to"
            : request is { Changed: true, Draft: true } ? "a draft is of the whole pack or of some sheets: leave out --look, and see --dry-run for what would change"
            : options.DryRun && !request.Changed ? "--dry-run goes with --changed or --since"
            : options.Printed && (request.Changed || request.Draft || !request.IsOfAll || request.Split || options.Pictures) ? "--printed makes no pack: it goes with --since alone"
            : options.Since is { } since && !int.TryParse(since, NumberStyles.None, CultureInfo.InvariantCulture, out _) && flocks > 1 ? "--since FILE.pdf is of one flock: name one flock file"
            : null;
    }

    /// <summary>What was written, how much paper it takes, and how to print it.</summary>
    public static void Tell(PackDocument document, string file, Host host)
    {
        host.Out.WriteLine($"wrote {file}: {PrintAdvice.Size(document)}");
        TellHowToPrint(document, file, host);
    }

    private static int Run(ImmutableArray<string> files, PackOptions options, Host host)
    {
        var outputs = files.ToDictionary(f => f, f => new PackPaths(f, options.Out, host), StringComparer.Ordinal);
        PackPaths.RefuseClashes(outputs.Values, PackFileNames.Suffixes(options.Request));
        var holdings = new Dictionary<string, (string Holding, string File)>(StringComparer.Ordinal);
        return ManyFlocks.Run("pack", files, host, "pack", "made", file => Make(outputs[file], options, withAdvice: files.Length == 1, holdings, host));
    }

    /// <param name="withAdvice">How to print it is said too: of many packs nobody would read that.</param>
    /// <param name="holdings">Of the packs made so far in this run, by what stands at the foot of their pages.</param>
    private static FlockResult Make(PackPaths output, PackOptions options, bool withAdvice, Dictionary<string, (string Holding, string File)> holdings, Host host)
    {
        var planned = FlockLoader.Plan(output.Flock, options.AsOf, forPaper: true, host);
        if (planned.Plan is not { } plan)
        {
            return new FlockResult(ExitStatus.FlockErrors);
        }

        RefuseAnotherHoldingsMark(plan, output.Flock, holdings);
        var (status, sheets) = Make(plan, output, options, withAdvice, host);
        return new FlockResult(status, plan, planned.Diagnostics.Length, sheets);
    }

    /// <exception cref="UsageException">Pages of two holdings would bear one mark, and one might be filed in the binder of the other.</exception>
    private static void RefuseAnotherHoldingsMark(SeasonPlan plan, string file, Dictionary<string, (string Holding, string File)> holdings)
    {
        var (id, holding) = (PackMaker.IdOf(plan), plan.Flock.Holding.Name);
        if (holdings.TryAdd(id, (holding, file)) || holdings[id].Holding == holding)
        {
            return;
        }

        throw new UsageException(
            $"{file}: the pages of {holding} would bear {id}, as those of {holdings[id].Holding} do ({holdings[id].File}), and could get into the wrong binder; "
                + $"nothing was written: add a line such as `code: {id[..id.IndexOf('-', StringComparison.Ordinal)]}2` under `holding` in one of them");
    }

    /// <returns>How many sheets of paper were written; null for none to be written.</returns>
    private static (int Status, int? Sheets) Make(SeasonPlan plan, PackPaths output, PackOptions options, bool withAdvice, Host host)
    {
        var before = Before(plan, output, options, host);
        if (options.Printed)
        {
            return (FileIssue(output, before, before.Since?.Number ?? before.Record?.Last.Number, host), null);
        }

        if (before is { IsCountLost: true, Record: null } && options is { Overwrite: false, Request: { IsOfAll: true, Draft: false } })
        {
            throw new UsageException(string.Join('\n', [.. before.Troubles, "so nobody can say which issue this would be; nothing was written: name the newest one with --since FILE.pdf, or begin again at issue 1 with --overwrite"]));
        }

        using var staged = new StagedFiles();
        var pack = Progress.Show(host, progress =>
        {
            var (done, all) = (0, PackSheets.All.Count(options.Request.Wants));
            var made = PackMaker.Make(plan, options.Request with { Begins = _ => progress.Begin(Messages.Composing, done++, all) }, before);
            if (!options.DryRun)
            {
                Stage(made, plan.Flock.Holding.Name, output, options, staged, progress, host);
            }

            return made;
        });
        staged.PutInPlace(host.Stop);

        foreach (var said in PackMaker.Changes(pack, before, options.DryRun))
        {
            host.Out.WriteLine(said);
        }

        if (options.DryRun || pack.Documents.IsEmpty)
        {
            // What was answered holds though there is nothing to print.
            return (!options.DryRun && before.Record is { Filed: { } filed } && filed == before.Since?.Number && options.Since is null ? FileIssue(output, before, filed, host) : ExitStatus.Clean, 0);
        }

        foreach (var document in pack.Documents)
        {
            host.Out.WriteLine($"wrote {output.Of(document).Shown}: {PrintAdvice.Size(document)}");
        }

        if (options.Pictures)
        {
            host.Out.WriteLine($"wrote {ScreenText.Count(pack.Documents.Sum(d => d.Pages.Count()), "picture")} into {output.Of(PackPaths.Pages).Shown}");
        }

        if (withAdvice)
        {
            foreach (var document in pack.Documents)
            {
                TellHowToPrint(document, output.Of(document).Shown, host);
            }
        }

        if (withAdvice && pack.Issue.Record is { } record && record.Filed != record.Last.Number)
        {
            host.Out.WriteLine();
            host.Out.WriteLine($"Once issue {record.Last.Number} is in your binder, say so: {Messages.Program} pack {output.Flock} --printed");
        }

        return (ExitStatus.Clean, pack.Documents.Sum(PrintAdvice.Sheets));
    }

    /// <summary>What is known of earlier issues, with the one to compare with.</summary>
    /// <exception cref="UsageException">An issue is needed and there is none.</exception>
    private static EarlierIssue Before(SeasonPlan plan, PackPaths output, PackOptions options, Host host)
    {
        var found = PackMaker.Earlier(plan, output.Earlier());
        if (options.Since is { } since)
        {
            if (int.TryParse(since, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var typed) && typed < 1)
            {
                throw new UsageException($"--since wants the number of an issue, from 1 on, or the name of its file, not {since}; nothing was written");
            }

            return int.TryParse(since, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && found.Record is not null ? found.ComparedWith(number)
                : number == 0 ? found.ComparedWith(plan, PackPaths.Earlier(since, host))
                : throw NoneFound(plan, output, found);
        }

        return !options.Request.Changed && !options.Printed ? found
            : found.Record is null ? throw NoneFound(plan, output, found)
            : options.Printed || options.DryRun && !host.InIsTerminal && found.Record.Filed == found.Record.Last.Number ? found
            : FiledQuestion.Ask(found, output.Flock, host);
    }

    private static UsageException NoneFound(SeasonPlan plan, PackPaths output, EarlierIssue found) => new(string.Join(
        '\n',
        [
            .. found.Troubles,
            $"no earlier issue of {plan.Flock.Holding.Name} was found {output.Where}, so nobody can say what has been printed; nothing was written",
            $"if it is elsewhere, name the newest one: {Messages.Program} pack {output.Flock} --since FILE.pdf",
            $"if there is none, make a whole pack: {Messages.Program} pack {output.Flock}",
        ]));

    /// <summary>Writes into the newest issue which one is in the binder.</summary>
    private static int FileIssue(PackPaths output, EarlierIssue before, int? number, Host host)
    {
        if (before is not { File: { } file, Record: { } record } || number is not { } filed || record.Find(filed) is not { } issue)
        {
            throw new UsageException($"{before.SinceFile ?? output.Flock}: that issue is none of those that {before.File ?? "this folder"} knows of; nothing was written");
        }

        var pdf = InputFile.Read(file, host, EarlierFile.MostBytes + 1);
        var said = PackMaker.Filed(pdf, record, filed) ?? throw new UsageException($"{file} is not as this program wrote it, so nothing can be written into it: make the next issue first");
        if (said.AsSpan().SequenceEqual(pdf))
        {
            host.Out.WriteLine($"{file} says already that issue {filed} of {ScreenText.Day(issue.On)} is in your binder");
            return ExitStatus.Clean;
        }

        StagedFiles.Write(new OutputFile(host.FullPath(file), file), said, host);
        host.Out.WriteLine($"wrote {file}: issue {filed} of {ScreenText.Day(issue.On)} is in your binder now; the pages are as they were");
        return ExitStatus.Clean;
    }

    private static void Stage(Pack pack, string holding, PackPaths output, PackOptions options, StagedFiles staged, Progress progress, Host host)
    {
        if (!options.Overwrite)
        {
            foreach (var document in pack.Documents)
            {
                PackPaths.RefuseToReplace(output.Of(document), there => PackFileNames.WhyNotReplace(there, holding), host);
            }
        }

        if (options.Pictures)
        {
            var pages = pack.Documents.SelectMany(d => d.Pages).Zip(PackFileNames.Pictures(pack.Documents)).ToList();
            foreach (var (i, (page, name)) in pages.Index())
            {
                progress.Begin($"painting {name}", i, pages.Count);
                staged.Add(output.Picture(name), PngPrinter.Paint(page, PictureDotsPerInch));
            }
        }

        // The first remembers the issue, so it is put in place last: until then the pack is the old one, and the next run makes all of it again.
        foreach (var (i, document) in pack.Documents.Reverse().Index())
        {
            var file = output.Of(document);
            progress.Begin($"printing {file.Shown}", i, pack.Documents.Length);
            staged.Add(file, document.ToPdf());
        }
    }

    private static void TellHowToPrint(PackDocument document, string file, Host host)
    {
        host.Out.WriteLine();
        host.Out.WriteLine($"To print {file}:");
        foreach (var line in PrintAdvice.HowTo(document))
        {
            host.Out.WriteLine($"  {line}");
        }
    }

    /// <summary>The days of a sitter's pack, both ends included; null for the whole season.</summary>
    private static DateInterval? Days(LocalDate? from, LocalDate? to, PackRequest request) => (from, to) switch
    {
        (null, null) => null,
        (null, _) => throw new UsageException("--to wants --from as well: the first day of the sitter's pack, such as --from 2026-12-27"),
        (_, null) => throw new UsageException("--from wants --to as well: the last day of the sitter's pack, such as --to 2027-01-02"),
        ({ } first, { } last) when last < first => throw new UsageException($"--from {ScreenText.Day(first)} comes after --to {ScreenText.Day(last)}: put the first day after --from"),
        ({ } first, { } last) => SheetChoice.WhyNotForDays(request) is { } whyNot ? throw new UsageException(whyNot) : new DateInterval(first, last),
    };

    /// <param name="Out">Folder for what is written, as typed; null for the folder of each flock file.</param>
    /// <param name="DryRun">Says what an issue of changed leaves would be, and writes nothing.</param>
    private sealed record PackOptions(string? Out, PackRequest Request, bool Pictures, LocalDate? AsOf, bool DryRun)
    {
        /// <summary>An issue to compare with, or to file, as typed: its number or its file.</summary>
        public string? Since { get; init; }

        /// <summary>An issue is filed, and none made.</summary>
        public bool Printed { get; init; }

        /// <summary>Whatever is there is replaced.</summary>
        public bool Overwrite { get; init; }
    }
}
