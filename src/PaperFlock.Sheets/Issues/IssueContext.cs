using System.Collections.Frozen;
using PaperFlock.Sheets.Register;

namespace PaperFlock.Sheets.Issues;

/// <summary>What sheets must know of earlier issues while they are drawn: their own number, what each page replaces, and what it said.</summary>
/// <param name="on">The day it is made.</param>
/// <param name="before">The issue whose leaves it takes the place of; null for a first issue.</param>
/// <param name="marked">Changed rows get bars: only where some leaves are printed and others stay.</param>
internal sealed class IssueContext(int number, LocalDate on, PackIssue? before, bool marked)
{
    /// <summary>Bars stand between what no printer reaches and what is printed.</summary>
    private static readonly double FromEdge = Mm(6.2);
    private static readonly double Wide = Mm(1);

    /// <summary>Bars of cards stand as far to the left of what is on them.</summary>
    private static readonly double LeftOfCard = Mm(1.75);

    private readonly FrozenDictionary<string, IssuedLeaf> _before = (before?.Leaves ?? []).ToFrozenDictionary(l => l.Leaf.Id, StringComparer.Ordinal);
    private IssueRecord? _again;

    /// <summary>Leaves there have been, printed once more: each bears its own issue, and one that is in none bears the last.</summary>
    /// <param name="record">Null where nothing has been printed.</param>
    public static IssueContext Again(IssueRecord? record, LocalDate today) =>
        new(record?.Last.Number ?? 1, record?.Last.On ?? today, record?.Last, marked: false) { _again = record };

    public int Number { get; } = number;

    public LocalDate On { get; } = on;

    /// <summary>The issue a page bears, and the day of it.</summary>
    public (int Number, LocalDate On) Of(string code, PageNumber page) => Of(IdOf(code, page));

    /// <param name="id">Of a leaf.</param>
    public (int Number, LocalDate On) Of(string id) =>
        _again is { } record && _before.GetValueOrDefault(id) is { } leaf && record.Find(leaf.Issue) is { } issue ? (issue.Number, issue.On) : (Number, On);

    /// <summary>The issue of the leaf that this page takes the place of; null where there was none.</summary>
    public int? Replaces(string code, PageNumber page) => code == RegisterSheet.Definition.Code ? LastRegister : Replaces(IdOf(code, page));

    /// <summary>A register comes with every issue.</summary>
    private int? LastRegister => _again is null ? before?.Number : before?.Since;

    /// <param name="id">Of a leaf.</param>
    public int? Replaces(string id) => _again is null ? _before.GetValueOrDefault(id)?.Issue : _before.GetValueOrDefault(id)?.Replaces;

    /// <summary>The last day that leaves of a sheet already in the binder are of use; null where all is printed anew, or none is there.</summary>
    /// <param name="sheet">Its code without the day.</param>
    public LocalDate? LastDayOf(string sheet) =>
        marked ? _before.Values.Where(l => l.Leaf.Id.StartsWith(sheet + "-", StringComparison.Ordinal)).Max(l => l.Leaf.Last) : null;

    /// <summary>The page with its changed rows marked.</summary>
    /// <param name="turned">Backs are turned round for the printer.</param>
    public Page Marked(Page page, string code, ITextMeasurer measurer, bool turned)
    {
        // On pages on their side rows end at the same edge of the paper on fronts and backs; the end that leaves the printer last is kept clear.
        var atRight = page.Side == PageSide.Front || (page.Paper.Width > page.Paper.Height && !turned);
        var barAt = atRight ? page.Paper.Width - FromEdge - Wide : FromEdge;
        return page with { Content = Marked(page.Content, IdOf(code, page.Number), barAt, measurer) };
    }

    /// <summary>A card with its changed rows marked, on the side that is never an edge of the paper.</summary>
    public Piece MarkedCard(Piece card, string id, ITextMeasurer measurer) => Marked(card, id, -LeftOfCard, measurer);

    private static string IdOf(string code, PageNumber page) => Leaves.Id(code, PackSheets.OfCode(code)?.IsOneLeaf == true ? 1 : Leaves.FirstPage(page));

    private Piece Marked(Piece piece, string id, double barAt, ITextMeasurer measurer) =>
        marked && _before.GetValueOrDefault(id) is { } old ? ChangeMarks.On(piece, old.Leaf, On, barAt, measurer) : piece;
}
