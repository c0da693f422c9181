using PaperFlock.Flocks;
using PaperFlock.Layout.Pages;
using PaperFlock.Planning;

namespace PaperFlock.Sheets.Tests.PaperRules;

/// <summary>One side of one sheet, with what a rule needs to judge it.</summary>
/// <param name="Index">Of the side within its sheet, from 0.</param>
/// <param name="Ink">The way it is read.</param>
/// <param name="Printed">The way it comes off the printer.</param>
internal sealed record SideInPack(SeasonPlan Plan, ComposedPack Pack, Sheet Sheet, int Index, PageInk Ink, PageInk Printed)
{
    public static SideInPack Of(SeasonPlan plan, ComposedPack pack, Sheet sheet, int index, PageInk printed) =>
        new(plan, pack, sheet, index, AsRead(plan, sheet.Sides[index], printed), printed);

    public MarkWords Says { get; } = new();

    public SheetSide Side => Sheet.Sides[Index];

    public PrintSettings Print => Plan.Flock.Print;

    public bool IsFront => Side.Page.Side == PageSide.Front;

    /// <summary>With nothing on it to read: it says that it is blank, or has lines to write on.</summary>
    public bool IsBlankBack => Side.IsBlank;

    public bool IsSideways => Ink.Paper.Width > Ink.Paper.Height;

    public bool IsCards => Sheet.Use == SheetUse.CutUp;

    public bool IsPlanner => Sheet.Kind == "planner";

    /// <summary>Who lambs when.</summary>
    public bool IsDue => Sheet.Kind == "due";

    /// <summary>Punched and put on rings: everything but cards and what hangs on a wall for good.</summary>
    public bool IsPunched => !IsCards && !IsPlanner && !IsDue;

    /// <summary>Where it takes two lines, the second says what it replaces; on a card, where nothing else is as small, any may be part of it.</summary>
    public bool IsControlLine(Words words) => words.IsMono && words.Style.Size <= 8.5
        && (words.Text.StartsWith($"{Pack.Id} ", StringComparison.Ordinal) || words.Text.StartsWith(Says.Replaces, StringComparison.Ordinal) || words.Text.StartsWith(Says.ReplacesNone, StringComparison.Ordinal) || words.Text.StartsWith(Says.NotAfter, StringComparison.Ordinal) || (IsCards && words.Style.Size < 8));

    /// <summary>With other ink on it.</summary>
    public SideInPack Inked(PageInk printed) => Of(Plan, Pack, Sheet, Index, printed);

    /// <summary>A printer that flips on the short edge prints backs the other way up.</summary>
    private static PageInk AsRead(SeasonPlan plan, SheetSide side, PageInk printed) =>
        side.Page.Side == PageSide.Back && plan.Flock.Print.Duplex == Duplex.ShortEdge ? printed.TurnedRound() : printed;

    public static IEnumerable<Sheet> AllSheets(ComposedPack pack) => pack.WholePlanner is { } whole ? pack.Sheets.Append(whole) : pack.Sheets;
}
