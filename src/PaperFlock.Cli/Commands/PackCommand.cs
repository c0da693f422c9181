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
internal sealed record PackWishes(string? Out, PackRequest Request, bool Pictures, LocalDate? AsOf);

/// <summary>Makes the pack and writes it, whole or not at all; of many flocks, each on its own.</summary>
internal static class PackCommand
{
    /// <summary>An A4 page is then 992 by 1403 dots: all of it on a screen, and the small print still to be read.</summary>
    private const double PictureDotsPerInch = 120;

    /// <param name="files">As they are to be shown; never empty.</param>
    /// <exception cref="UsageException">What is asked for cannot be had: of many flocks, not even for one of them.</exception>
    public static int Run(ImmutableArray<string> files, PackWishes wishes, Surroundings surroundings, ILine line)
    {
        ImmutableArray<PackPaths> outputs = [.. files.Select(f => new PackPaths(f, wishes.Out, surroundings))];
        if (files.Length == 1)
        {
            return Make(outputs[0], wishes, surroundings, line, PrintAdvice.For);
        }

        PackClashes.Refuse(outputs, PackClashes.Suffixes(wishes.Request.Split, wishes.Request.Days is not null));
        // Made once for all: one that failed and tidied up could take it from under another that is about to write.
        using var folders = new StagedFiles();
        foreach (var folder in outputs.Select(o => o.Folder).Distinct(StringComparer.Ordinal))
        {
            folders.AddFolder(surroundings.FullPath(folder), folder);
        }

        var outputOf = files.Zip(outputs).ToDictionary(f => f.First, f => f.Second, StringComparer.Ordinal);
        return ManyFlocks.Run("pack", files, surroundings, Words.ManyPacked, (file, own) => Make(outputOf[file], wishes, own, line, PrintAdvice.WrittenOnly));
    }

    private static int Make(PackPaths output, PackWishes wishes, Surroundings surroundings, ILine line, Func<Pack, PackPaths, bool, string> tell)
    {
        if (new Desk(output.Flock, wishes.AsOf, surroundings, line).Plan(forPaper: true) is not { } planned)
        {
            return ExitStatus.FlockErrors;
        }

        if (wishes.Request.Days is { } days)
        {
            SitterDays.MustBePlanned(days, planned.Plan);
        }

        using var staged = new StagedFiles();
        var pack = Progress.Show(surroundings, step => Make(planned.Plan, wishes, output, staged, line, step));
        surroundings.Stop.ThrowIfCancellationRequested();
        staged.PutInPlace();

        surroundings.Out.WriteLine(tell(pack, output, wishes.Pictures));
        return ExitStatus.Clean;
    }

    /// <exception cref="UsageException">There is nothing to print, or it cannot be written.</exception>
    private static Pack Make(SeasonPlan plan, PackWishes wishes, PackPaths output, StagedFiles staged, ILine line, Action<string> step)
    {
        step(Words.Composing);
        var pack = line.Compose(plan, wishes.Request);
        if (pack.Documents.IsEmpty)
        {
            throw new UsageException(Words.NothingToPrint);
        }

        foreach (var document in pack.Documents)
        {
            step(Words.Printing(output.ShownFile(document)));
            // In memory first: the file beside the old one then exists for a moment only.
            using var pdf = new MemoryStream();
            line.Print(document, pdf);
            staged.Add(output.File(document), output.ShownFile(document), pdf.GetBuffer().AsSpan(0, (int)pdf.Length));
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

        return pack;
    }
}
