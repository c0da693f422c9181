namespace PaperFlock.Flocks.Reading.Sections;

internal static class HousingReader
{
    public static Housing Read(Section housing)
    {
        var read = Made(housing);
        if (read.Lambing == LambingPlace.Indoors)
        {
            housing.Bag.Add(read.LambingPens == 0 ? FlockMessages.NoLambingPens(housing.Find("lambing-pens")!.Span) : null);
            var days = read.DaysInLambingPen;
            var longest = Math.Max(days.Single, Math.Max(days.Twin, days.Triplet));
            housing.Bag.Add(housing.Find("turnout-days-after-lambing") is { } turnout && read.TurnoutDaysAfterLambing < longest
                ? FlockMessages.TurnoutBeforePen(turnout.Span, read.TurnoutDaysAfterLambing, longest)
                : null);
        }

        return read;
    }

    private static Housing Made(Section housing) => new(
        housing.Find("lambing")?.AsChoice<LambingPlace>() ?? LambingPlace.Indoors,
        Apart([.. Pens(housing)], housing.Bag),
        housing.Find("lambing-pens")?.AsWhole(),
        Days(housing.Below("days-in-lambing-pen")))
    {
        // Out after about a week, or kept in for some: Irish Farmers Journal 514628; the ten days between are common practice, no source.
        TurnoutDaysAfterLambing = housing.Find("turnout-days-after-lambing")?.AsWhole() ?? 10,
    };

    private static IEnumerable<Pen> Pens(Section housing)
    {
        var names = new UniqueNames("pen");
        foreach (var entry in housing.ListBelow("pens"))
        {
            var name = names.Read(entry);
            var (length, width, trough) = (entry.Require("length")?.AsLength(), entry.Require("width")?.AsLength(), entry.Find("trough")?.AsLength());
            if (name is not null && length is { } l && width is { } w)
            {
                // All four walls, and one through the middle eaten at from both sides.
                var most = (2 * (l.Metres + w.Metres)) + (2 * Math.Max(l.Metres, w.Metres));
                entry.Bag.Add(trough?.Metres > most ? FlockMessages.TroughTooLong(entry.Find("trough")!.Span, trough.Value.Metres, name) : null);

                yield return new Pen(name, l, w, trough, entry.Find("name")!.Span) { At = Corner(entry.Below("at")) };
            }
        }
    }

    /// <summary>No pen that is given a place lies over another.</summary>
    private static ImmutableArray<Pen> Apart(ImmutableArray<Pen> pens, DiagnosticBag bag)
    {
        var placed = PenPlace.Of([.. pens.Where(p => p.At is not null)]);
        for (var i = 0; i < placed.Length; i++)
        {
            var (pen, over) = (placed[i].Pen, placed[..i].FirstOrDefault(p => p.LiesOver(placed[i])).Pen);
            bag.Add(over is null ? null : FlockMessages.PensOverlap(pen.Span, pen.Name, over.Name));
        }

        return pens;
    }

    private static PenCorner? Corner(Section at) =>
        at.IsThere && at.Require("right")?.AsLength() is { } right && at.Require("down")?.AsLength() is { } down ? new PenCorner(right, down) : null;

    private static DaysInLambingPen Days(Section days) => new(
        days.Find("single")?.AsWhole() ?? 1,
        days.Find("twin")?.AsWhole() ?? 2,
        days.Find("triplet")?.AsWhole() ?? 3);
}
