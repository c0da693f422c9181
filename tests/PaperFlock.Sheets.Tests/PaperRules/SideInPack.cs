using PaperFlock.Flocks;
using PaperFlock.Layout.Pages;
using PaperFlock.Planning;
using PaperFlock.Sheets.WallPlanner;

namespace PaperFlock.Sheets.Tests.PaperRules;

/// <summary>One side of one sheet, with what a rule needs to judge it.</summary>
/// <param name="Index">Of the side within its sheet, from 0.</param>
internal sealed record SideInPack(SeasonPlan Plan, ComposedPack Pack, Sheet Sheet, int Index, PageInk Ink)
{
    public SheetSide Side => Sheet.Sides[Index];

    public PrintSettings Print => Plan.Flock.Print;

    public bool IsFront => Side.Page.Side == PageSide.Front;

    public bool IsBlankBack => !IsFront && Ink.Words.Any(w => w.Text.Contains("left blank on purpose", StringComparison.Ordinal));

    public bool IsSideways => Ink.Paper.Width > Ink.Paper.Height;

    public bool IsCards => Sheet.Use == SheetUse.CutUp;

    public bool IsPlanner => Sheet.Kind == "planner";

    /// <summary>Punched and put on rings: everything but cards and the planner.</summary>
    public bool IsPunched => !IsCards && !IsPlanner;

    /// <summary>Null when the side is not one of several to be glued together.</summary>
    public TileScheme? Tiles => IsPlanner && !IsBlankBack && !ReferenceEquals(Sheet, Pack.WholePlanner) ? TileScheme.For(Print.Paper, Print.Planner) : null;

    /// <summary>Where it takes two lines, the second says what it replaces, or is the end of its issue and day.</summary>
    public bool IsControlLine(Words words) => words.IsMono && words.Style.Size <= 8.5
        && (words.Text.StartsWith(Pack.Id + " ", StringComparison.Ordinal) || words.Text.StartsWith("replaces ", StringComparison.Ordinal) || (IsCards && IssueWords.EndsWith(words.Text, StringComparison.Ordinal)));

    private string IssueWords => Sheets.House.PackMark.Of(Plan).IssueWords;

    public static IEnumerable<SideInPack> AllOf(Composed composed)
    {
        foreach (var sheet in AllSheets(composed.Pack))
        {
            for (var i = 0; i < sheet.Sides.Length; i++)
            {
                yield return new SideInPack(composed.Plan, composed.Pack, sheet, i, PageInk.AsRead(sheet.Sides[i].Page, composed.Plan.Flock.Print.Duplex));
            }
        }
    }

    public static IEnumerable<Sheet> AllSheets(ComposedPack pack) => pack.WholePlanner is { } whole ? pack.Sheets.Append(whole) : pack.Sheets;
}
