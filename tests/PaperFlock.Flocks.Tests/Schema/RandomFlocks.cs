using System.Text;
using CsCheck;
using YamlDotNet.Core;
using YamlDotNet.RepresentationModel;

namespace PaperFlock.Flocks.Tests.Schema;

/// <summary>Flock files put out of order. They are changed as YAML and written as YAML, and known to neither the reader nor the schema beforehand.</summary>
internal static class RandomFlocks
{
    public enum VisibleFault
    {
        /// <summary>A key nobody knows.</summary>
        UnknownKey,

        /// <summary>A required key taken away.</summary>
        KeyGone,

        /// <summary>A list in the place of a section or of one value.</summary>
        ListForOther,

        /// <summary>A section in the place of a list or of one value.</summary>
        SectionForOther,

        /// <summary>A word in the place of anything but text.</summary>
        WordForOther,

        /// <summary>More characters than any place on the paper holds.</summary>
        LongText,
    }

    /// <summary>Keys whose value is words of the keeper's own.</summary>
    private static readonly HashSet<string> TextKeys = new(
        ["name", "keeper", "grid-reference", "postcode", "find", "signal", "sick-pen", "role", "phone", "note", "title", "tup", "sitter", "tag", "breed", "group", "field", "singles", "twins", "triplets", "not-in-lamb", "with-lambs"], StringComparer.Ordinal);

    private static readonly string[] Words =
    [
        "", "~", "null", "NULL", "true", "True", "tRuE", "no", "Yes", "false", "0", "1", "2", "-1", "-0", "012", "+5", ".5", "5.", "1e3", "0x10", "3.0", "2.50", "147", "200",
        "9999999999999999999999999999", "2026-08-10", "2026-8-10", "2026-02-29", "2028-02-29", "2026-04-31", "2101-01-01", "2100-12-31", "2000-01-01", "10/08/2026", "2026-08-14", "21:30", "9:30",
        "24:00", "12:00", "00:00", "12:01", "72 kg", "72kg", "158 LB", "158 lbs", "72", "700 kg", "-5 kg", "85 %", "85%", "0.85", "8.8 MJ/kg", "8.8 mj/KG DM", "90 g/kg", "6 m", "12 ft", "60 inches",
        "hay", "HAY", "grass", "Europe/London", "europe/london", "Mars/Base", "sound", "WORN", "monday", "Sunday", "A4", "letter", "indoors", "natural", "hand", "early", "housing", "Orchard", "Ryeland",
        "Hollin: Bank", "# not a remark", "\ud83d\udc11 Fern", new('x', 41), new('x', 40), new('x', 241), "   padded   ", "          forty characters with blanks before them", "ends in blanks                          ", "two\nlines", "\ttab",
        string.Concat(Enumerable.Repeat("\ud83d\udc11", 40)),
    ];

    private static readonly string[] Shapes =
    [
        "[]", "{}", "[1, 2]", "[2026-08-14]", "[2026-08-14, ~]", "{a: b}", "[[1]]", "[saturday, SUNDAY]", "[75, 80]", "[80, 75]", "['6', '4']", "[6, 4]", "[1, 2, 3]", "[red]", "[~]", "[null, 3]", "[yellow, 5]",
        "[{name: North bay}]", "{normal: 3}", "{latitude: 1, longitude: '2'}", "[{tag: 12}]", "[{tag: true, scan: '2'}]", "{kind: Grass}",
    ];

    /// <summary>What to change, counted among all places of its kind, and into what.</summary>
    public static Gen<(double At, int Kind, int What, bool Quoted)> Slip { get; } =
        Gen.Select(Gen.Double[0, 1], Gen.Int[0, 9], Gen.Int[0, 9999], Gen.Bool);

    public static VisibleFault[] VisibleFaults { get; } = Enum.GetValues<VisibleFault>();

    /// <summary>The samples, of a few ewes each, and one with every key.</summary>
    public static string[] Bases { get; } = [.. Samples.Good.Select(FewEwes), EveryKey()];

