using System.Collections.Immutable;
using NodaTime;
using PaperFlock.Cli.Files;
using PaperFlock.Cli.Many;
using PaperFlock.Cli.Printing;
using PaperFlock.Cli.Wiring;
using PaperFlock.Planning;
using PaperFlock.Sheets;

namespace PaperFlock.Cli.Commands;

/// <param name="Out">Folder for what is written, as typed; null for the folder of each flock file.</param>
/// <param name="Request">Which sheets, for which days, in one file or several.</param>
/// <param name="Pictures">A picture of every page as well.</param>
/// <param name="AsOf">Null for today at each holding.</param>
/// <param name="DryRun">Says what an issue of changed leaves would be, and writes nothing.</param>
internal sealed record PackOptions(string? Out, PackRequest Request, bool Pictures, LocalDate? AsOf, bool DryRun = false);

/// <summary>Makes the pack and writes it, whole or not at all; of many flocks, each on its own.</summary>
internal static class PackCommand
{
    /// <summary>An A4 page is then 992 by 1403 dots: all of it on a screen, and the small print still to be read.</summary>
    private const double PictureDotsPerInch = 120;

    /// <summary>How often a pack is made anew because another run has written the same one meanwhile.</summary>
    private const int MostAttempts = 20;

    /// <param name="files">As they are to be shown; never empty.</param>
    /// <exception cref="UsageException">What is asked for cannot be had: of many flocks, not even for one of them.</exception>
    public static int Run(ImmutableArray<string> files, PackOptions options, Host host, ILine line)
    {
        ImmutableArray<PackPaths> outputs = [.. files.Select(f => new PackPaths(f, options.Out, host))];
        if (files.Length == 1)
        {
            return Make(outputs[0], options, host, line, PrintAdvice.For);
        }

        PackClashes.Refuse(outputs, PackClashes.Suffixes(options.Request.Split, options.Request.Days is not null));
        // Made once for all: one that failed and tidied up could take it from under another that is about to write.
        using var folders = new StagedFiles();
        foreach (var folder in outputs.Select(o => o.Folder).Distinct(StringComparer.Ordinal))
        {
            folders.AddFolder(host.FullPath(folder), folder);
        }

        var outputOf = files.Zip(outputs).ToDictionary(f => f.First, f => f.Second, StringComparer.Ordinal);
        return ManyFlocks.Run("pack", files, host, Messages.ManyPacked, (file, own) => Make(outputOf[file], options, own, line, PrintAdvice.WrittenOnly));
    }

    private static int Make(PackPaths output, PackOptions options, Host host, ILine line, Func<Pack, PackPaths, bool, string> tell)
    {
        if (new FlockLoader(output.Flock, options.AsOf, host, line).Plan(forPaper: true) is not { } planned)
        {
            return ExitStatus.FlockErrors;
        }

        if (options.Request.Days is { } days)
        {
            SitterDays.MustBePlanned(days, planned.Plan);
        }

        CutShort.PutRight(output.FullFolder, output.Folder, host.Stop);
        return Write(planned.Plan, output, options, host, line, tell);
    }

    private static int Write(SeasonPlan plan, PackPaths output, PackOptions options, Host host, ILine line, Func<Pack, PackPaths, bool, string> tell)
    {
        for (var attempt = 1; attempt <= MostAttempts; attempt++)
        {
            var record = RecordFile.Read(output);
            using var staged = new StagedFiles();
            var issue = Progress.Show(host, step => Make(plan, record, options, output, staged, line, step));
            host.Stop.ThrowIfCancellationRequested();
            // What is printed hangs on what had been: where another run has just written its record, the issue is made again after that one.
            if (staged.IsEmpty || staged.PutInPlace(host.Stop, () => issue.Composed.Record is null || record.IsLatest(output)))
            {
                Tell(issue, record, options, output, host.Out, tell);
                return ExitStatus.Clean;
            }
        }

        throw new UsageException(Messages.CannotWrite(output.ShownFile(RecordFile.Ending), Messages.ChangedMeanwhile));
    }

    private static void Tell(Issue issue, RecordFile record, PackOptions options, PackPaths output, TextWriter to, Func<Pack, PackPaths, bool, string> tell)
    {
        var composed = issue.Composed;
        if (IssueMessages.WhyWhole(composed.Whole, record, output) is { } why)
        {
            to.WriteLine(why);
        }

        if (composed is { Whole: WholeReason.NotWhole, Outcome: { } outcome })
        {
            if (outcome.IsNothing)
            {
                to.WriteLine(IssueMessages.NothingChanged(outcome, record.Record!));
                return;
            }

            if (!options.DryRun)
            {
                to.WriteLine(IssueMessages.Changed(outcome));
            }
        }

        if (options.DryRun)
        {
            foreach (var said in IssueMessages.WouldChange(composed.Outcome!))
            {
                to.WriteLine(said);
            }

            return;
        }

        to.WriteLine(tell(issue.Pack, output, options.Pictures));
    }

    /// <exception cref="UsageException">There is nothing to print, or it cannot be written.</exception>
    private static Issue Make(SeasonPlan plan, RecordFile record, PackOptions options, PackPaths output, StagedFiles staged, ILine line, Action<string> step)
    {
        step(Messages.Composing);
        var issue = line.Compose(plan, options.Request, record.Record);
        var pack = issue.Pack;
        if (options.DryRun || issue.Composed is { Whole: WholeReason.NotWhole, Outcome.IsNothing: true })
        {
            return issue;
        }

        if (pack.Documents.IsEmpty)
        {
            throw new UsageException(Messages.NothingToPrint);
        }

        foreach (var document in pack.Documents)
        {
            step(Messages.Printing(output.ShownFile(document)));
        }

        // All at once, and in memory first: the files beside the old ones then exist for a moment only.
        var printed = line.Print(issue);
        foreach (var (document, pdf) in pack.Documents.Zip(printed.Documents))
        {
            staged.Add(output.File(document), output.ShownFile(document), pdf);
        }

        if (options.Pictures)
        {
            var names = PageFileNames.For(pack);
            var pages = pack.Documents.SelectMany(d => d.Print.Pages).ToList();
            foreach (var (page, name) in pages.Zip(names))
            {
                step(Messages.Painting(name));
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
