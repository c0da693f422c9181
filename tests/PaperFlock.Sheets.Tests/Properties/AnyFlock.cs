using CsCheck;
using NodaTime;
using NodaTime.Text;
using PaperFlock.Sheets.Tests.WorstCases;

namespace PaperFlock.Sheets.Tests.Properties;

/// <summary>Flock files of every kind a keeper may write, with nothing wrong in them.</summary>
internal static class AnyFlock
{
    /// <summary>Days from the tup going in to the latest a lamb is written down here.</summary>
    private const int LastLambing = 165;

    private static readonly string[] Names = ["Bracken", "Ŵyna", "Old Mother Blackberry of the Upper Field", "W", "Þrúður Ægisdóttir"];

    /// <summary>Kept as written, whatever they look like.</summary>
    private static readonly string[] OddTags = ["no", "on", "1e3", "0x1F", "-7", "~", "A/B #17", "it's \u00a3"];

    private static readonly string[] Zones =
        ["Europe/London", "Pacific/Auckland", "America/New_York", "Pacific/Kiritimati", "Pacific/Pago_Pago", "Asia/Kolkata", "Atlantic/Reykjavik", "Australia/Lord_Howe"];

    private static readonly string[] Anchors = ["tup-in", "tup-out", "scan", "feeding", "housing", "first-due", "last-due"];

    private static readonly Gen<int[]> Numbers = Gen.Int[0, 1_000_000].Array[24];

    /// <summary>A ewe is drawn as numbers: what they mean hangs on the day the tup goes in.</summary>
    private static readonly Gen<int[][]> Ewes = Gen.Int[0, 1_000_000].Array[12].Array[1, 20];

    private static readonly Gen<DrawnFlock> Drawn = Gen.Select(
        Gen.Int[0, 365 * 99], Gen.Int[1, 5], Ewes, Numbers, Numbers, Gen.Int[-70, 260],
        (day, groups, ewes, how, what, asOf) => Make(new LocalDate(2000, 2, 1).PlusDays(day), groups, ewes, how, what, asOf));

    /// <summary>The same flocks in every run, as <see cref="RandomCases"/> counts them.</summary>
    /// <param name="few">As many as a run of all tests has time for.</param>
    public static void Each(int few, Action<DrawnFlock> test)
    {
        var first = RandomCases.First;
        var tried = Parallel.For(first, first + RandomCases.Count(few), new ParallelOptions { MaxDegreeOfParallelism = 2 }, number => One(number, test));
        Assert.True(tried.IsCompleted);
    }

    public static void One(int number, Action<DrawnFlock> test)
    {
        var drawn = Drawn.Generate(RandomCases.Source(number), null, out _);
        try
        {
            test(drawn);
        }
        catch (Exception e)
        {
            throw new InvalidOperationException($"Flock {number.ToString(CultureInfo.InvariantCulture)}: {e.Message}\n{drawn}", e);
        }
    }

    private static DrawnFlock Make(LocalDate tupIn, int groups, int[][] ewes, int[] how, int[] what, int asOf) => new(
        new FlockText
        {
            Place = $"location: {{latitude: {(how[0] % 181) - 90}, longitude: {(how[1] % 361) - 180}}}\ntime-zone: {Zones[how[2] % Zones.Length]}",
            Season = $"tup-in: {Iso(tupIn)}{(how[3] % 3 == 0 ? "" : $"\ntup-out: {Iso(tupIn.PlusDays(30 + (how[3] % 40)))}")}\ngestation-days: {144 + (how[4] % 8)}",
            Breeds = how[5] % 2 == 0 ? [] : ["{name: Ryeland, mature-weight: 62 kg}", "{name: Finn, gestation-days: 144}"],
            Groups = [.. Enumerable.Range(0, groups).Select(i => Group(i, tupIn, what[i]))],
            Free = how[6] % 3 == 0 ? "free: [saturday, sunday]" : "",
            Away = [.. Enumerable.Range(0, how[7] % 3).Select(i => Away(tupIn.PlusDays((i * 100) + (how[8] % 60)), how[9] % 15))],
            Practice = Practice(how),
            Jobs = [.. Enumerable.Range(0, how[10] % 4).Select(i => Job(tupIn, what[5 + i], what[9 + i]))],
            Feeds = Feeds(what),
            Housing = how[11] % 4 == 0 ? "lambing: outdoors" : $"lambing-pens: {how[11] % 7}",
            Pens = how[11] % 4 == 0 ? [] : [.. Enumerable.Range(1, how[12] % 4).Select(i => $"{{name: Bay {i}, length: {2 + i} m, width: {1 + (how[12] % 4)} m{(i % 2 == 0 ? ", trough: 3 m" : "")}}}")],
            Contacts = [.. Enumerable.Range(0, how[13] % 4).Select(i => $"{{role: Vet, name: Fell Gate Vets {i}, phone: 01632 960 20{i}}}")],
            Ewes = ewes.Select((e, i) => FlockText.Ewe(i + 1, Ewe(e, e[1] % groups, IsOneDay(what[e[1] % groups]), tupIn, tupIn.PlusDays(asOf)), e[0] % 6 == 5 ? null : Names[e[0] % 5], i < OddTags.Length && e[11] % 5 == 0 ? OddTags[i] : null)),
            Print = Print(how[14], how[15], how[16]),
        },
        tupIn.PlusDays(asOf));

