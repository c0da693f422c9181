using PaperFlock.Cli.Files;
using PaperFlock.Cli.Printing;
using PaperFlock.Cli.Wiring;
using PaperFlock.Flocks;
using PaperFlock.Languages;

namespace PaperFlock.Cli.Commands;

/// <summary>Writes a leaf that belongs to no flock: it asks for no flock file.</summary>
internal static class LeafCommand
{
    /// <summary>What a printer does to a page.</summary>
    /// <param name="folder">As typed.</param>
    /// <exception cref="UsageException">It cannot be written.</exception>
    public static int TestPage(Paper paper, string folder, Surroundings surroundings, ILine line) =>
        Run(() => line.TestPage(paper, Language.English), $"testpage-{paper}.pdf", folder, surroundings, line);

    /// <summary>How to use a pack.</summary>
    /// <param name="folder">As typed.</param>
    /// <exception cref="UsageException">It cannot be written.</exception>
    public static int Guide(Paper paper, string folder, Surroundings surroundings, ILine line) =>
        Run(() => line.Guide(paper, Language.English), paper == Paper.A4 ? "how-to-use-this-pack.pdf" : $"how-to-use-this-pack-{paper}.pdf", folder, surroundings, line);

    private static int Run(Func<PackDocument> compose, string name, string folder, Surroundings surroundings, ILine line)
    {
        OutFolder.MustNotBeAFile(folder, surroundings);
        var shown = folder == "." ? name : Path.Combine(folder, name);
        var document = compose();
        using var pdf = new MemoryStream();
        line.Print(document, pdf);
        surroundings.Stop.ThrowIfCancellationRequested();

        using var staged = new StagedFiles();
        staged.Add(surroundings.FullPath(shown), shown, pdf.GetBuffer().AsSpan(0, (int)pdf.Length));
        staged.PutInPlace();
        surroundings.Out.WriteLine(PrintAdvice.For(document, shown));
        return ExitStatus.Clean;
    }
}
