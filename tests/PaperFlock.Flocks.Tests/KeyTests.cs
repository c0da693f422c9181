using PaperFlock.Flocks.Reading;

namespace PaperFlock.Flocks.Tests;

/// <summary>The table of keys against what is read: every key does something, and every default is the one stated.</summary>
public class KeyTests
{
    /// <summary>For each key of each table a value that is not its default.</summary>
    private static readonly Dictionary<string, string> Values = new(StringComparer.Ordinal)
    {
        ["holding.name"] = "Other Bank",
        ["holding.code"] = "HOB",
        ["holding.keeper"] = "Nell Ashworth",
        ["holding.location.latitude"] = "-43.5",
        ["holding.location.longitude"] = "171.7",
        ["holding.time-zone"] = "Pacific/Auckland",
        ["holding.grid-reference"] = "NY 480 046",
        ["holding.postcode"] = "ZZ9 9ZZ",
        ["holding.find"] = "Bins by the door",
        ["holding.signal"] = "At the top gate",
        ["holding.sick-pen"] = "Lean-to",
        ["holding.contacts[].role"] = "Neighbour",
        ["holding.contacts[].name"] = "Fell Gate Vets",
        ["holding.contacts[].phone"] = "01632 960 999",
        ["holding.contacts[].note"] = "out of hours too",
        ["print.paper"] = "Letter",
        ["print.planner"] = "A2",
        ["print.units"] = "both",
        ["print.week-starts"] = "sunday",
        ["print.gloves"] = "no",
        ["print.binding"] = "four-hole",
        ["print.duplex"] = "short-edge",
        ["print.log-weeks"] = "4",
        ["season.tup-in"] = "2026-08-11",
        ["season.lambing-from"] = "2027-01-05",
        ["season.tup-out"] = "2026-09-10",
        ["season.gestation-days"] = "150",
        ["season.last"] = "hollin-bank-2025.yaml",
        ["breeds[].name"] = "Ryeland",
        ["breeds[].gestation-days"] = "145",
        ["breeds[].mature-weight"] = "70 kg",
        ["groups[].name"] = "Hill",
        ["groups[].tup"] = "Bramley",
        ["groups[].tups[].name"] = "Russet",
        ["groups[].tups[].in"] = "2026-08-12",
        ["groups[].tups[].out"] = "2026-08-30",
        ["groups[].mating"] = "hand",
        ["groups[].date"] = "2026-08-15",
        ["groups[].tup-in"] = "2026-08-12",
        ["groups[].tup-out"] = "2026-09-01",
        ["groups[].raddle"] = "[green]",
        ["groups[].field"] = "Low Paddock",
        ["fields.singles"] = "Paddock",
        ["fields.twins"] = "Orchard",
        ["fields.triplets"] = "Croft",
        ["fields.not-in-lamb"] = "Top Field",
        ["fields.with-lambs"] = "Croft",
        ["keeper-days.free"] = "[saturday]",
        ["keeper-days.away[].from"] = "2026-12-26",
        ["keeper-days.away[].to"] = "2027-01-03",
        ["keeper-days.away[].sitter"] = "Tom Birkett",
        ["keeper-days.away[].phone"] = "01632 960 303",
        ["practice.teeth-toes-teats-weeks-before-tupping"] = "9",
        ["practice.scan-days-after-tup-in"] = "[80, 90]",
        ["practice.feed-weeks-before-lambing.single"] = "5",
        ["practice.feed-weeks-before-lambing.twin"] = "7",
        ["practice.feed-weeks-before-lambing.triplet"] = "10",
        ["practice.feed-weeks-before-lambing.thin"] = "9",
        ["practice.two-feeds-weeks-before-lambing"] = "2",
        ["practice.house-days-before-lambing"] = "14",
        ["practice.dag"] = "none",
        ["practice.shear"] = "after-lambing",
        ["practice.booster-weeks-before-lambing"] = "[5, 4]",
        ["practice.checks-per-day.normal"] = "1",
        ["practice.checks-per-day.heavy"] = "5",
        ["practice.checks-per-day.lambing"] = "7",
        ["practice.checks-per-day.heavy-from-weeks-before-lambing"] = "4",
        ["practice.changeover-days"] = "16",
        ["practice.gestation-spread-days"] = "3",
        ["practice.gestation-days-by-litter.single"] = "2",
        ["practice.gestation-days-by-litter.twin"] = "1",
        ["practice.gestation-days-by-litter.triplet"] = "-2",
        ["practice.conception-per-cycle"] = "75 %",
        ["practice.ewes-per-tup"] = "40",
        ["practice.last-round"] = "22:00",
        ["practice.first-round-not-before"] = "06:30",
        ["jobs[].title"] = "Dip",
        ["jobs[].on"] = "2026-12-24",
        ["jobs[].before"] = "first-due",
        ["jobs[].after"] = "tup-out",
        ["jobs[].days"] = "[30, 20]",
        ["jobs[].minutes-per-ewe"] = "2.5",
        ["jobs[].handled"] = "true",
        ["jobs[].closed"] = "true",
        ["feeds.method"] = "energy-balance",
        ["feeds.per-lamb"] = "500 g",
        ["feeds.forage.kind"] = "straw",
        ["feeds.forage.energy"] = "9.1 MJ/kg",
        ["feeds.forage.protein"] = "101 g/kg",
        ["feeds.forage.dry-matter"] = "87 %",
        ["feeds.forage.bale"] = "15 kg",
        ["feeds.forage.ad-lib"] = "false",
        ["feeds.forage.intake"] = "1.5 %",
        ["feeds.forage.substitution"] = "0.63",
        ["feeds.concentrate.name"] = "Sheep nuts",
        ["feeds.concentrate.energy"] = "12 MJ/kg",
        ["feeds.concentrate.protein"] = "200 g/kg",
        ["feeds.concentrate.dry-matter"] = "88 %",
        ["feeds.concentrate.bag"] = "25 kg",
        ["feeds.concentrate.scoop"] = "1.4 kg",
        ["feeds.largest-feed"] = "1 lb",
        ["feeds.most-dry-matter"] = "2.2 %",
        ["feeds.scales"] = "no",
        ["feeds.parted"] = "no",
        ["feeds.change-day"] = "thursday",
        ["feeds.lambed.single"] = "0.5 kg",
        ["feeds.lambed.twin"] = "1.2 kg",
        ["feeds.lambed.triplet"] = "3 lb",
        ["feeds.buckets.name"] = "Molasses",
        ["feeds.buckets.weight"] = "20 kg",
        ["feeds.buckets.ewes-per-bucket"] = "25",
        ["feeds.buckets.days"] = "21",
        ["feeds.order-lead-days"] = "10",
        ["feeds.margin"] = "5 %",
        ["feeds.ground"] = "hill",
        ["housing.lambing"] = "outdoors",
        ["housing.pens[].name"] = "South bay",
        ["housing.pens[].length"] = "6.5 m",
        ["housing.pens[].width"] = "12 ft",
        ["housing.pens[].trough"] = "9 m",
        ["housing.pens[].at.right"] = "4.8 m",
        ["housing.pens[].at.down"] = "3 m",
        ["housing.lambing-pens"] = "4",
        ["housing.turnout-days-after-lambing"] = "14",
        ["housing.days-in-lambing-pen.single"] = "2",
        ["housing.days-in-lambing-pen.twin"] = "3",
        ["housing.days-in-lambing-pen.triplet"] = "4",
        ["ewes[].tag"] = "ZZ 7654321 00201",
        ["ewes[].name"] = "Bracken",
        ["ewes[].breed"] = "Lleyn",
        ["ewes[].group"] = "Orchard",
        ["ewes[].born"] = "2021",
        ["ewes[].weight"] = "72 kg",
        ["ewes[].condition"] = "3.5",
        ["ewes[].teeth"] = "worn",
        ["ewes[].toes"] = "treated",
        ["ewes[].teats"] = "lost-half",
        ["ewes[].history"] = "[prolapse, mastitis]",
        ["ewes[].was.scan"] = "2",
        ["ewes[].was.lambs-alive"] = "1",
        ["ewes[].to-tup"] = "yes",
        ["ewes[].marks"] = "[2026-08-14]",
        ["ewes[].scan"] = "2",
        ["ewes[].scan-stage"] = "late",
        ["ewes[].lambed"] = "2027-01-09",
        ["ewes[].lambed-time"] = "03:20",
        ["ewes[].lambs-alive"] = "2",
        ["ewes[].lambs-dead"] = "1",
        ["ewes[].lambing-help"] = "hand",
        ["ewes[].lambs[].sex"] = "ram",
        ["ewes[].lambs[].tag"] = "ZZ 0123456 10001",
        ["ewes[].lambs[].weight"] = "4.1 kg",
        ["ewes[].lost-lambs"] = "2026-11-30",
        ["ewes[].gone.on"] = "2026-12-04",
        ["ewes[].gone.why"] = "sold",
        ["ewes[].note"] = "Needs a quiet corner",
    };

