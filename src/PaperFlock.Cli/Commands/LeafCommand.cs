using PaperFlock.Cli.Files;
using PaperFlock.Cli.Printing;
using PaperFlock.Cli.Translating;
using PaperFlock.Cli.Wiring;
using PaperFlock.Flocks;
using PaperFlock.Languages;

namespace PaperFlock.Cli.Commands;

/// <summary>Writes a leaf that belongs to no flock: it asks for no flock file.</summary>
internal static class LeafCommand
{
    /// <summary>What a printer does to a page.</summary>
    /// <param name="folder">As typed.</param>
    /// <param name="words">File of a translator's words, as typed; null for English.</param>
    /// <exception cref="UsageException">It cannot be written, or the words cannot be read.</exception>
    public static int TestPage(Paper paper, string folder, string? words, Surroundings surroundings, ILine line) =>
        Run(language => line.TestPage(paper, language), $"testpage-{paper}", folder, words, surroundings, line);

    /// <summary>How to use a pack.</summary>
    /// <param name="folder">As typed.</param>
    /// <param name="words">File of a translator's words, as typed; null for English.</param>
    /// <exception cref="UsageException">It cannot be written, or the words cannot be read.</exception>
    public static int Guide(Paper paper, string folder, string? words, Surroundings surroundings, ILine line) =>
        Run(language => line.Guide(paper, language), paper == Paper.A4 ? "how-to-use-this-pack" : $"how-to-use-this-pack-{paper}", folder, words, surroundings, line);

    private static int Run(Func<Language, PackDocument> compose, string name, string folder, string? words, Surroundings surroundings, ILine line)
    {
        OutFolder.MustNotBeAFile(folder, surroundings);
        if (TrialLanguage.Read(words, surroundings, line) is not { } language)
        {
            return ExitStatus.FlockErrors;
        }

        var file = name + TrialLanguage.Suffix(language) + PackPaths.Pdf;
        var shown = folder == "." ? file : Path.Combine(folder, file);
        return LongWords.Guard(words, surroundings, () => Write(compose(language), shown, surroundings, line), () => compose(Language.English));
    }

    private static int Write(PackDocument document, string shown, Surroundings surroundings, ILine line)
    {
        var pdf = line.Print(document);
        surroundings.Stop.ThrowIfCancellationRequested();

        using var staged = new StagedFiles();
        staged.Add(surroundings.FullPath(shown), shown, pdf);
        staged.PutInPlace(surroundings.Stop);
        surroundings.Out.WriteLine(PrintAdvice.For(document, shown));
        return ExitStatus.Clean;
    }
}
