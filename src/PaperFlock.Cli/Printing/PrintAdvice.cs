using PaperFlock.Cli.Files;
using PaperFlock.Cli.Wiring;
using PaperFlock.Layout.Pages;

namespace PaperFlock.Cli.Printing;

/// <summary>What was written, how much paper it takes, and how to print it.</summary>
internal static class PrintAdvice
{
    /// <returns>Lines with LF between them, none at the end.</returns>
    public static string For(Pack pack, PackPaths output, bool pictures)
    {
        var lines = new List<string> { WrittenOnly(pack, output, pictures) };
        foreach (var document in pack.Documents)
        {
            lines.Add(string.Empty);
            lines.AddRange(HowTo(document, output.ShownFile(document)));
        }

        return string.Join('\n', lines);
    }

    /// <summary>Without how to print it: of many packs nobody would read that.</summary>
    public static string WrittenOnly(Pack pack, PackPaths output, bool pictures) =>
        string.Join('\n', pack.Documents.Select(d => Wrote(d, output.ShownFile(d)))
            .Concat(pictures ? [Messages.WrotePictures(output.ShownPictures, pack.Documents.Sum(d => d.Print.Pages.Length))] : []));

    /// <summary>The same for one document alone.</summary>
    /// <param name="shown">What the user calls the file.</param>
    public static string For(PackDocument document, string shown) =>
        string.Join('\n', [Wrote(document, shown), string.Empty, .. HowTo(document, shown)]);

    private static string Wrote(PackDocument document, string shown) =>
        Messages.Wrote(shown, document.Print.Pages.Length, PaperNeeded(document));

    private static IEnumerable<string> HowTo(PackDocument document, string shown) =>
    [
        Messages.ToPrint(shown),
        Messages.ActualSize,
        document.Print.Pages.All(p => p.Page.Side == PageSide.Back) ? Messages.OnTheFronts : Messages.Sides(document.Print.Duplex),
        .. Messages.PagesOnPaper(PaperRun.Of(document)),
    ];

    private static string PaperNeeded(PackDocument document)
    {
        var kinds = PaperRun.Of(document)
            .GroupBy(r => r.Stock)
            .Select(g => Messages.Leaves(g.Sum(r => r.Leaves), g.Key));
        return Messages.List(kinds);
    }
}
