using PaperFlock.Flocks.Reading.Values;

namespace PaperFlock.Flocks.Reading.Sections;

/// <summary>The figures of the scheduler.</summary>
internal static class PracticeReader
{
    public static Practice Read(Section practice)
    {
        var usual = new Practice();
        return new()
        {
            TeethToesTeatsWeeksBeforeTupping = practice.Find("teeth-toes-teats-weeks-before-tupping")?.AsWhole() ?? usual.TeethToesTeatsWeeksBeforeTupping,
            ScanDaysAfterTupIn = Rising(practice.Find("scan-days-after-tup-in")) ?? usual.ScanDaysAfterTupIn,
            FeedWeeksBeforeLambing = practice.Find("feed-weeks-before-lambing")?.AsWhole() ?? usual.FeedWeeksBeforeLambing,
            TwoFeedsWeeksBeforeLambing = practice.Find("two-feeds-weeks-before-lambing")?.AsWhole() ?? usual.TwoFeedsWeeksBeforeLambing,
            HouseDaysBeforeLambing = practice.Find("house-days-before-lambing")?.AsWhole() ?? usual.HouseDaysBeforeLambing,
            Dag = practice.Find("dag")?.AsChoice<Dagging>() ?? usual.Dag,
            Shear = practice.Find("shear")?.AsChoice<Shearing>() ?? usual.Shear,
            BoosterWeeksBeforeLambing = Falling(practice.Find("booster-weeks-before-lambing")) ?? usual.BoosterWeeksBeforeLambing,
            ChecksPerDay = Checks(practice.Below("checks-per-day"), usual.ChecksPerDay),
            ChangeoverDays = practice.Find("changeover-days")?.AsWhole() ?? usual.ChangeoverDays,
            GestationSpreadDays = practice.Find("gestation-spread-days")?.AsNumber() ?? usual.GestationSpreadDays,
            GestationLitterDays = ByLitter(practice.Below("gestation-days-by-litter"), usual.GestationLitterDays),
            ConceptionPerCycle = practice.Find("conception-per-cycle")?.AsFraction() ?? usual.ConceptionPerCycle,
            EwesPerTup = practice.Find("ewes-per-tup")?.AsWhole() ?? usual.EwesPerTup,
            LastRound = practice.Find("last-round")?.AsTime() ?? usual.LastRound,
            FirstRoundNotBefore = practice.Find("first-round-not-before")?.AsTime() ?? usual.FirstRoundNotBefore,
        };
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

    private static ChecksPerDay Checks(Section checks, ChecksPerDay usual) => new(
        checks.Find("normal")?.AsWhole() ?? usual.Normal,
        checks.Find("heavy")?.AsWhole() ?? usual.Heavy,
        checks.Find("heavy-from-weeks-before-lambing")?.AsWhole() ?? usual.HeavyFromWeeksBeforeLambing);

    private static (int Single, int Twin, int More) ByLitter(Section litter, (int Single, int Twin, int More) usual) => (
        litter.Find("single")?.AsWhole() ?? usual.Single,
        litter.Find("twin")?.AsWhole() ?? usual.Twin,
        litter.Find("triplet")?.AsWhole() ?? usual.More);
}