    public static byte[] Change(string text, (double At, int Kind, int What, bool Quoted)[] slips)
    {
        var root = Parse(text);
        foreach (var (at, kind, what, quoted) in slips)
        {
            var entries = Entries(root).ToArray();
            if (entries.Length == 0)
            {
                break;
            }

            var (map, key) = entries[Index(at, entries.Length)];
            switch (kind)
            {
                case 0:
                    map.Children.Remove(key);
                    break;
                case 1:
                    var (from, moved) = entries[what % entries.Length];
                    // A copy: moved into itself it would have no end.
                    map.Children[moved] = Parse(Encoding.UTF8.GetString(Write(from.Children[moved])));
                    break;
                case 2:
                    map.Children[key] = Parse(Shapes[what % Shapes.Length]);
                    break;
                case <= 5 when map.Children[key] is YamlScalarNode { Value: { } value }:
                    map.Children[key] = Scalar(Respelled(value, what), quoted);
                    break;
                default:
                    map.Children[key] = Scalar(Words[what % Words.Length], quoted);
                    break;
            }
        }

        return Write(root);
    }

    /// <summary>The same value another way, which the reader takes or not.</summary>
    private static string Respelled(string value, int how) => (how % 7) switch
    {
        0 => value.ToUpperInvariant(),
        1 => value.ToLowerInvariant(),
        2 => $"  {value} ",
        3 => value.Replace(" ", "", StringComparison.Ordinal),
        4 => value + ".0",
        5 => value + " ",
        _ => value,
    };

    private static YamlScalarNode Scalar(string value, bool quoted) => new(value) { Style = quoted ? ScalarStyle.DoubleQuoted : ScalarStyle.Any };

    public static byte[] Spoil(string text, double at, VisibleFault fault)
    {
        var root = Parse(text);
        var entries = Entries(root).ToArray();
        var fitting = fault switch
        {
            VisibleFault.KeyGone => entries.Where(e => IsRequired(e.Map, e.Key)),
            VisibleFault.WordForOther => entries.Where(e => !TextKeys.Contains(e.Key.Value!) || e.Map.Children[e.Key] is not YamlScalarNode).Where(e => e.Key.Value != "time-zone"),
            VisibleFault.LongText => entries.Where(e => TextKeys.Contains(e.Key.Value!) && e.Map.Children[e.Key] is YamlScalarNode),
            VisibleFault.ListForOther => entries.Where(e => e.Map.Children[e.Key] is not YamlSequenceNode && e.Key.Value is not ("days" or "raddle")),
            VisibleFault.SectionForOther => entries.Where(e => e.Map.Children[e.Key] is not YamlMappingNode),
            _ => entries,
        };
        var places = fitting.ToArray();
        var (map, key) = places[Index(at, places.Length)];
        switch (fault)
        {
            case VisibleFault.UnknownKey:
                map.Children[new YamlScalarNode("tup-inn")] = new YamlScalarNode("2026-08-10");
                break;
            case VisibleFault.KeyGone:
                map.Children.Remove(key);
                break;
            case VisibleFault.ListForOther:
                map.Children[key] = Parse("[[x]]");
                break;
            case VisibleFault.SectionForOther:
                map.Children[key] = Parse("{x: y}");
                break;
            case VisibleFault.WordForOther:
                map.Children[key] = new YamlScalarNode("zzz");
                break;
            default:
                map.Children[key] = new YamlScalarNode(new string('x', 241));
                break;
        }

        return Write(root);
    }

    /// <summary>What a flock file must have, written down once more by hand.</summary>
    private static bool IsRequired(YamlMappingNode map, YamlScalarNode key) => key.Value switch
    {
        "paperflock" or "holding" or "season" or "ewes" or "time-zone" or "latitude" or "longitude" or "role" or "title" or "tag" or "from" or "to" => true,
        "length" or "width" => true,
        "name" => map.Children.ContainsKey("location") || map.Children.ContainsKey("length") || map.Children.ContainsKey("mature-weight") || map.Children.ContainsKey("raddle"),
        "on" => true,
        "tup-in" => !map.Children.ContainsKey("raddle"),
        "lambing-from" => true,
        _ => false,
    };