    /// <summary>What must stand beside a key for it to be right; without an entry, what is required in its section.</summary>
    private static string[] Beside(string key, string? value) => key switch
    {
        "groups[].mating" when value is "hand" or "artificial" => ["groups[].date = 2026-08-14"],
        "groups[].date" => ["groups[].mating = hand"],
        "jobs[].on" or "jobs[].minutes-per-ewe" or "jobs[].handled" or "jobs[].closed" or "jobs[].title" => ["jobs[].on = 2026-12-25"],
        "jobs[].before" or "jobs[].after" => ["jobs[].days = 7"],
        "jobs[].days" => ["jobs[].before = housing"],
        "feeds.scales" => ["feeds.concentrate.scoop = 1.4 kg"],
        "ewes[].group" => ["groups = [{name: Orchard}, {name: Paddock}]"],
        "ewes[].scan-stage" => ["ewes[].scan = 1"],
        "ewes[].lambed-time" or "ewes[].lambs-alive" or "ewes[].lambs-dead" or "ewes[].lambing-help" or "ewes[].lambs[].sex" or "ewes[].lambs[].tag" or "ewes[].lambs[].weight" => ["ewes[].lambed = 2027-01-09"],
        _ => [],
    };

    /// <summary>What a key is compared with that cannot be left out where it stands.</summary>
    private static readonly Dictionary<string, string> Others = new(StringComparer.Ordinal)
    {
        ["groups[].mating"] = "artificial",
        ["groups[].date"] = "2026-08-14",
        ["jobs[].before"] = "housing",
        ["jobs[].after"] = "tup-in",
        ["jobs[].days"] = "7",
        ["ewes[].group"] = "Paddock",
    };

