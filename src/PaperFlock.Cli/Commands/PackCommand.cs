using System.Collections.Immutable;
using NodaTime;
using PaperFlock.Cli.Files;
using PaperFlock.Cli.Many;
using PaperFlock.Cli.Printing;
using PaperFlock.Cli.Translating;
using PaperFlock.Cli.Wiring;
using PaperFlock.Languages;
using PaperFlock.Planning;
using PaperFlock.Sheets;

namespace PaperFlock.Cli.Commands;

/// <param name="Out">Folder for what is written, as typed; null for the folder of each flock file.</param>
/// <param name="Request">Which sheets, for which days, in one file or several.</param>
/// <param name="Pictures">A picture of every page as well.</param>
/// <param name="AsOf">Null for today at each holding.</param>
/// <param name="Words">File of a translator's words, as typed; null for English.</param>
/// <param name="DryRun">Says what an issue of changed leaves would be, and writes nothing.</param>
internal sealed record PackWishes(string? Out, PackRequest Request, bool Pictures, LocalDate? AsOf, string? Words = null, bool DryRun = false);

/// <summary>Makes the pack and writes it, whole or not at all; of many flocks, each on its own.</summary>
internal static class PackCommand
{
    /// <summary>An A4 page is then 992 by 1403 dots: all of it on a screen, and the small print still to be read.</summary>
    private const double PictureDotsPerInch = 120;

    /// <summary>How often a pack is made anew because another run has written the same one meanwhile.</summary>
    private const int MostAttempts = 20;

    /// <param name="files">As they are to be shown; never empty.</param>
    /// <exception cref="UsageException">What is asked for cannot be had: of many flocks, not even for one of them.</exception>
    public static int Run(ImmutableArray<string> files, PackWishes wishes, Surroundings surroundings, ILine line)
    {
        if (TrialLanguage.Read(wishes.Words, surroundings, line) is not { } language)
        {
            return ExitStatus.FlockErrors;
        }

        ImmutableArray<PackPaths> outputs = [.. files.Select(f => new PackPaths(f, wishes.Out, surroundings, language))];
        if (files.Length == 1)
        {
            return Make(outputs[0], wishes, language, surroundings, line, PrintAdvice.For);
        }

        PackClashes.Refuse(outputs, PackClashes.Suffixes(wishes.Request.Split, wishes.Request.Days is not null));
        // Made once for all: one that failed and tidied up could take it from under another that is about to write.
        using var folders = new StagedFiles();
        foreach (var folder in outputs.Select(o => o.Folder).Distinct(StringComparer.Ordinal))
        {
            folders.AddFolder(surroundings.FullPath(folder), folder);
        }

        var outputOf = files.Zip(outputs).ToDictionary(f => f.First, f => f.Second, StringComparer.Ordinal);
        return ManyFlocks.Run("pack", files, surroundings, Words.ManyPacked, (file, own) => Make(outputOf[file], wishes, language, own, line, PrintAdvice.WrittenOnly));
    }

    private static int Make(PackPaths output, PackWishes wishes, Language language, Surroundings surroundings, ILine line, Func<Pack, PackPaths, bool, string> tell)
    {
        if (new Desk(output.Flock, wishes.AsOf, surroundings, line).Plan(forPaper: true) is not { } planned)
        {
            return ExitStatus.FlockErrors;
        }

        if (wishes.Request.Days is { } days)
        {
            SitterDays.MustBePlanned(days, planned.Plan);
        }

        // What was noticed is said in English; what is printed is planned anew in its own words.
        var plan = language.IsEnglish ? planned.Plan : line.Plan(planned.Plan.Flock, planned.Plan.AsOf, language);
        CutShort.PutRight(output.FullFolder, output.Folder, surroundings.Stop);
        return LongWords.Guard(
            wishes.Words, surroundings, () => Write(plan, output, wishes, surroundings, line, tell), () => line.Compose(planned.Plan, wishes.Request, null));
    }

    private static int Write(SeasonPlan plan, PackPaths output, PackWishes wishes, Surroundings surroundings, ILine line, Func<Pack, PackPaths, bool, string> tell)
    {
        for (var attempt = 1; attempt <= MostAttempts; attempt++)
        {
            var record = RecordFile.Read(output);
            using var staged = new StagedFiles();
            var issue = Progress.Show(surroundings, step => Make(plan, record, wishes, output, staged, line, step));
            surroundings.Stop.ThrowIfCancellationRequested();
            // What is printed hangs on what had been: where another run has just written its record, the issue is made again after that one.
            if (staged.IsEmpty || staged.PutInPlace(surroundings.Stop, () => issue.Composed.Record is null || record.IsLatest(output)))
            {
                Tell(issue, record, wishes, output, surroundings.Out, tell);
                return ExitStatus.Clean;
            }
        }

        throw new UsageException(Words.CannotWrite(output.ShownFile(RecordFile.Ending), Words.ChangedMeanwhile));
    }

    private static void Tell(Issue issue, RecordFile record, PackWishes wishes, PackPaths output, TextWriter to, Func<Pack, PackPaths, bool, string> tell)
    {
        var composed = issue.Composed;
        if (IssueWords.WhyWhole(composed.Whole, record, output) is { } why)
        {
            to.WriteLine(why);
        }

        if (composed is { Whole: WholeReason.NotWhole, Outcome: { } outcome })
        {
            if (outcome.IsNothing)
            {
                to.WriteLine(IssueWords.NothingChanged(outcome, record.Record!));
                return;
            }

            if (!wishes.DryRun)
            {
                to.WriteLine(IssueWords.Changed(outcome));
            }
        }

        if (wishes.DryRun)
        {
            foreach (var said in IssueWords.WouldChange(composed.Outcome!))
            {
                to.WriteLine(said);
            }

            return;
        }

        to.WriteLine(tell(issue.Pack, output, wishes.Pictures));
    }

    /// <exception cref="UsageException">There is nothing to print, or it cannot be written.</exception>
    private static Issue Make(SeasonPlan plan, RecordFile record, PackWishes wishes, PackPaths output, StagedFiles staged, ILine line, Action<string> step)
    {
        step(Words.Composing);
        var issue = line.Compose(plan, wishes.Request, record.Record);
        var pack = issue.Pack;
        if (wishes.DryRun || issue.Composed is { Whole: WholeReason.NotWhole, Outcome.IsNothing: true })
        {
            return issue;
        }

        if (pack.Documents.IsEmpty)
        {
            throw new UsageException(Words.NothingToPrint);
        }

        foreach (var document in pack.Documents)
        {
            step(Words.Printing(output.ShownFile(document)));
        }

        // All at once, and in memory first: the files beside the old ones then exist for a moment only.
        var printed = line.Print(issue);
        foreach (var (document, pdf) in pack.Documents.Zip(printed.Documents))
        {
            staged.Add(output.File(document), output.ShownFile(document), pdf);
        }

        if (wishes.Pictures)
        {
            var names = PageFileNames.For(pack);
            var pages = pack.Documents.SelectMany(d => d.Print.Pages).ToList();
            foreach (var (page, name) in pages.Zip(names))
            {
                step(Words.Painting(name));
                staged.Add(output.Picture(name), output.ShownPicture(name), line.Paint(page.Page, PictureDotsPerInch));
            }
        }

        if (issue.Composed.Record is not null)
        {
            // After all the documents of the issue, so that it is put in place last.
            staged.Add(output.File(RecordFile.Ending), output.ShownFile(RecordFile.Ending), printed.Record);
        }

        return issue;
    }
}
