using System.Collections.Immutable;
using NodaTime;
using PaperFlock.Flocks.Reading.Values;

namespace PaperFlock.Flocks.Reading.Sections;

/// <summary>
/// What came of her time with the tup. A ewe with no mark may still have been mated, so a count without a mark is
/// believed; a ewe the keeper says did not go to the tup can have no mark, no count and no lambing.
/// </summary>
internal sealed record MatingRecord(bool? ToTup, ImmutableArray<LocalDate> Marks, int? Scan, ScanStage? ScanStage, LocalDate? Lambed)
{
    /// <summary>No live lamb comes sooner; the least the format takes for a breed's gestation.</summary>
    private const int ShortestGestationDays = 130;

    /// <summary>The most the format takes for a breed's gestation.</summary>
    private const int LongestGestationDays = 165;

    private static readonly string[] SignsOfMating = ["marks", "scan", "lambed"];

    /// <param name="group">Null when her group is not known or its dates are wrong: nothing is checked against it.</param>
    public static MatingRecord Read(Section ewe, TuppingGroup? group)
    {
        var toTup = ewe.Find("to-tup")?.AsFlag();
        var marks = ReadMarks(ewe, group);
        var scan = ewe.Find("scan")?.AsWhole();
        var stage = ReadStage(ewe, scan);
        var lambed = ReadLambed(ewe, group);
        if (toTup is false)
        {
            foreach (var field in SignsOfMating.Select(ewe.Find).OfType<Field>())
            {
                if (field.Value is not Yaml.Sequence { Items.IsEmpty: true })
                {
                    ewe.Bag.Add(FlockMessages.NotMated(field.KeySpan, field.Name));
                }
            }
        }

        return new MatingRecord(toTup, marks, scan, stage, lambed);
    }

    private static ImmutableArray<LocalDate> ReadMarks(Section ewe, TuppingGroup? group)
    {
        var marks = new SortedSet<LocalDate>();
        foreach (var (date, item) in ewe.Find("marks")?.AsDates() ?? [])
        {
            if (group is not null && (date < group.TupIn || date > group.TupOut))
            {
                ewe.Bag.Add(FlockMessages.MarkOutsideStay(item.Span, date, group.TupIn, group.TupOut));
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

        if ((!ewe.IsGiven("scan") && !ewe.IsMistyped("scan")) || scan == 0)
        {
            ewe.Bag.Add(FlockMessages.ScanStageWithoutScan(field.KeySpan, isEmpty: scan == 0));
            return null;
        }

        return stage;
    }

    private static LocalDate? ReadLambed(Section ewe, TuppingGroup? group)
    {
        var field = ewe.Find("lambed");
        var lambed = field?.AsDate();
        if (lambed is not { } day || group is null)
        {
            return lambed;
        }

        var (earliest, latest) = (group.TupIn.PlusDays(ShortestGestationDays), group.TupOut.PlusDays(LongestGestationDays));
        if (day < earliest || day > latest)
        {
            ewe.Bag.Add(FlockMessages.LambedImpossible(field!.Span, day, earliest, latest));
            return null;
        }

        return day;
    }
}
