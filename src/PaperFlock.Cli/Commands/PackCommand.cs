using System.CommandLine;
using PaperFlock.Cli.Files;
using PaperFlock.Cli.Pictures;
using PaperFlock.Sheets;

namespace PaperFlock.Cli.Commands;

/// <summary>Makes the pack and writes it; of many flocks, each on its own.</summary>
internal static class PackCommand
{
    /// <summary>An A4 page is then 992 by 1403 dots: all of it on a screen, and the small print still to be read.</summary>
    private const double PictureDotsPerInch = 120;

    /// <param name="packsGo">Folder of the packs where no other is asked for; null for that of each flock file.</param>
    public static Command Describe(Argument<string[]> flocks, Option<string> into, Option<LocalDate?> asOf, string? packsGo, Host host)
    {
        var sheets = new Option<string[]>("--sheets")
        {
            HelpName = "a,b,…",
            Description = $"print only some sheets, by name or by the code at their foot: {string.Join(", ", SheetChoice.Names)}",
            CustomParser = TypedValues.Sheets,
        };
        var from = CommandLine.Day("--from", "first day of a sitter's pack: only the leaves for those days");
        var to = CommandLine.Day("--to", "last day of a sitter's pack, included");
        var split = new Option<bool>("--split") { Description = "a PDF for each way of printing: binder, planner, pinned, cards, logs" };
        var changed = new Option<bool>("--changed") { Description = "only leaves that differ from those in your binder, with a list of what to take out and put in" };
        var dryRun = new Option<bool>("--dry-run") { Description = "with --changed: says what would be printed and why, and writes nothing" };
        var png = new Option<bool>("--png") { Description = "a picture of every page as well" };
        var pack = new Command("pack", "make the pack, a PDF to print") { flocks, into, sheets, from, to, split, changed, dryRun, asOf, png };
        pack.SetAction(typed =>
        {
            ImmutableArray<string> kinds = [.. typed.GetValue(sheets) ?? []];
            var request = new PackRequest(kinds, Days(typed.GetValue(from), typed.GetValue(to), kinds), typed.GetValue(split), typed.GetValue(changed));
            if (request is { Changed: true, IsOfAll: false })
            {
                throw new UsageException("--changed is of the whole pack: leave out --sheets, --from and --to");
            }

            if (typed.GetValue(dryRun) && !request.Changed)
            {
                throw new UsageException("--dry-run goes with --changed");
            }

            return Run(
                FlockFiles.Find(typed.GetRequiredValue(flocks), host),
                new PackOptions(typed.GetValue(into) ?? packsGo, request, typed.GetValue(png), typed.GetValue(asOf), typed.GetValue(dryRun)),
                host);
        });
        return pack;
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
        PackPaths.RefuseClashes(outputs.Values, PackFileNames.Suffixes(options.Request.Split, options.Request.Days is not null));
        return ManyFlocks.Run("pack", files, host, "pack", "made", file => Make(outputs[file], options, withAdvice: files.Length == 1, host));
    }

    /// <param name="withAdvice">How to print it is said too: of many packs nobody would read that.</param>
    private static int Make(PackPaths output, PackOptions options, bool withAdvice, Host host)
    {
        if (FlockLoader.Plan(output.Flock, options.AsOf, forPaper: true, host).Plan is not { } plan)
        {
            return ExitStatus.FlockErrors;
        }

        var before = PackMaker.Earlier(plan, output.Earlier());
        using var staged = new StagedFiles();
        var pack = Progress.Show(host, step =>
        {
            step(Messages.Composing);
            var made = PackMaker.Make(plan, options.Request, before.Record);
            if (!options.DryRun)
            {
                Stage(made, output, options.Pictures, staged, step);
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
            return ExitStatus.Clean;
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

        return ExitStatus.Clean;
    }

    private static void Stage(Pack pack, PackPaths output, bool pictures, StagedFiles staged, Action<string> step)
    {
        if (pictures)
        {
            foreach (var (page, name) in pack.Documents.SelectMany(d => d.Pages).Zip(PackFileNames.Pictures(pack.Documents)))
            {
                step($"painting {name}");
                staged.Add(output.Picture(name), PngPrinter.Paint(page, PictureDotsPerInch));
            }
        }

        // The first remembers the issue, so it is put in place last: until then the pack is the old one, and the next run makes all of it again.
        foreach (var document in pack.Documents.Reverse())
        {
            var file = output.Of(document);
            step($"printing {file.Shown}");
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
    private static DateInterval? Days(LocalDate? from, LocalDate? to, ImmutableArray<string> sheets) => (from, to) switch
    {
        (null, null) => null,
        (null, _) => throw new UsageException("--to wants --from as well: the first day of the sitter's pack, such as --from 2026-12-27"),
        (_, null) => throw new UsageException("--from wants --to as well: the last day of the sitter's pack, such as --to 2027-01-02"),
        ({ } first, { } last) when last < first => throw new UsageException($"--from {ScreenText.Day(first)} comes after --to {ScreenText.Day(last)}: put the first day after --from"),
        ({ } first, { } last) => SheetChoice.WhyNotForDays(sheets) is { } whyNot ? throw new UsageException(whyNot) : new DateInterval(first, last),
    };

    /// <param name="Out">Folder for what is written, as typed; null for the folder of each flock file.</param>
    /// <param name="DryRun">Says what an issue of changed leaves would be, and writes nothing.</param>
    private sealed record PackOptions(string? Out, PackRequest Request, bool Pictures, LocalDate? AsOf, bool DryRun);
}
