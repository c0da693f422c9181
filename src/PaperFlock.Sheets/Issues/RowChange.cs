namespace PaperFlock.Sheets.Issues;

/// <summary>A row that does not say what it said, or not where it said it.</summary>
/// <param name="Row">Null where the old one is gone.</param>
/// <param name="Old">What it said; null for a row that is new.</param>
/// <param name="Index">Of <paramref name="Row"/> among the rows it was read with; -1 where the old one is gone.</param>
public sealed record RowChange(LeafRow? Row, LeafRow? Old, int Index)
{
    /// <summary>What changed, and what it was, in words for a list.</summary>
    public string Words(LocalDate day)
    {
        var about = (Row ?? Old)!.Key.Name;
        var what = (Row, Old) switch
        {
            (null, { } gone) => $"gone: {Said(gone, day)}",
            ({ } added, null) => about.Length > 0 ? "new" : $"new: {Said(added, day)}",
            ({ } row, { } old) => row.SaysOn(day, old) ? "moved" : WhatItWas(row, old, day),
            _ => throw new InvalidOperationException("a change is of something"),
        };
        return about.Length > 0 ? $"{about}: {what}" : what;
    }

    /// <summary>For each cell with other words than before, what it was; those that were blank are left out.</summary>
    public ImmutableArray<(int Cell, string Words)> WasByCell(LocalDate day) => Row is { } row && Old is { } old
        ? [.. Changed(row, old, day).Where(i => old.Cells[i].Words.Length > 0).Select(i => (i, Was(old.Cells[i])))]
        : [];

    private static string WhatItWas(LeafRow row, LeafRow old, LocalDate day)
    {
        var cells = Changed(row, old, day).Select(i => Was(old.Cells[i])).Distinct().ToArray();
        return cells.Length > 0 ? string.Join("; ", cells) : $"was {Said(old, day)}";
    }

    private static IEnumerable<int> Changed(LeafRow row, LeafRow old, LocalDate day) => row.Cells.Length != old.Cells.Length
        ? []
        : Enumerable.Range(0, row.Cells.Length).Where(i => !row.Cells[i].SaysOn(day, old.Cells[i]));

    private static string Was(LeafCell old) =>
        old.Words.Length == 0 ? "was blank" : $"was {HiddenWords.Shown(old.Words)}";

    private static string Said(LeafRow row, LocalDate day) => string.Join(" ", row.Cells.Select(c => HiddenWords.Shown(c.On(day))).Where(w => w.Length > 0));
}
