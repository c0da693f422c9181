namespace PaperFlock.Planning;

/// <summary>The days one colour is worn; both ends included.</summary>
public sealed record RaddlePeriod(string Colour, LocalDate From, LocalDate To)
{
    /// <summary>A colour a cycle while the tup is in; when the colours run out the first is used again.</summary>
    public static ImmutableArray<RaddlePeriod> Of(TuppingGroup group, int changeoverDays)
    {
        var periods = ImmutableArray.CreateBuilder<RaddlePeriod>();
        var start = group.TupIn;
        for (var i = 0; start < group.TupOut || i == 0; i++)
        {
            var next = start.PlusDays(changeoverDays);
            var last = next >= group.TupOut ? group.TupOut : next.PlusDays(-1);
            periods.Add(new RaddlePeriod(group.Raddle[i % group.Raddle.Length], start, last));
            start = next;
        }

        return periods.ToImmutable();
    }
}