    private static readonly string[] Required =
    [
        "paperflock = 1", "holding.name = Hollin Bank", "holding.location.latitude = 54.46", "holding.location.longitude = -2.74",
        "holding.time-zone = Europe/London", "season.tup-in = 2026-08-10", "ewes[].tag = ZZ 0123456 00101",
    ];

    private static readonly string[] RequiredInEntries =
    [
        "holding.contacts[].role = Vet", "breeds[].name = Lleyn", "groups[].name = Orchard",
        "keeper-days.away[].from = 2026-12-27", "keeper-days.away[].to = 2027-01-02", "jobs[].title = Drench",
        "housing.pens[].name = North bay", "housing.pens[].length = 6 m", "housing.pens[].width = 4.8 m",
        "housing.pens[].at.right = 0 m", "housing.pens[].at.down = 0 m",
        "groups[].tups[].name = Bramley", "groups[].tups[].in = 2026-08-10", "groups[].tups[].out = 2026-08-24",
        "ewes[].lambs[].sex = ewe", "ewes[].gone.on = 2026-12-03", "ewes[].gone.why = died",
    ];

    private static IEnumerable<(string Path, FlockKey Key)> Leaves =>
        from table in FlockKeys.All
        from key in table.Keys
        let path = table.Path.Length == 0 ? key.Name : $"{table.Path}.{key.Name}"
        where path != "paperflock" && FlockKeys.All.All(t => t.Path != path && t.Path != $"{path}[]")
        select (path, key);

    public static TheoryData<string> Keys => [.. Leaves.Select(l => l.Path)];

    public static TheoryData<string> Defaulted => [.. Leaves.Where(l => l.Key.Default is not null).Select(l => l.Path)];

    [Theory]
    [MemberData(nameof(Keys))]
    public void Every_key_is_read(string path) =>
        Assert.NotEqual(
            Dump.Of(Samples.Flock(Document(path, Others.GetValueOrDefault(path)))),
            Dump.Of(Samples.Flock(Document(path, Values[path]))));

