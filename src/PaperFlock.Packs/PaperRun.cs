using PaperFlock.Layout.Pages;

namespace PaperFlock.Packs;

/// <summary>Consecutive pages for one tray.</summary>
/// <param name="Paper">What must be in it: "A4", or "A4 card" for what is cut up and handled.</param>
/// <param name="First">1-based page of the document.</param>
/// <param name="Last">1-based, included.</param>
/// <param name="Leaves">Sheets of paper it takes.</param>
internal sealed record PaperRun(string Paper, int First, int Last, int Leaves)
{
    public static ImmutableArray<PaperRun> Of(PackDocument pack)
    {
        var document = pack.Print;
        var runs = ImmutableArray.CreateBuilder<PaperRun>();
        for (var i = 0; i < document.Pages.Length; i++)
        {
            var paper = PaperName.Of(document.Pages[i].Page.Paper) + (pack.Uses[i] == SheetUse.CutUp ? " card" : "");
            if (runs.Count == 0 || runs[^1].Paper != paper)
            {
                runs.Add(new PaperRun(paper, i + 1, i + 1, 1));
                continue;
            }

            var run = runs[^1];
            runs[^1] = run with { Last = i + 1, Leaves = run.Leaves + (IsNewLeaf(document, i) ? 1 : 0) };
        }

        return runs.ToImmutable();
    }

    /// <summary>A back shares the leaf of the front before it, where both sides are printed.</summary>
    private static bool IsNewLeaf(PrintDocument document, int page) =>
        document.Duplex == DuplexHint.Simplex
        || document.Pages[page].Page.Side == PageSide.Front
        || document.Pages[page - 1].Page.Side == PageSide.Back;
}
