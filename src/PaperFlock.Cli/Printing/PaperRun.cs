using System.Collections.Immutable;
using PaperFlock.Layout.Pages;
using PaperFlock.Printing;

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
    /// <summary>Pages whose code begins so are ewe cards.</summary>
    private const string CardCode = "CARD";

    public static ImmutableArray<PaperRun> Of(PrintDocument document)
    {
        var runs = ImmutableArray.CreateBuilder<PaperRun>();
        for (var i = 0; i < document.Pages.Length; i++)
        {
            var stock = StockOf(document.Pages[i]);
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

    private static Stock StockOf(PrintPage page) =>
        new(PaperName.Of(page.Page.Paper), page.Label.StartsWith(CardCode, StringComparison.Ordinal));
}
