using PaperFlock.Cli.Files;
using PaperFlock.Cli.Printing;
using PaperFlock.Cli.Wiring;
using PaperFlock.Flocks;

namespace PaperFlock.Cli.Commands;

/// <summary>Writes a leaf that belongs to no flock: it asks for no flock file.</summary>
internal static class LeafCommand
{
    /// <summary>What a printer does to a page.</summary>
    /// <param name="folder">As typed.</param>
    /// <exception cref="UsageException">It cannot be written.</exception>
    public static int TestPage(Paper paper, string folder, Host host, ILine line) =>
        Run(line.TestPage(paper), $"testpage-{paper}", folder, host, line);

    /// <summary>How to use a pack.</summary>
    /// <param name="folder">As typed.</param>
    /// <exception cref="UsageException">It cannot be written.</exception>
    public static int Guide(Paper paper, string folder, Host host, ILine line) =>
        Run(line.Guide(paper), paper == Paper.A4 ? "how-to-use-this-pack" : $"how-to-use-this-pack-{paper}", folder, host, line);

    private static int Run(PackDocument document, string name, string folder, Host host, ILine line)
    {
        OutFolder.MustNotBeAFile(folder, host);
        var file = name + PackPaths.Pdf;
        var shown = folder == "." ? file : Path.Combine(folder, file);
        var pdf = line.Print(document);
        host.Stop.ThrowIfCancellationRequested();

        using var staged = new StagedFiles();
        staged.Add(host.FullPath(shown), shown, pdf);
        staged.PutInPlace(host.Stop);
        host.Out.WriteLine(PrintAdvice.For(document, shown));
        return ExitStatus.Clean;
    }
}