    /// <summary>By hand or artificial, and so without marks of a tup.</summary>
    private static bool IsOneDay(int how) => how % 5 < 2;

    private static string Group(int number, LocalDate tupIn, int how)
    {
        var joins = Iso(tupIn.PlusDays(number));
        return (how % 5) switch
        {
            0 => $"{{name: G{number}, mating: hand, date: {joins}}}",
            1 => $"{{name: G{number}, mating: artificial, date: {joins}}}",
            2 => $"{{name: G{number}, tup: Damson, tup-in: {joins}, tup-out: {Iso(tupIn.PlusDays(40 + number))}, raddle: [yellow, orange, red]}}",
            3 => $"{{name: G{number}, tup-in: {joins}, raddle: false}}",
            _ => $"{{name: G{number}}}",
        };
    }

    private static string Away(LocalDate from, int days) =>
        $"{{from: {Iso(from)}, to: {Iso(from.PlusDays(days))}{(days % 2 == 0 ? "" : ", sitter: Tom Birkett, phone: 01632 960 303")}}}";

    private static string Practice(int[] how) => string.Join(
        "\n",
        $"checks-per-day: {{normal: {1 + (how[17] % 12)}, heavy: {1 + (how[18] % 12)}, heavy-from-weeks-before-lambing: {how[19] % 9}}}",
        $"feed-weeks-before-lambing: {1 + (how[20] % 12)}",
        $"two-feeds-weeks-before-lambing: {how[20] % 7}",
        $"house-days-before-lambing: {how[21] % 50}",
        $"dag: {Of(how[22], "at-housing", "before-housing", "none")}",
        $"shear: {Of(how[22] / 3, "before-tupping", "at-housing", "after-lambing", "none")}",
        $"changeover-days: {10 + (how[23] % 12)}",
        string.Create(CultureInfo.InvariantCulture, $"gestation-spread-days: {0.5m + (how[23] % 50 / 10m)}"));

    private static string Job(LocalDate tupIn, int how, int when)
    {
        var title = how % 7 == 0 ? "Footbath all of them twice, and let them stand on the dry" : "Footbath";
        var handled = how % 2 == 0 ? ", minutes-per-ewe: 2" : "";
        return (how % 3) switch
        {
            0 => $"{{title: {(how % 2 == 0 ? "Market" : "Merchant closed")}, on: {Iso(tupIn.PlusDays((when % 320) - 60))}{handled}}}",
            1 => $"{{title: \"{title}\", before: {Anchors[when % Anchors.Length]}, days: [{10 + (when % 30)}, {when % 10}]{handled}}}",
            _ => $"{{title: \"{title}\", after: {Anchors[when % Anchors.Length]}, days: {when % 20}{handled}}}",
        };
    }

