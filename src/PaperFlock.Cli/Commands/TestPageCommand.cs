using PaperFlock.Cli.Files;
using PaperFlock.Cli.Printing;
using PaperFlock.Cli.Wiring;
using PaperFlock.Flocks;

namespace PaperFlock.Cli.Commands;

/// <summary>Writes the leaf that shows what a printer does to a page. It asks for no flock file.</summary>
internal static class TestPageCommand
{
    /// <param name="folder">As typed.</param>
    /// <exception cref="UsageException">It cannot be written.</exception>
    public static int Run(Paper paper, string folder, Surroundings surroundings, ILine line)
    {
        OutFolder.MustNotBeAFile(folder, surroundings);
        var name = $"testpage-{paper}.pdf";
        var shown = folder == "." ? name : Path.Combine(folder, name);
        var document = line.TestPage(paper);
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
