using CsCheck;
using NodaTime;
using PaperFlock.Flocks;

namespace PaperFlock.Planning.Tests;

/// <summary>Small flocks of every kind a flock file can describe, drawn for properties of the whole plan.</summary>
internal static class AnyFlock
{
    private const int MostGroups = 3;

    private static readonly Gen<Ewe> GenEwe =
        from scan in Gen.Int[-2, 5]
        from stage in OneOf<ScanStage?>(null, null, ScanStage.Early, ScanStage.Late)
        from weight in Gen.Int[20, 110]
        from condition in Gen.Int[0, 10]
        from breed in OneOf(null, "Finn", "Ryeland", "Lleyn")
        from unfit in Gen.Int[0, 15]
        from lambed in Gen.Int[0, 15]
        from toTup in OneOf<bool?>(null, null, null, true, false)
        select Sample.Ewe(scan: scan < 0 ? null : scan, stage: stage) with
        {
            Breed = breed,
            Weight = weight < 40 ? null : new Mass(weight),
            Condition = condition < 2 ? null : condition / 2m,
            Teeth = unfit == 0 ? Teeth.Broken : Teeth.Sound,
            Toes = unfit == 1 ? Toes.Lame : Toes.Unchecked,
            Teats = unfit == 2 ? Teats.LostHalf : Teats.Sound,
            Lambed = lambed == 0 ? Sample.Day("2027-01-02") : null,
            ToTup = toTup,
        };

    /// <summary>A ewe, which group she is in and on which days of its stay she was marked.</summary>
    private static readonly Gen<(Ewe Ewe, int Group, int[] Marks)> GenMember =
        Gen.Select(GenEwe, Gen.Int[0, MostGroups - 1], Gen.Int[0, 60].Array[0, 3]);

    private static readonly Gen<ImmutableArray<TuppingGroup>> GenGroups =
        Gen.Select(Gen.Enum<Mating>(), Gen.Int[0, 40], Gen.Int[0, 70], Gen.Int[0, 3]).Array[1, MostGroups].Select(drawn =>
            drawn.Select((g, i) => g.Item1 == Mating.Natural
                ? Sample.Group($"G{i}", Sample.TupIn.PlusDays(g.Item2), Sample.TupIn.PlusDays(g.Item2 + g.Item3), $"T{i}") with
                {
                    Raddle = [.. new[] { "yellow", "orange", "red" }.Take(g.Item4)],
                }
                : Sample.OneDay($"G{i}", Sample.TupIn.PlusDays(g.Item2), g.Item1)).ToImmutableArray());

    private static readonly Gen<KeeperDays> GenKeeperDays =
        from free in Gen.Int[1, 7].Array[1, 4]
        from away in Gen.Select(Gen.Int[0, 300], Gen.Int[0, 30]).Array[0, 3]
        select new KeeperDays(
            [.. free.Distinct().Select(d => (IsoDayOfWeek)d)],
            [.. away.OrderBy(a => a.Item1).Select(a => new Absence(
                Sample.Day("2026-05-25").PlusDays(a.Item1), Sample.Day("2026-05-25").PlusDays(a.Item1 + a.Item2), null, null, default))]);

    private static readonly Gen<ImmutableArray<OwnJob>> GenOwnJobs =
        Gen.OneOf(
            Gen.Select(Gen.Enum<JobAnchor>(), Gen.Int[-60, 30], Gen.Int[0, 20], Gen.Bool, (anchor, first, days, handled) =>
                Sample.Own("Footbath", anchor, first, first + days, handled)),
            Gen.Select(Gen.Int[0, 300], Gen.Bool, Gen.Bool, (day, handled, closed) =>
                Sample.OwnOn("Market", "2026-05-25", handled) with { On = Sample.Day("2026-05-25").PlusDays(day), Closed = closed }))
        .Array[0, 3].Select(jobs => jobs.ToImmutableArray());

    private static readonly Gen<Practice> GenPractice =
        from weeks in Gen.Select(Gen.Int[1, 10], Gen.Int[0, 6], Gen.Int[0, 8])
        from house in Gen.Int[0, 30]
        from booster in Gen.Select(Gen.Int[1, 8], Gen.Int[0, 4])
        from dag in Gen.Enum<Dagging>()
        from shear in Gen.Enum<Shearing>()
        from cycle in Gen.Int[10, 21]
        from spread in Gen.Int[5, 60]
        from conception in Gen.Int[10, 100]
        select Sample.Practice() with
        {
            FeedWeeksBeforeLambing = new FeedingWeeks(weeks.Item1, weeks.Item1, weeks.Item1 + 2, weeks.Item1 + 1),
            TwoFeedsWeeksBeforeLambing = weeks.Item2,
            ChecksPerDay = new ChecksPerDay(2, 4, weeks.Item3),
            HouseDaysBeforeLambing = house,
            BoosterWeeksBeforeLambing = (booster.Item1 + booster.Item2, booster.Item1),
            Dag = dag,
            Shear = shear,
            ChangeoverDays = cycle,
            GestationSpreadDays = spread / 10m,
            ConceptionPerCycle = conception / 100m,
        };

