namespace PaperFlock.Flocks.Reading.Sections;

/// <summary>The figures of the scheduler.</summary>
internal static class PracticeReader
{
    /// <summary>From the first round to the last: with less, nobody looks at the ewes for fourteen hours and more. Common practice, no source.</summary>
    private const int FewestHours = 10;

    /// <summary>In winter it is not light before.</summary>
    private static readonly LocalTime WinterMorning = new(7, 0);

    /// <summary>Morning and evening: with one round a ewe on her back lies there till the next day. Common practice, no source.</summary>
    private const int FewestHeavy = 2;

    /// <summary>With fewer, a ewe that is stuck is alone for half a day and more. Common practice, no source.</summary>
    private const int FewestLambing = 3;

    public static Practice Read(Section practice, SeasonDraft season, LambingPlace lambing)
    {
        var usual = new Practice();
        var read = Read(practice, usual);
        // What the program takes by itself is never warned of.
        var feeding = Math.Max(season.GestationDays - (7 * read.FeedWeeksBeforeLambing.Twin), usual.ScanDaysAfterTupIn.First);
        practice.Bag.Add(practice.Find("scan-days-after-tup-in") is { } scan && read.ScanDaysAfterTupIn.First > feeding
            ? FlockMessages.ScanAfterFeeding(scan.Span, read.ScanDaysAfterTupIn.First, feeding, usual.ScanDaysAfterTupIn)
            : null);
        var first = LocalTime.Max(read.FirstRoundNotBefore, WinterMorning);
        if (!AreFarApart(first, read.LastRound))
        {
            var (key, better) = AreFarApart(first, usual.LastRound) ? ("last-round", usual.LastRound) : ("first-round-not-before", usual.FirstRoundNotBefore);
            practice.Bag.Add(FlockMessages.RoundsTooClose(practice.Find(key)!.Span, first, read.LastRound, better));
        }

        practice.Bag.Add(lambing == LambingPlace.Outdoors && practice.Find("house-days-before-lambing") is { } housed
            ? FlockMessages.NobodyHoused(housed.KeySpan, housed.Name, "take it out, or write `lambing: indoors` under housing")
            : null);

        return read;
    }

    private static Practice Read(Section practice, Practice usual) => new()
    {
        TeethToesTeatsWeeksBeforeTupping = practice.Find("teeth-toes-teats-weeks-before-tupping")?.AsWhole() ?? usual.TeethToesTeatsWeeksBeforeTupping,
        ScanDaysAfterTupIn = Ordered(practice.Find("scan-days-after-tup-in"), isRising: true, "the earlier day first", "[75, 80]") ?? usual.ScanDaysAfterTupIn,
        FeedWeeksBeforeLambing = Weeks(practice, usual.FeedWeeksBeforeLambing),
        TwoFeedsWeeksBeforeLambing = practice.Find("two-feeds-weeks-before-lambing")?.AsWhole() ?? usual.TwoFeedsWeeksBeforeLambing,
        HouseDaysBeforeLambing = practice.Find("house-days-before-lambing")?.AsWhole() ?? usual.HouseDaysBeforeLambing,
        Dag = practice.Find("dag")?.AsChoice<Dagging>() ?? usual.Dag,
        Shear = practice.Find("shear")?.AsChoice<Shearing>() ?? usual.Shear,
        BoosterWeeksBeforeLambing =
            Ordered(practice.Find("booster-weeks-before-lambing"), isRising: false, "the earliest week, the larger figure, first", "[6, 4]") ?? usual.BoosterWeeksBeforeLambing,
        ChecksPerDay = Checks(practice.Below("checks-per-day"), usual.ChecksPerDay),
        ChangeoverDays = practice.Find("changeover-days")?.AsWhole() ?? usual.ChangeoverDays,
        GestationSpreadDays = practice.Find("gestation-spread-days")?.AsNumber() ?? usual.GestationSpreadDays,
        GestationLitterDays = ByLitter(practice.Below("gestation-days-by-litter"), usual.GestationLitterDays),
        ConceptionPerCycle = practice.Find("conception-per-cycle")?.AsQuantity() ?? usual.ConceptionPerCycle,
        EwesPerTup = practice.Find("ewes-per-tup")?.AsWhole() ?? usual.EwesPerTup,
        LastRound = practice.Find("last-round")?.AsTime() ?? usual.LastRound,
        FirstRoundNotBefore = practice.Find("first-round-not-before")?.AsTime() ?? usual.FirstRoundNotBefore,
    };

    private static bool AreFarApart(LocalTime first, LocalTime last) => (last - first).ToDuration() >= Duration.FromHours(FewestHours);

    /// <summary>One figure for every ewe, or one for each litter.</summary>
    private static FeedingWeeks Weeks(Section practice, FeedingWeeks usual)
    {
        if (practice.Find("feed-weeks-before-lambing") is { Value: Yaml.Scalar } one)
        {
            return one.AsWhole() is { } weeks ? FeedingWeeks.Same(weeks) : usual;
        }

        var each = practice.Below("feed-weeks-before-lambing");
        return new(
            each.Find("single")?.AsWhole() ?? usual.Single,
            each.Find("twin")?.AsWhole() ?? usual.Twin,
            each.Find("triplet")?.AsWhole() ?? usual.Triplet,
            each.Find("thin")?.AsWhole() ?? usual.Thin);
    }

    /// <param name="isRising">The smaller figure comes first.</param>
    private static (int, int)? Ordered(Field? field, bool isRising, string order, string example) =>
        field?.AsPair(example) is not var (first, second) ? null
        : first == second || first < second == isRising ? (first, second)
        : field.Refuse<(int, int)?>(FlockMessages.WrongOrder(field.Span, field.Name, order, $"[{second}, {first}]"));

    private static ChecksPerDay Checks(Section checks, ChecksPerDay usual)
    {
        var (normalField, heavyField, lambingField) = (checks.Find("normal"), checks.Find("heavy"), checks.Find("lambing"));
        var normal = normalField is null ? usual.Normal : normalField.AsWhole();
        var heavy = heavyField is null ? usual.Heavy : heavyField.AsWhole();
        checks.Bag.Add(
            heavy < normal ? FlockMessages.FewerHeavyRounds((heavyField ?? normalField)!.Span, normal.Value, heavy.Value, isGiven: heavyField is not null)
            : heavy < FewestHeavy ? FlockMessages.TooFewRounds(heavyField!.Span, isLambing: false, heavy.Value, usual.Heavy, FewestHeavy)
            : null);
        var lambing = lambingField?.AsWhole();
        checks.Bag.Add(
            lambing < FewestLambing ? FlockMessages.TooFewRounds(lambingField!.Span, isLambing: true, lambing.Value, Math.Max(usual.Lambing, heavy ?? 0), FewestLambing)
            : lambing < heavy ? FlockMessages.FewerLambingRounds(lambingField!.Span, heavy.Value, lambing.Value)
            : null);

        var read = new ChecksPerDay(
            normal ?? usual.Normal,
            heavy ?? usual.Heavy,
            checks.Find("heavy-from-weeks-before-lambing")?.AsWhole() ?? usual.HeavyFromWeeksBeforeLambing);
        return lambing is { } rounds ? read with { Lambing = rounds } : read;
    }

    private static (int Single, int Twin, int More) ByLitter(Section litter, (int Single, int Twin, int More) usual) => (
        litter.Find("single")?.AsWhole() ?? usual.Single,
        litter.Find("twin")?.AsWhole() ?? usual.Twin,
        litter.Find("triplet")?.AsWhole() ?? usual.More);
}
