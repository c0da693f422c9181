namespace PaperFlock.Flocks.Reading.Sections;

/// <summary>That she lost her lambs, or has left the flock, and what cannot have happened after it.</summary>
internal static class LossesReader
{
    /// <param name="group">Null when her group is not known or its dates are wrong: nothing is checked against it.</param>
    /// <param name="gestation">The average of her breed, in days.</param>
    /// <param name="today">Null: nothing is held against the calendar.</param>
    public static (LocalDate? LostLambs, Loss? Gone) Read(Section ewe, MatingRecord mating, TuppingGroup? group, int gestation, LocalDate? today)
    {
        var lost = Seen(ewe.Find("lost-lambs"), "a loss", today);
        var below = ewe.Below("gone");
        var day = Seen(below.Require("on"), "a loss", today);
        var why = below.Require("why")?.AsChoice<LossReason>();
        if (lost is not null)
        {
            CheckLostLambs(ewe, lost.Value, mating, group, GestationLimits.Likely(gestation).Most);
        }

        if (day is not { } on || why is not { } reason)
        {
            return (lost, null);
        }

        CheckNothingAfter(ewe, below.Find("on")!, on, mating, lost, group);
        return (lost, new Loss(on, reason));
    }

    private static LocalDate? Seen(Field? field, string what, LocalDate? today) =>
        field?.AsDate() is not { } day ? null
        : day > today ? field.Refuse<LocalDate?>(FlockMessages.AfterToday(field.Span, what, day, today.Value))
        : day;

    /// <param name="longest">Days a ewe may carry: after them she would have lambed.</param>
    private static void CheckLostLambs(Section ewe, LocalDate lost, MatingRecord mating, TuppingGroup? group, int longest)
    {
        var at = ewe.Find("lost-lambs")!.Span;
        if (mating.Lambed is { } lambed)
        {
            ewe.Bag.Add(FlockMessages.LostAndLambed(at, lost, lambed));
        }
        else if (group is not null)
        {
            var mated = mating.Marks.IsEmpty ? group.TupIn : mating.Marks[0];
            var latest = group.TupOut.PlusDays(GestationLimits.Longest);
            if (lost <= mated || lost > latest)
            {
                ewe.Bag.Add(FlockMessages.LostOutsidePregnancy(at, lost, mated, latest));
            }
            else if (mated.PlusDays(PregnancyScan.EarliestCountableDays) is var countable && mating.Scan > 0 && lost < countable)
            {
                ewe.Bag.Add(FlockMessages.ScannedAfterLoss(at, lost, countable));
            }
            else if (mating.Scan == 0 && lost >= countable)
            {
                ewe.Bag.Add(FlockMessages.EmptyYetLost(at));
            }
            else if ((mating.Marks.IsEmpty ? group.TupOut : mating.Marks[^1]).PlusDays(longest) is var term && lost > term)
            {
                ewe.Bag.Add(FlockMessages.LostAfterTerm(at, lost, term, isMarked: !mating.Marks.IsEmpty));
            }
        }
    }

    /// <summary>What was seen of her after she had gone, at the place of what was seen.</summary>
    private static void CheckNothingAfter(Section ewe, Field gone, LocalDate on, MatingRecord mating, LocalDate? lost, TuppingGroup? group)
    {
        foreach (var (key, what, day) in new[] { ("marks", "a mark", mating.Marks.IsEmpty ? null : (LocalDate?)mating.Marks[^1]), ("lambed", "a lambing", mating.Lambed), ("lost-lambs", "a loss of lambs", lost) })
        {
            if (day > on)
            {
                ewe.Bag.Add(FlockMessages.SeenAfterGone(ewe.Find(key)!.Span, what, day.Value, on, gone.Span.Line));
            }
        }

        var countable = (mating.Marks.IsEmpty ? group?.TupIn : mating.Marks[0])?.PlusDays(PregnancyScan.EarliestCountableDays);
        if (mating.Scan is not null && on < countable)
        {
            ewe.Bag.Add(FlockMessages.ScannedAfterGone(ewe.Find("scan")!.Span, countable.Value, on, gone.Span.Line));
        }
    }
}
