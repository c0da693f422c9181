using PaperFlock.Flocks.Reading.Values;

namespace PaperFlock.Flocks.Reading.Sections;

internal static class HousingReader
{
    public static Housing Read(Section housing) => new(
        housing.Find("lambing")?.AsChoice<LambingPlace>() ?? LambingPlace.Indoors,
        Pens(housing),
        housing.Find("lambing-pens")?.AsWhole(),
        Days(housing.Below("days-in-lambing-pen")))
    {
        // Out after about a week, or kept in for some: Irish Farmers Journal 514628; the ten days between are common practice, no source.
        TurnoutDaysAfterLambing = housing.Find("turnout-days-after-lambing")?.AsWhole() ?? 10,
    };

    private static ImmutableArray<Pen> Pens(Section housing)
    {
        var pens = ImmutableArray.CreateBuilder<Pen>();
        var names = new UniqueNames("pen");
        foreach (var entry in housing.Find("pens")?.AsSections() ?? [])
        {
            var name = names.Read(entry);
            var length = entry.Require("length")?.AsLength();
            var width = entry.Require("width")?.AsLength();
            var trough = entry.Find("trough")?.AsLength();
            if (name is not null && length is { } l && width is { } w)
            {
                pens.Add(new Pen(name, l, w, trough, entry.Find("name")!.Span) { At = Corner(entry.Below("at")) });
            }
        }

        var placed = PenPlace.Of([.. pens.Where(p => p.At is not null)]);
        for (var i = 0; i < placed.Length; i++)
        {
            if (placed[..i].FirstOrDefault(p => p.LiesOver(placed[i])) is { Pen: { } other })
            {
                housing.Bag.Add(FlockMessages.PensOverlap(placed[i].Pen.Span, placed[i].Pen.Name, other.Name));
            }
        }

        return pens.ToImmutable();
    }

    private static PenCorner? Corner(Section at) =>
        at.IsThere && at.Require("right")?.AsLength() is { } right && at.Require("down")?.AsLength() is { } down ? new PenCorner(right, down) : null;

    private static DaysInLambingPen Days(Section days) => new(
        days.Find("single")?.AsWhole() ?? 1,
        days.Find("twin")?.AsWhole() ?? 2,
        days.Find("triplet")?.AsWhole() ?? 3);
}
