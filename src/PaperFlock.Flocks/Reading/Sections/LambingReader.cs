using NodaTime;
using PaperFlock.Flocks.Reading.Values;

namespace PaperFlock.Flocks.Reading.Sections;

/// <summary>What came of a lambing. Without its day none of it means anything.</summary>
internal static class LambingReader
{
    private static readonly string[] Keys = ["lambed-time", "lambs-alive", "lambs-dead", "lambing-help"];

    public static LambingResult Read(Section ewe)
    {
        var result = new LambingResult(
            ewe.Find("lambed-time")?.AsTime(LocalTime.Midnight, new LocalTime(23, 59)),
            ewe.Find("lambs-alive")?.AsWhole(0, LambingResult.MostLambs),
            ewe.Find("lambs-dead")?.AsWhole(0, LambingResult.MostLambs),
            ewe.Find("lambing-help")?.AsChoice(("none", LambingHelp.None), ("hand", LambingHelp.Hand), ("vet", LambingHelp.Vet)));
        if (ewe.IsGiven("lambed") || ewe.IsMistyped("lambed"))
        {
            return result;
        }

        foreach (var field in Keys.Select(ewe.Find).OfType<Field>())
        {
            ewe.Bag.Add(Wording.DoesNotApply(field.KeySpan, field.Name, "without `lambed`", "add `lambed:` with the day, or take it away"));
        }

        return LambingResult.Unknown;
    }
}
