using PaperFlock.Layout.Pages;

namespace PaperFlock.Packs;

/// <summary>How much paper a document takes, and how to print it.</summary>
public static class PrintAdvice
{
    /// <summary>Of paper and card together.</summary>
    public static int Sheets(PackDocument document) => PaperRun.Of(document).Sum(r => r.Leaves);

    /// <summary>"5 pages on 2 sheets of A4 and 1 sheet of A4 card".</summary>
    public static string Size(PackDocument document)
    {
        var paper = PaperRun.Of(document).GroupBy(r => r.Paper).Select(g => $"{ScreenText.Count(g.Sum(r => r.Leaves), "sheet")} of {g.Key}");
        return $"{ScreenText.Count(document.Print.Pages.Length, "page")} on {ScreenText.List(paper)}";
    }

    /// <summary>What to choose in the print window, a line each.</summary>
    public static IEnumerable<string> HowTo(PackDocument document)
    {
        var runs = PaperRun.Of(document);
        return
        [
            "at actual size (100 %), never \"fit to page\"; where there is a bar of 100 mm, lay a ruler on it",
            document.Print.Pages.All(p => p.Page.Side == PageSide.Back)
                ? "on the backs of the fronts: put them into the tray again as they came out, first sheet first, and try one sheet before the rest"
                : Sides(document.Print.Duplex),
            // Pages for one tray need no numbers.
            .. runs.Length == 1 ? [$"on {runs[0].Paper}"] : runs.Select(r => $"{Pages(r)} on {r.Paper}"),
        ];
    }

    private static string Pages(PaperRun run) =>
        run.First == run.Last ? FormattableString.Invariant($"page {run.First}") : FormattableString.Invariant($"pages {run.First} to {run.Last}");

    private static string Sides(DuplexHint duplex) => duplex switch
    {
        DuplexHint.Simplex => "on one side of the paper",
        DuplexHint.ShortEdge => "on both sides, flip on short edge",
        _ => "on both sides, flip on long edge",
    };
}
