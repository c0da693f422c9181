namespace PaperFlock.Packs;

/// <summary>Sheets that go through the printer together: on the same paper, on one side or on both.</summary>
/// <param name="Name">Follows the flock's name in the file name and the title in the document's.</param>
/// <param name="BothSides">As the flock file says the printer turns; else on one side whatever it says.</param>
/// <param name="TwoPasses">Backs must fall on the backs of their fronts even where the printer prints one side only.</param>
internal sealed record PrintWay(string Name, Func<Sheet, bool> Holds, bool BothSides, bool TwoPasses = false)
{
    /// <summary>Each sheet belongs to exactly one.</summary>
    public static readonly ImmutableArray<PrintWay> All =
    [
        new("binder", s => s.Use == SheetUse.Binder, BothSides: true),
        new("planner", s => s.Definition == PackSheets.Planner, BothSides: false),
        new("pinned", s => s.Use == SheetUse.Pinned && s.Definition != PackSheets.Planner, BothSides: false),
        new("cards", s => s.Use == SheetUse.CutUp, BothSides: true, TwoPasses: true),
        new("logs", s => s.Use == SheetUse.Clipboard, BothSides: false),
    ];
}
