using PaperFlock.Planning;

namespace PaperFlock.Sheets.Tests.PaperRules;

/// <summary>A pack as it lies on the table: what it was meant to be, and the ink found on each side.</summary>
/// <param name="Sides">Of every sheet in binding order, and of the planner in one piece after them where there is one.</param>
internal sealed record PackInHand(SeasonPlan Plan, ComposedPack Pack, ImmutableArray<SideInPack> Sides)
{
    /// <param name="read">Ink of a side, by its place among all sides, the way it comes off the printer.</param>
    public static PackInHand Of(SeasonPlan plan, ComposedPack pack, Func<int, SheetSide, PageInk> read)
    {
        var sides = ImmutableArray.CreateBuilder<SideInPack>();
        foreach (var sheet in SideInPack.AllSheets(pack))
        {
            for (var i = 0; i < sheet.Sides.Length; i++)
            {
                sides.Add(SideInPack.Of(plan, pack, sheet, i, read(sides.Count, sheet.Sides[i])));
            }
        }

        return new PackInHand(plan, pack, sides.ToImmutable());
    }
}
