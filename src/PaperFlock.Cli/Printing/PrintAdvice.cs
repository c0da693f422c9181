using PaperFlock.Cli.Files;
using PaperFlock.Cli.Wiring;

namespace PaperFlock.Cli.Printing;

/// <summary>What was written, how much paper it takes, and how to print it.</summary>
internal static class PrintAdvice
{
    /// <returns>Lines with LF between them, none at the end.</returns>
    public static string For(Pack pack, PackPaths output, bool pictures)
    {
        var lines = new List<string>();
        foreach (var document in pack.Documents)
        {
            lines.Add(Words.Wrote(output.ShownFile(document), document.Print.Pages.Length, PaperNeeded(document)));
        }

        if (pictures)
        {
            lines.Add(Words.WrotePictures(output.ShownPictures, pack.Documents.Sum(d => d.Print.Pages.Length)));
        }

        foreach (var document in pack.Documents)
        {
            lines.Add(string.Empty);
            lines.Add(Words.ToPrint(output.ShownFile(document)));
            lines.Add(Words.ActualSize);
            lines.Add(Words.Sides(document.Print.Duplex));
            lines.AddRange(Words.PagesOnPaper(PaperRun.Of(document)));
        }

        return string.Join('\n', lines);
    }

    private static string PaperNeeded(PackDocument document)
    {
        var kinds = PaperRun.Of(document)
            .GroupBy(r => r.Stock)
            .Select(g => Words.Leaves(g.Sum(r => r.Leaves), g.Key));
        return Words.List(kinds);
    }
}
