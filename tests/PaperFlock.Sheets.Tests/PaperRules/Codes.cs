using PaperFlock.Layout.Pages;

namespace PaperFlock.Sheets.Tests.PaperRules;

/// <summary>What leaves are called, and how they follow each other.</summary>
internal static class Codes
{
    public static IEnumerable<string> Twice(PackInHand pack)
    {
        var sheets = pack.Pack.Sheets;
        return sheets.GroupBy(s => s.Code).Where(g => g.Count() > 1).Select(g => $"the code {g.Key}, {g.Count()} times")
            .Concat(sheets.SelectMany(s => s.Sides).GroupBy(s => s.Label).Where(g => g.Count() > 1).Select(g => $"the label {g.Key}, {g.Count()} times"));
    }

    public static IEnumerable<string> LeavesAmiss(PackInHand pack)
    {
        var single = pack.Plan.Flock.Print.Duplex == Flocks.Duplex.SingleSided;
        foreach (var sheet in pack.Pack.Sheets)
        {
            var sides = sheet.Sides.Select(s => s.Page.Side).ToArray();
            var wanted = Enumerable.Range(0, sides.Length).Select(i => single && sheet.Use != SheetUse.CutUp || i % 2 == 0 ? PageSide.Front : PageSide.Back);
            if (!sides.SequenceEqual(wanted) || (!single && sides.Length % 2 != 0))
            {
                yield return $"{sheet.Code}: {string.Join(", ", sides)}";
            }

            var papers = sheet.Sides.Select(s => s.Page.Paper).Distinct().ToArray();
            if (papers.Length > 1)
            {
                yield return $"{sheet.Code} has {papers.Length} sizes of paper";
            }
        }
    }
}
