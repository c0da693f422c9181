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
        ewe.Bag.Add(lost is null ? null : WrongLoss(ewe.Find("lost-lambs")!.Span, lost.Value, mating, group, GestationLimits.Likely(gestation).Most));
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
    private static Diagnostic? WrongLoss(SourceSpan at, LocalDate lost, MatingRecord mating, TuppingGroup? group, int longest)
    {
        if (mating.Lambed is { } lambed)
        {
            return FlockMessages.LostAndLambed(at, lost, lambed);
        }

        if (group is null)
        {
            return null;
        }

        var (mated, lastMated) = mating.Mated(group);
        var (countable, term, latest) = (mated.PlusDays(PregnancyScan.EarliestCountableDays), lastMated.PlusDays(longest), group.TupOut.PlusDays(GestationLimits.Longest));
        return lost <= mated || lost > latest ? FlockMessages.LostOutsidePregnancy(at, lost, mated, latest)
            : mating.Scan > 0 && lost < countable ? FlockMessages.ScannedAfterLoss(at, lost, countable)
            : mating.Scan == 0 && lost >= countable ? FlockMessages.EmptyYetLost(at)
            : lost > term ? FlockMessages.LostAfterTerm(at, lost, term, isMarked: !mating.Marks.IsEmpty)
            : null;
    }

    /// <summary>What was seen of her after she had gone, at the place of what was seen.</summary>
    private static void CheckNothingAfter(Section ewe, Field gone, LocalDate on, MatingRecord mating, LocalDate? lost, TuppingGroup? group)
    {
        (string Key, string What, LocalDate? Day)[] seen =
            [("marks", "a mark", mating.Marks.IsEmpty ? null : mating.Marks[^1]), ("lambed", "a lambing", mating.Lambed), ("lost-lambs", "a loss of lambs", lost)];
        ewe.Bag.AddRange(seen.Where(s => s.Day > on).Select(s => FlockMessages.SeenAfterGone(ewe.Find(s.Key)!.Span, s.What, s.Day!.Value, on, gone.Span.Line)));

        var countable = (mating.Marks.IsEmpty ? group?.TupIn : mating.Marks[0])?.PlusDays(PregnancyScan.EarliestCountableDays);
        ewe.Bag.Add(mating.Scan is not null && on < countable ? FlockMessages.ScannedAfterGone(ewe.Find("scan")!.Span, countable.Value, on, gone.Span.Line) : null);
    }
}
