using System.Text;
using PaperFlock.Sheets;
using Snapshooter;
using Snapshooter.Xunit3;

namespace PaperFlock.Packs.Tests.PaperRules;

/// <summary>The words of Hollin Bank's pack, so that a change of wording shows in review: the first page of each kind of sheet, and a card's back.</summary>
public sealed class PageTextTests
{
    /// <summary>The season is not over there, so nothing says how it went.</summary>
    public static TheoryData<string> Kinds => [.. PackSheets.All.Select(s => s.Kind).Where(kind => kind != "year")];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void A_page_says_what_it_said(string kind)
    {
        // A sheet whose day is over is printed for whoever asks for it by name.
        var pack = PrintedPack.HollinBank.Sides.Any(s => s.Side.Sheet.Kind == kind) ? PrintedPack.HollinBank : PrintedPack.Of(PrintedPack.HollinBank.InHand.Plan, kind);
        var pages = pack.Sides.Where(s => s.Side.Sheet.Kind == kind && !s.Side.IsBlankBack).Take(kind == "cards" ? 2 : 1);
        var text = new StringBuilder();
        foreach (var page in pages)
        {
            text.Append("== ").Append(page.Label).Append('\n').Append(Lines(page)).Append('\n');
        }

        Snapshot.Match(text.ToString(), SnapshotNameExtension.Create(kind));
    }

    /// <summary>Texts on one baseline make a line, from left to right; what is turned comes last.</summary>
    private static string Lines(PdfSide page)
    {
        const double together = 4;
        var lines = new List<(double Baseline, List<(double Left, string Text)> Texts)>();
        foreach (var words in page.Page.Ink.Words.Where(w => !w.IsUpAndDown).OrderBy(w => w.Baseline))
        {
            if (lines.Count == 0 || words.Baseline - lines[^1].Baseline > together)
            {
                lines.Add((words.Baseline, []));
            }

            lines[^1].Texts.Add((words.All.Left, words.Text));
        }

        var level = lines.Select(l => string.Join(" | ", l.Texts.OrderBy(t => t.Left).Select(t => t.Text.Trim())));
        var turned = page.Page.Ink.Words.Where(w => w.IsUpAndDown).Select(w => $"turned: {w.Text}");
        return string.Join('\n', level.Concat(turned));
    }
}
