using System.Collections.Immutable;
using PaperFlock.Cli.Wiring;
using PaperFlock.Layout.Pages;
using PaperFlock.Pdf;
using PaperFlock.Sheets;

namespace PaperFlock.Cli.Printing;

/// <summary>What must be in the tray.</summary>
/// <param name="Paper">Such as "A4".</param>
/// <param name="IsCard">Thicker than paper, to be cut up and handled.</param>
internal readonly record struct Stock(string Paper, bool IsCard);

/// <summary>Consecutive pages for one tray.</summary>
/// <param name="First">1-based page of the document.</param>
/// <param name="Last">1-based, included.</param>
/// <param name="Leaves">Sheets of paper it takes.</param>
internal sealed record PaperRun(Stock Stock, int First, int Last, int Leaves)
{
    public static ImmutableArray<PaperRun> Of(PackDocument pack)
    {
        var document = pack.Print;
        var runs = ImmutableArray.CreateBuilder<PaperRun>();
        for (var i = 0; i < document.Pages.Length; i++)
        {
            var stock = new Stock(PaperName.Of(document.Pages[i].Page.Paper), pack.Uses[i] == SheetUse.CutUp);
            if (runs.Count == 0 || runs[^1].Stock != stock)
            {
                runs.Add(new PaperRun(stock, i + 1, i + 1, 1));
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