    private static readonly Gen<Feeds> GenFeeds =
        from method in Gen.Enum<FeedMethod>()
        from kind in Gen.Enum<ForageKind>()
        from energy in Gen.Int[50, 120]
        from rate in Gen.Int[0, 9]
        from scoop in Gen.Int[0, 20]
        from buckets in Gen.Bool
        from lead in Gen.Int[0, 21]
        from ground in Gen.Enum<Ground>()
        from perLamb in Gen.Int[0, 12]
        from largest in Gen.Int[1, 12]
        from intake in Gen.Int[0, 30]
        from dryMatter in Gen.Int[15, 25]
        from odd in Gen.Int[0, 15]
        from parted in Gen.Enum<Parting>()
        from changeDay in Gen.Int[0, 7]
        from lambed in Gen.Int[0, 30]
        let feeds = Sample.Feeds()
        select feeds with
        {
            Method = method,
            PerLamb = perLamb == 0 ? null : new Mass(perLamb * 0.15m),
            LargestFeed = new Mass(largest / 10m),
            MostDryMatter = dryMatter / 1000m,
            Scales = odd != 1 || scoop == 0,
            ForageOnly = odd == 2,
            Parted = parted,
            ChangeDay = changeDay == 0 ? null : (IsoDayOfWeek)changeDay,
            Lambed = new LambedFeeds(new Mass(lambed / 20m), new Mass(lambed / 10m), new Mass(lambed / 10m)),
            Forage = feeds.Forage with
            {
                Kind = kind,
                Energy = energy / 10m,
                SubstitutionRate = rate / 10m,
                Intake = intake < 3 ? null : intake / 1000m,
                Bale = kind == ForageKind.Grass ? null : feeds.Forage.Bale,
            },
            Concentrate = feeds.Concentrate with { Scoop = scoop == 0 ? null : new Mass(scoop / 10m) },
            Buckets = buckets ? feeds.Buckets : null,
            OrderLeadDays = lead,
            Ground = ground,
        };

    private static readonly Gen<Flocks.Housing> GenHousing =
        from place in OneOf(LambingPlace.Indoors, LambingPlace.Indoors, LambingPlace.Indoors, LambingPlace.Outdoors)
        from pens in Gen.Select(Gen.Int[10, 80], Gen.Int[10, 40], Gen.Bool).Array[0, 3]
        from lambingPens in Gen.Int[-1, 6]
        from turnout in Gen.Int[0, 20]
        select Sample.Housing(place) with
        {
            Pens = [.. pens.Select((p, i) => FeedingSample.Pen($"Pen {i + 1}", p.Item1 / 10m, p.Item2 / 10m, p.Item3 ? p.Item1 / 10m : null))],
            LambingPens = lambingPens < 0 ? null : lambingPens,
            TurnoutDaysAfterLambing = turnout,
        };

    public static readonly Gen<Flock> Drawn =
        from groups in GenGroups
        from members in GenMember.Array[0, 12]
        from keeperDays in GenKeeperDays
        from ownJobs in GenOwnJobs
        from practice in GenPractice
        from feeds in GenFeeds
        from housing in GenHousing
        from weekStarts in Gen.Int[1, 7]
        from units in Gen.Enum<UnitSystem>()
        from fields in Gen.Int[0, 31]
        select Sample.Flock(groups, [.. members.Select((m, i) => In(groups[m.Group % groups.Length], m.Ewe, m.Marks, i))]) with
        {
            Breeds = [new Breed("Finn", 144, null), new Breed("Ryeland", null, new Mass(62))],
            KeeperDays = keeperDays,
            OwnJobs = ownJobs,
            Practice = practice,
            Feeds = feeds,
            Housing = housing,
            Fields = new ClassFields(
                (fields & 1) == 0 ? null : "Low", (fields & 2) == 0 ? null : "Croft", (fields & 4) == 0 ? null : "Low",
                (fields & 8) == 0 ? null : "Top", (fields & 16) == 0 ? null : "Croft"),
            Print = Sample.Print() with { WeekStarts = (IsoDayOfWeek)weekStarts, Units = units },
        };

    private static Gen<T> OneOf<T>(params T[] choices) => Gen.Int[0, choices.Length - 1].Select(i => choices[i]);

    private static Ewe In(TuppingGroup group, Ewe ewe, int[] marks, int number) => ewe with
    {
        Tag = $"ZZ 0123456 {number:00000}",
        Group = group.Name,
        Marks = [.. marks.Select(group.TupIn.PlusDays).Where(day => day <= group.TupOut).Distinct().Order()],
    };
}