    private static string Feeds(int[] what) => string.Join(
        "\n",
        $"method: {Of(what[14], "per-lamb", "energy-balance")}",
        $"per-lamb: 0.{1 + (what[15] % 9)} kg",
        $"forage: {{kind: {Of(what[16], "hay", "haylage", "silage", "straw", "grass")}, ad-lib: {Of(what[16] / 5, "true", "false")}}}",
        $"concentrate: {{name: Ewe nuts, energy: {10 + (what[17] % 5)} MJ/kg, bag: {Of(what[18], "20 kg", "25 kg", "50 lb")}{(what[19] % 2 == 0 ? "" : $", scoop: 1.{what[19] % 10} kg")}}}",
        $"largest-feed: 0.{2 + (what[20] % 8)} kg",
        $"order-lead-days: {what[21] % 30}",
        $"margin: {what[22] % 20} %",
        $"ground: {Of(what[23], "lowland", "hill")}{(what[23] % 3 == 0 ? "\nbuckets: {name: Mineral bucket, weight: 22 kg, ewes-per-bucket: 10, days: 14}" : "")}");

    private static string Print(int how, int planner, int units)
    {
        var a4 = how % 3 != 0;
        return string.Join(
            "\n",
            $"paper: {(a4 ? "A4" : "Letter")}",
            $"planner: {(a4 ? Of(planner, "A3", "A2", "A4") : Of(planner, "Letter", "Tabloid"))}",
            $"units: {Of(units, "metric", "imperial", "both")}",
            $"week-starts: {(IsoDayOfWeek)(1 + (units % 7))}",
            $"gloves: {Of(how / 3, "true", "false")}",
            $"binding: {Of(planner / 3, "two-hole", "four-hole", "three-hole", "none")}",
            $"duplex: {Of(how / 6, "long-edge", "short-edge", "single-sided")}");
    }

    private static string Ewe(int[] how, int group, bool isOneDay, LocalDate tupIn, LocalDate asOf)
    {
        var stays = how[9] % 13 == 0 && how[9] / 13 % 2 == 1;
        // Nobody can count before day 40 from her first mark, which is day 12 of the season at the latest.
        var scan = stays || asOf < tupIn.PlusDays(12 + 40) ? -1 : (how[2] % 7) - 1;
        var lambed = tupIn.PlusDays(LastLambing - (how[3] / 8 % 10));
        var hasLambed = scan > 0 && how[3] % 8 == 0 && lambed <= asOf;
        // From the day the last of the groups is together, to before the first has gone.
        var marks = Enumerable.Range(0, how[4] % 3).Select(i => tupIn.PlusDays(5 + (8 * i) + (how[5] % 8))).Where(day => day <= asOf).Select(Iso).ToArray();
        return string.Join(", ", new[]
        {
            $"group: G{group}",
            scan >= 0 ? $"scan: {scan}" : null,
            scan > 0 && how[6] % 4 == 0 ? $"scan-stage: {Of(how[6] / 4, "early", "late")}" : null,
            how[7] % 2 == 0 ? $"weight: {40 + (how[7] % 80)} kg" : null,
            how[8] % 2 == 0 ? $"condition: {1 + (how[8] % 5)}" : null,
            how[8] % 3 == 0 ? $"breed: {Of(how[8] / 3, "Ryeland", "Finn", "Lleyn")}" : null,
            how[9] % 9 == 0 ? $"toes: {Of(how[9] / 9, "lame", "sound", "treated")}" : null,
            how[9] % 11 == 0 ? $"teats: {Of(how[9] / 11, "lost-half", "lumpy", "sound")}" : null,
            how[9] % 13 == 0 ? $"to-tup: {(stays ? "no" : "yes")}" : null,
            how[10] % 2 == 0 ? $"note: \"{string.Concat(Enumerable.Repeat("watch her ", 24))[..(how[10] % 120)]}x\"" : null,
            marks.Length > 0 && !isOneDay && !stays ? $"marks: [{string.Join(", ", marks)}]" : null,
            hasLambed ? $"lambed: {Iso(lambed)}" : null,
        }.OfType<string>());
    }

    private static string Of(int how, params string[] choices) => choices[how % choices.Length];

    private static string Iso(LocalDate day) => LocalDatePattern.Iso.Format(day);
}

/// <param name="AsOf">The day the pack is made.</param>
internal sealed record DrawnFlock(FlockText Flock, LocalDate AsOf)
{
    public override string ToString() => $"# as of {LocalDatePattern.Iso.Format(AsOf)}\n{Flock}";
}
