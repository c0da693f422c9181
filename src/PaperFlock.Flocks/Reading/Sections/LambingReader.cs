using PaperFlock.Flocks.Reading.Values;

namespace PaperFlock.Flocks.Reading.Sections;

/// <summary>What came of a lambing. Without its day none of it means anything.</summary>
internal static class LambingReader
{
    private static readonly string[] Keys = ["lambed-time", "lambs-alive", "lambs-dead", "lambing-help"];

    public static LambingResult Read(Section ewe)
    {
        var result = new LambingResult(
            ewe.Find("lambed-time")?.AsTime(),
            ewe.Find("lambs-alive")?.AsWhole(),
            ewe.Find("lambs-dead")?.AsWhole(),
            ewe.Find("lambing-help")?.AsChoice<LambingHelp>());
        if (ewe.IsGiven("lambed") || ewe.IsMistyped("lambed"))
        {
            return result;
        }

        foreach (var field in Keys.Select(ewe.Find).OfType<Field>())
        {
            ewe.Bag.Add(FlockMessages.DoesNotApply(field.KeySpan, field.Name, "without `lambed`", "add `lambed:` with the day, or take it away"));
        }

        return LambingResult.Unknown;
    }
}
