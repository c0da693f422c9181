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
            foreach (var sign in ewe.FindAll("marks", "scan", "lambed", "lost-lambs").Where(sign => sign.Value is not Yaml.Sequence { Items.IsEmpty: true }))
            {
                ewe.Bag.Add(FlockMessages.NotMated(sign.KeySpan, sign.Name));
            }
        }
        else if (group is not null)
        {
            CheckScanDay(ewe, scan, marks, group, today);
            CheckGestation(ewe, lambed, marks, group, GestationLimits.Likely(gestation));
        }

        return new MatingRecord(toTup, marks, scan, stage, lambed);
    }

    private static ImmutableArray<LocalDate> ReadMarks(Section ewe, TuppingGroup? group, LocalDate? today)
    {
        var marks = new SortedSet<LocalDate>();
        foreach (var (date, item) in ewe.Find("marks")?.AsDates() ?? [])
        {
            if (group is not null && !group.Stays.Any(stay => stay.Contains(date)))
            {
                ewe.Bag.Add(FlockMessages.MarkOutsideStay(item.Span, date, group.Stays));
            }
            else if (date > today)
            {
                ewe.Bag.Add(FlockMessages.AfterToday(item.Span, "a mark", date, today.Value));
            }
            else if (!marks.Add(date))
            {
                ewe.Bag.Add(FlockMessages.MarkTwice(item.Span, date));
            }
        }

        return [.. marks];
    }

    private static ScanStage? ReadStage(Section ewe, int? scan)
    {
        if (ewe.Find("scan-stage") is not { } field
            || field.AsChoice<Flocks.ScanStage>() is not { } stage)
        {
            return null;
        }

        return (!ewe.IsGiven("scan") && !ewe.IsMistyped("scan")) || scan == 0
            ? field.Refuse<ScanStage?>(FlockMessages.ScanStageWithoutScan(field.KeySpan, isEmpty: scan == 0))
            : stage;
    }

    private static LocalDate? ReadLambed(Section ewe, TuppingGroup? group, LocalDate? today)
    {
        var field = ewe.Find("lambed");
        var lambed = field?.AsDate();
        if (field is null || lambed is not { } day)
        {
            return null;
        }

        if (day > today)
        {
            return field.Refuse<LocalDate?>(FlockMessages.AfterToday(field.Span, "a lambing", day, today.Value));
        }

        if (group is null)
        {
            return day;
        }

        var (earliest, latest) = (group.TupIn.PlusDays(GestationLimits.Shortest), group.TupOut.PlusDays(GestationLimits.Longest));
        return day >= earliest && day <= latest ? day : field.Refuse<LocalDate?>(FlockMessages.LambedImpossible(field.Span, day, earliest, latest));
    }

    /// <summary>The file has no day of the scan, but it was no later than today. Scanned empty is a count too.</summary>
    private static void CheckScanDay(Section ewe, int? scan, ImmutableArray<LocalDate> marks, TuppingGroup group, LocalDate? today)
    {
        if (scan is null || today is not { } now)
        {
            return;
        }

        var at = ewe.Find("scan")!.Span;
        var mated = marks.IsEmpty ? group.TupIn : marks[0];
        if (now < mated.PlusDays(PregnancyScan.EarliestCountableDays))
        {
            ewe.Bag.Add(FlockMessages.ScannedTooSoon(at, mated, isMark: !marks.IsEmpty, now));
        }
        else if (!marks.IsEmpty && now < marks[^1].PlusDays(PregnancyScan.EarliestCountableDays))
        {
            ewe.Bag.Add(FlockMessages.ScannedSoonAfterMark(at, marks[^1], now));
        }
    }

    /// <summary>Where she was marked, a mating nobody saw would explain a lambing that no mark does; but a slip of the pen is likelier.</summary>
    private static void CheckGestation(Section ewe, LocalDate? lambed, ImmutableArray<LocalDate> marks, TuppingGroup group, (int Least, int Most) days)
    {
        var (first, last) = marks.IsEmpty ? (group.TupIn, group.TupOut) : (marks[0], marks[^1]);
        if (lambed is { } day && (day < first.PlusDays(days.Least) || day > last.PlusDays(days.Most)))
        {
            ewe.Bag.Add(FlockMessages.LambedUnlikely(
                ewe.Find("lambed")!.Span, day, first.PlusDays(days.Least), last.PlusDays(days.Most), days, isMarked: !marks.IsEmpty));
        }
    }
}
