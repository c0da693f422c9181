namespace PaperFlock.Flocks.Reading.Sections;

/// <summary>
/// What came of her time with the tup. A ewe with no mark may still have been mated, so a count without a mark is
/// believed; a ewe the keeper says did not go to the tup can have no mark, no count and no lambing.
/// </summary>
internal sealed record MatingRecord(bool? ToTup, ImmutableArray<LocalDate> Marks, int? Scan, ScanStage? ScanStage, LocalDate? Lambed)
{
    /// <param name="group">Null when her group is not known or its dates are wrong: nothing is checked against it.</param>
    /// <param name="gestation">The average of her breed, in days.</param>
    /// <param name="today">Null: nothing is held against the calendar.</param>
    public static MatingRecord Read(Section ewe, TuppingGroup? group, int gestation, LocalDate? today)
    {
        var toTup = ewe.Find("to-tup")?.AsFlag();
        var marks = ReadMarks(ewe, group, today);
        var scan = ewe.Find("scan")?.AsWhole();
        var stage = ReadStage(ewe, scan);
        var lambed = ReadLambed(ewe, group, today);
        if (toTup is false)
        {
            var signs = ewe.FindAll("marks", "scan", "lambed", "lost-lambs").Where(sign => sign.Value is not Yaml.Sequence { Items.IsEmpty: true });
            ewe.Bag.AddRange(signs.Select(sign => FlockMessages.NotMated(sign.KeySpan, sign.Name)));
        }

        var read = new MatingRecord(toTup, marks, scan, stage, lambed);
        if (toTup is not false && group is not null)
        {
            ewe.Bag.Add(read.WrongScanDay(ewe, group, today));
            ewe.Bag.Add(read.UnlikelyLambing(ewe, group, GestationLimits.Likely(gestation)));
        }

        return read;
    }

    /// <summary>The first and the last day she can have been mated: by her marks, or by the days with the tup where she has none.</summary>
    public (LocalDate First, LocalDate Last) Mated(TuppingGroup group) => Marks.IsEmpty ? (group.TupIn, group.TupOut) : (Marks[0], Marks[^1]);

    private static ImmutableArray<LocalDate> ReadMarks(Section ewe, TuppingGroup? group, LocalDate? today)
    {
        var marks = new SortedSet<LocalDate>();
        foreach (var (date, item) in ewe.Find("marks")?.AsDates() ?? [])
        {
            ewe.Bag.Add(
                group is not null && !group.Stays.Any(stay => stay.Contains(date)) ? FlockMessages.MarkOutsideStay(item.Span, date, group.Stays)
                : date > today ? FlockMessages.AfterToday(item.Span, "a mark", date, today.Value)
                : !marks.Add(date) ? FlockMessages.MarkTwice(item.Span, date)
                : null);
        }

        return [.. marks];
    }

    private static ScanStage? ReadStage(Section ewe, int? scan) =>
        ewe.Find("scan-stage") is not { } field || field.AsChoice<Flocks.ScanStage>() is not { } stage ? null
        : scan == 0 || (!ewe.IsGiven("scan") && !ewe.IsMistyped("scan")) ? field.Refuse<ScanStage?>(FlockMessages.ScanStageWithoutScan(field.KeySpan, isEmpty: scan == 0))
        : stage;

    private static LocalDate? ReadLambed(Section ewe, TuppingGroup? group, LocalDate? today)
    {
        if (ewe.Find("lambed") is not { } field || field.AsDate() is not { } day)
        {
            return null;
        }

        var (earliest, latest) = (group?.TupIn.PlusDays(GestationLimits.Shortest), group?.TupOut.PlusDays(GestationLimits.Longest));
        var wrong = day > today ? FlockMessages.AfterToday(field.Span, "a lambing", day, today.Value)
            : day < earliest || day > latest ? FlockMessages.LambedImpossible(field.Span, day, earliest!.Value, latest!.Value)
            : null;
        return field.Unless<LocalDate?>(wrong, day);
    }

    /// <summary>The file has no day of the scan, but it was no later than today. Scanned empty is a count too.</summary>
    private Diagnostic? WrongScanDay(Section ewe, TuppingGroup group, LocalDate? today)
    {
        if (Scan is null || today is not { } now)
        {
            return null;
        }

        var (at, (first, last)) = (ewe.Find("scan")!.Span, Mated(group));
        return now < first.PlusDays(PregnancyScan.EarliestCountableDays) ? FlockMessages.ScannedTooSoon(at, first, isMark: !Marks.IsEmpty, now)
            : !Marks.IsEmpty && now < last.PlusDays(PregnancyScan.EarliestCountableDays) ? FlockMessages.ScannedSoonAfterMark(at, last, now)
            : null;
    }

    /// <summary>Where she was marked, a mating nobody saw would explain a lambing that no mark does; but a slip of the pen is likelier.</summary>
    private Diagnostic? UnlikelyLambing(Section ewe, TuppingGroup group, (int Least, int Most) days)
    {
        var (first, last) = (Mated(group).First.PlusDays(days.Least), Mated(group).Last.PlusDays(days.Most));
        return Lambed is { } day && (day < first || day > last)
            ? FlockMessages.LambedUnlikely(ewe.Find("lambed")!.Span, day, first, last, days, isMarked: !Marks.IsEmpty)
            : null;
    }
}