    [Theory]
    [MemberData(nameof(Defaulted))]
    public void A_key_left_out_is_as_its_stated_default(string path) =>
        Assert.Equal(
            Dump.Of(Samples.Flock(Document(path, null))),
            Dump.Of(Samples.Flock(Document(path, Leaves.First(l => l.Path == path).Key.Default!))));

    [Theory]
    [MemberData(nameof(Keys))]
    public void A_key_with_nothing_after_its_colon_is_as_left_out(string path)
    {
        var reading = Samples.ReadText(Document(path, ""));
        if (reading.Flock is { } flock)
        {
            Assert.Equal(Dump.Of(Samples.Flock(Document(path, null))), Dump.Of(flock));
        }
        else
        {
            Assert.All(reading.Diagnostics, d => Assert.Contains(d.Code, new[] { "FLK022", "FLK065", "FLK055" }));
        }
    }

    [Fact]
    public void Every_sample_value_is_of_a_key_that_is_there() =>
        Assert.Equal(Leaves.Select(l => l.Path).Order(StringComparer.Ordinal), Values.Keys.Order(StringComparer.Ordinal));

    [Fact]
    public void Asking_for_a_key_outside_the_table_is_a_fault_of_the_program()
    {
        var section = Section.Absent(FlockKeys.Print, new Diagnostics.DiagnosticBag());
        Assert.Throws<ArgumentException>(() => section.Find("ink"));
    }

    /// <summary>A number for every ewe, as files have always had it, or one each.</summary>
    [Theory]
    [InlineData("7", 7, 7, 7, 7)]
    [InlineData("{triplet: 10}", 6, 6, 10, 8)]
    public void Feeding_weeks_are_one_number_or_one_each(string written, int single, int twin, int triplet, int thin) =>
        Assert.Equal(
            new FeedingWeeks(single, twin, triplet, thin),
            Samples.Flock(Document("practice.feed-weeks-before-lambing", written)).Practice.FeedWeeksBeforeLambing);

    [Theory]
    [InlineData("none", true)]
    [InlineData("{name: Sheep nuts}", false)]
    public void Concentrate_may_be_none(string written, bool forageOnly) =>
        Assert.Equal(forageOnly, Samples.Flock(Document("feeds.concentrate", written)).Feeds.ForageOnly);

    /// <summary>A whole file with the key at the value, or without it.</summary>
    private static string Document(string path, string? value)
    {
        var lines = Required.ToDictionary(r => r.Split(" = ")[0], r => r.Split(" = ")[1], StringComparer.Ordinal);
        var table = path[..path.LastIndexOf('.')];
        foreach (var line in RequiredInEntries.Where(r => r.Split(" = ")[0] is var key && (table + '.').StartsWith(key[..(key.LastIndexOf('.') + 1)], StringComparison.Ordinal)).Concat(Beside(path, value)))
        {
            lines[line.Split(" = ")[0]] = line.Split(" = ")[1];
        }

        // An empty list of keys beside buckets would be no buckets at all.
        if (table == "feeds.buckets" && value is null or "")
        {
            lines[path == "feeds.buckets.days" ? "feeds.buckets.weight" : "feeds.buckets.days"] = path == "feeds.buckets.days" ? "22 kg" : "14";
        }

        if (path == "season.lambing-from" && value is { Length: > 0 })
        {
            lines.Remove("season.tup-in");
        }

        if (value is not null)
        {
            lines[path] = value;
        }

        return Yaml(lines, "");
    }

    private static string Yaml(Dictionary<string, string> lines, string indent)
    {
        var text = "";
        foreach (var group in lines.GroupBy(l => l.Key.Split('.')[0], StringComparer.Ordinal))
        {
            var name = group.Key.Replace("[]", "", StringComparison.Ordinal);
            if (group.First().Key == group.Key)
            {
                text += $"{indent}{name}: {group.First().Value}\n";
                continue;
            }

            var below = group.ToDictionary(l => l.Key[(group.Key.Length + 1)..], l => l.Value, StringComparer.Ordinal);
            var block = Yaml(below, indent + "    ");
            text += group.Key.EndsWith("[]", StringComparison.Ordinal)
                ? $"{indent}{name}:\n{indent}  - {block.TrimStart()}"
                : $"{indent}{name}:\n{block}";
        }

        return text;
    }
}
