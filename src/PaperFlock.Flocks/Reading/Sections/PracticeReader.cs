using NodaTime;
using PaperFlock.Flocks.Reading.Values;

namespace PaperFlock.Flocks.Reading.Sections;

/// <summary>
/// The figures of the scheduler. Defaults are common practice of the trade without a source, but for: the cycle, 17 days
/// (range 14 to 19, "Raising Sheep", a textbook); the gestation spread, 2 to 2.5 days within a breed (from memory: general
/// literature); shorter gestation with more lambs (Barbados Blackbelly and St Croix ewes, 1,291 gestations: single 149.8,
/// twin 147.4, triplet 146.7 days); conception to one service in season, 70 to 90 % (from memory: AHDB).
/// </summary>
internal static class PracticeReader
{
    public static Practice Read(Section practice) => new(
        practice.Find("teeth-toes-teats-weeks-before-tupping")?.AsWhole() ?? 8,
        Rising(practice.Find("scan-days-after-tup-in")) ?? (75, 80),
        Weeks(practice),
        practice.Find("two-feeds-weeks-before-lambing")?.AsWhole() ?? 3,
        practice.Find("house-days-before-lambing")?.AsWhole() ?? 7,
        practice.Find("dag")?.AsChoice<Dagging>() ?? Dagging.AtHousing,
        practice.Find("shear")?.AsChoice<Shearing>() ?? Shearing.BeforeTupping,
        Falling(practice.Find("booster-weeks-before-lambing")) ?? (6, 4),
        Checks(practice.Below("checks-per-day")),
        practice.Find("changeover-days")?.AsWhole() ?? 17,
        practice.Find("gestation-spread-days")?.AsNumber() ?? 2.5m,
        ByLitter(practice.Below("gestation-days-by-litter")),
        practice.Find("conception-per-cycle")?.AsFraction() ?? 0.80m,
        practice.Find("ewes-per-tup")?.AsWhole() ?? 50,
        practice.Find("last-round")?.AsTime() ?? new LocalTime(21, 30),
        practice.Find("first-round-not-before")?.AsTime() ?? new LocalTime(5, 0));

    /// <summary>Triplets two weeks before twins: Teagasc, reported by Agriland and the Irish Farmers Journal (8 to 10 weeks); thin ewes too
    /// (Irish Farmers Journal). Six weeks for the others is common practice, no source.</summary>
    private static FeedingWeeks Weeks(Section practice)
    {
        if (practice.Find("feed-weeks-before-lambing") is { Value: Yaml.Scalar } one)
        {
            return FeedingWeeks.Same(one.AsWhole() ?? 6);
        }

        var each = practice.Below("feed-weeks-before-lambing");
        return new(
            each.Find("single")?.AsWhole() ?? 6,
            each.Find("twin")?.AsWhole() ?? 6,
            each.Find("triplet")?.AsWhole() ?? 8,
            each.Find("thin")?.AsWhole() ?? 8);
    }

    private static (int First, int Last)? Rising(Field? field)
    {
        if (field?.AsPair("[75, 80]") is not { } pair)
        {
            return null;
        }

        if (pair.First > pair.Second)
        {
            field.Bag.Add(FlockMessages.WrongOrder(field.Span, field.Name, "the earlier day first", $"[{pair.Second}, {pair.First}]"));
            return null;
        }

        return pair;
    }

    private static (int Earliest, int Latest)? Falling(Field? field)
    {
        if (field?.AsPair("[6, 4]") is not { } pair)
        {
            return null;
        }

        if (pair.First < pair.Second)
        {
            field.Bag.Add(FlockMessages.WrongOrder(field.Span, field.Name, "the earliest week, the larger figure, first", $"[{pair.Second}, {pair.First}]"));
            return null;
        }

        return pair;
    }

    private static ChecksPerDay Checks(Section checks) => new(
        checks.Find("normal")?.AsWhole() ?? 2,
        checks.Find("heavy")?.AsWhole() ?? 4,
        checks.Find("heavy-from-weeks-before-lambing")?.AsWhole() ?? 6);

    private static (int Single, int Twin, int More) ByLitter(Section litter) => (
        litter.Find("single")?.AsWhole() ?? 1,
        litter.Find("twin")?.AsWhole() ?? 0,
        litter.Find("triplet")?.AsWhole() ?? -1);
}