    private static string FewEwes(string name)
    {
        var root = (YamlMappingNode)Parse(Encoding.UTF8.GetString(Samples.Bytes(name)));
        var ewes = (YamlSequenceNode)root.Children["ewes"];
        while (ewes.Children.Count > 3)
        {
            ewes.Children.RemoveAt(ewes.Children.Count - 1);
        }

        return Encoding.UTF8.GetString(Write(root));
    }

    private static string EveryKey() =>
        """
        paperflock: 1
        holding: {name: Hollin Bank, location: {latitude: 54.46, longitude: -2.74}, time-zone: Europe/London}
        print: {paper: A4, planner: A3, units: both, week-starts: Sunday, gloves: no, binding: none, duplex: short-edge}
        season: {tup-in: 2026-08-10, tup-out: 2026-09-21, gestation-days: 147}
        practice:
          {teeth-toes-teats-weeks-before-tupping: 9, scan-days-after-tup-in: [80, 90], feed-weeks-before-lambing: {single: 5, twin: 6, triplet: 8, thin: 9}, two-feeds-weeks-before-lambing: 2, house-days-before-lambing: 14,
          dag: none, shear: none, booster-weeks-before-lambing: [5, 4], checks-per-day: {normal: 1, heavy: 5}, changeover-days: 16, gestation-spread-days: 3,
          gestation-days-by-litter: {single: 2, twin: 1, triplet: -2}, conception-per-cycle: 75 %, ewes-per-tup: 40, last-round: 22:00, first-round-not-before: 06:30}
        feeds:
          {method: energy-balance, per-lamb: 500 g, largest-feed: 1 lb, order-lead-days: 10, margin: 5 %, ground: hill,
          most-dry-matter: 2.2 %, scales: false, parted: no, change-day: friday, lambed: {single: 0.5 kg, twin: 1 kg, triplet: 1.2 kg},
          forage: {kind: straw, energy: 9.1 MJ/kg, protein: 101 g/kg, dry-matter: 87 %, bale: 15 kg, ad-lib: false, intake: 1.5 %, substitution: 0.63},
          concentrate: {name: Nuts, energy: 12 MJ/kg, protein: 200 g/kg, dry-matter: 88 %, bag: 25 kg, scoop: 1.4 kg},
          buckets: {name: Molasses, weight: 20 kg, ewes-per-bucket: 25, days: 21}}
        jobs: [{title: Dip, before: first-due, days: 7, minutes-per-ewe: 2.5, handled: true, closed: false}, {title: Store closed, on: 2026-12-24}]
        fields: {singles: Far Field, twins: Near Field, triplets: Croft, not-in-lamb: Top Field, with-lambs: Lea}
        housing: {lambing: outdoors, lambing-pens: 4, turnout-days-after-lambing: 14, days-in-lambing-pen: {single: 2, twin: 3, triplet: 4}, pens: [{name: Bay, length: 6.5 m, width: 12 ft, trough: 9 m}]}
        ewes: [{tag: ZZ 1, born: 2021, weight: 72 kg, condition: 3.5, teeth: worn, toes: treated, teats: lost-half, to-tup: yes, marks: [2026-08-14], scan: 2, scan-stage: late, lambed: 2027-01-09, note: Quiet}]
        """;

    private static YamlNode Parse(string text)
    {
        var stream = new YamlStream();
        stream.Load(new StringReader(text));
        return stream.Documents[0].RootNode;
    }

    private static byte[] Write(YamlNode root)
    {
        var text = new StringWriter { NewLine = "\n" };
        new YamlStream(new YamlDocument(root)).Save(text, assignAnchors: false);
        return Encoding.UTF8.GetBytes(text.ToString());
    }

    private static IEnumerable<(YamlMappingNode Map, YamlScalarNode Key)> Entries(YamlNode node) => node switch
    {
        YamlMappingNode map => map.Children.SelectMany(c => Entries(c.Value).Prepend((map, (YamlScalarNode)c.Key))),
        YamlSequenceNode list => list.Children.SelectMany(Entries),
        _ => [],
    };

    private static int Index(double at, int count) => Math.Min((int)(at * count), count - 1);
}
