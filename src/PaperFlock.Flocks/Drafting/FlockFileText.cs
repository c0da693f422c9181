using System.Collections.Immutable;
using System.Globalization;
using NodaTime;
using NodaTime.Text;
using PaperFlock.Flocks.Editing;

namespace PaperFlock.Flocks.Drafting;

/// <summary>
/// The text of a first flock file: what is known, and beside it, behind hashes, what may be added later. Taking a hash and the
/// space after it away always leaves a right file, so that nobody has to know how YAML is indented.
/// </summary>
public sealed class FlockFileText
{
    /// <summary>Where remarks begin, so that they read as a column.</summary>
    private const int RemarkColumn = 40;

    private readonly List<string> _lines = [];
    private readonly FlockDraft _draft;

    /// <summary>How far in the hashes of hints stand: where the keys of the section do that they belong to, so that a whole section can be freed at once.</summary>
    private int _hashes;

    private FlockFileText(FlockDraft draft) => _draft = draft;

    /// <param name="file">What the file is called in its own advice.</param>
    /// <returns>LF between lines and after the last.</returns>
    public static string Of(FlockDraft draft, string file)
    {
        var text = new FlockFileText(draft);
        text.Head(file);
        text.Holding();
        text.Print();
        text.Season();
        text.Later();
        text.Ewes();
        return string.Concat(text._lines.Select(l => l + '\n'));
    }

    private void Head(string file) => _lines.AddRange(
    [
        $"# The flock file of {_draft.Name}: all that the program knows about the flock.",
        "#",
        "# Change what stands after a colon, save, and let the program look at it:",
        $"#     paperflock check {file}",
        "# It shows every mistake with its line and says what to do. A few rules:",
        "#",
        "#   - A label, a colon, a space, a value. What belongs to a label stands below it, two spaces further in.",
        "#   - Use the space bar, never the Tab key.",
        "#   - An entry of a list begins with a dash and a space. Short lists can stand on one line, in [ ] with commas.",
        "#   - A date is year, month, day, with dashes. A weight or a length has its unit, such as 74 kg, 163 lb, 3.6 m, 12 ft.",
        "#   - What stands behind a hash is for people; the program does not read it.",
        "#",
        "# Some lines below have a hash in front: things you may want later. Take the hash and one space away, and put your own.",
        string.Empty,
        "paperflock: 1",
    ]);

    private void Holding()
    {
        Section("holding");
        Known("name", _draft.Name);
        if (_draft.Keeper is { } keeper)
        {
            Known("keeper", keeper, "the name on the sheet for a sitter");
        }
        else
        {
            Hint("  keeper: Your name", "the name on the sheet for a sitter");
        }

        var place = _draft.Place;
        Line(
            string.Create(CultureInfo.InvariantCulture, $"  location: {{latitude: {place.Latitude}, longitude: {place.Longitude}}}"),
            _draft.PlaceIsStandIn ? "NOT YOUR PLACE YET: put your own here" : place.GridReference is null ? "south and west are negative" : "worked out from the grid reference");
        Known("time-zone", _draft.TimeZone);
        if (_draft.PlaceIsStandIn)
        {
            // It is printed above the figures of the place, where somebody would read them out on the telephone.
            Known("grid-reference", "NOT WRITTEN IN YET", "or take this line away; printed for the emergency services");
        }
        else if (place.GridReference is { } grid)
        {
            Known("grid-reference", grid, "printed for the emergency services");
        }

        Hint("  postcode: ZZ9 9ZZ", "printed for the emergency services");
        Hint("  contacts:", "in the order they are to be rung");
        Hint("    - {role: Keeper, name: Your name, phone: 01632 960 101}");
        Hint("    - {role: Vet, name: Your vets, phone: 01632 960 202, note: out of hours too}");
        Hint("    - {role: Neighbour, name: Who would come, phone: 01632 960 404}");
    }

    private void Print()
    {
        Section("print");
        var letter = _draft.Paper == Paper.Letter;
        Line(letter ? "  paper: Letter" : "  paper: A4", "A4 or Letter: what the printer holds");
        Line(letter ? "  planner: Tabloid" : "  planner: A3", "the wall planner; larger than the paper, so it comes as tiles to glue");
        Line(letter ? "  binding: three-hole" : "  binding: two-hole", "two-hole, three-hole, four-hole or none");
        Hint("  duplex: single-sided", "for a printer that cannot turn the paper; else long-edge or short-edge");
        Hint(_draft.CountryCode == "GB" ? "  units: both" : "  units: imperial", "metric, imperial or both");
    }

    private void Season()
    {
        var start = _draft.Start;
        Section("season");
        if (start.IsLambing)
        {
            Line($"  lambing-from: {Iso(start.Day)}", $"the tup goes in 147 days before: {Day(start.TupIn)}");
        }
        else
        {
            Line($"  tup-in: {Iso(start.Day)}", $"first lambs 147 days on: {Day(start.FirstLambs)}");
        }

        Line($"  tup-out: {Iso(start.TupOut)}", "six weeks: two and a half of the ewes' cycles");
        Section("practice");
        // The usual 75 to 80 days would find the last ewes, with a stay of six weeks, too few days in lamb to be counted, and warn of it.
        Line("  scan-days-after-tup-in: [82, 90]", "late enough for the ewe that took last");
        Hint("  house-days-before-lambing: 7", "when they come in");
        Hint("  checks-per-day: {normal: 2, heavy: 4}", "rounds a day, most of the year and when heavy in lamb");
    }

    private void Later()
    {
        var due = _draft.Start.FirstLambs;
        Remark("Days you can work, and days a sitter holds the pack (both dates are days away).");
        Hint("keeper-days:");
        Hint("  free: [saturday, sunday]", "days for jobs that need hours");
        Hint("  away:");
        Hint($"    - {{from: {Iso(due.PlusDays(-10))}, to: {Iso(due.PlusDays(-4))}, sitter: Tom Birkett, phone: 01632 960 303}}");
        Remark("Jobs of your own, on a day or so many days before something: tup-in, scan, feeding, housing, first-due.");
        Hint("jobs:");
        Hint("  - {title: Clean and lime the lambing pens, before: first-due, days: [14, 7]}");
        Hint($"  - {{title: Feed merchant closed, on: {Iso(due.PlusDays(-7))}}}");
        Groups();
        Remark("What they eat: the figures are on the bag and on the forage analysis.");
        Hint("feeds:");
        Hint("  forage: {kind: hay, bale: 20 kg}", "hay, haylage, silage, straw or grass");
        Hint("  concentrate: {name: Ewe nuts, bag: 20 kg, scoop: 1.4 kg}", "what one level scoop holds");
        Remark("Where they stand. `lambing: outdoors` for a flock that lambs at grass.");
        Hint("housing:");
        Hint("  lambing: indoors");
        Hint("  pens:");
        Hint("    - {name: North bay, length: 6 m, width: 4.8 m, trough: 9 m}");
        Hint("  lambing-pens: 4");
    }

    private void Groups()
    {
        if (_draft.Groups.IsEmpty)
        {
            Remark("Two tups? Give each a group here, and each ewe below its name after `group`.");
            Hint("groups:");
            Hint("  - name: Orchard");
            Hint("    tup: Bramley");
            Hint("    raddle: [yellow, orange, red, blue]", "crayons in the order they go on, light to dark");
            return;
        }

        Section("groups");
        foreach (var group in _draft.Groups)
        {
            Line($"  - name: {group}");
            _hashes = 4;
            Hint("    tup: Bramley", "his name");
            Hint("    raddle: [yellow, orange, red, blue]", "crayons in the order they go on, light to dark");
        }
    }

    private void Ewes()
    {
        _lines.Add(string.Empty);
        if (_draft.Ewes.All(e => e.IsUnnamed))
        {
            _lines.Add("# Put what is on her ear in place of each line of dashes. Until then the card has a line to write it on.");
        }

        _lines.Add("ewes:");
        _hashes = 4;
        for (var i = 0; i < _draft.Ewes.Length; i++)
        {
            var lines = _draft.Ewes[i].Lines;
            for (var k = 0; k < lines.Length; k++)
            {
                Line($"  {(k == 0 ? '-' : ' ')} {lines[k].Key}: {lines[k].Value.ToYaml()}");
            }

            if (i == 0)
            {
                EweHints([.. lines.Select(l => l.Key)]);
            }
        }
    }

    /// <summary>Under the first ewe, what may stand under any.</summary>
    private void EweHints(ImmutableArray<string> known)
    {
        (string Key, string Value, string Remark)[] hints =
        [
            ("name", "Bracken", "what she is called"),
            ("breed", "Ryeland", string.Empty),
            ("born", Invariant(_draft.Start.TupIn.Year - 4), "the year"),
            ("weight", "72 kg", "at tupping"),
            ("condition", "3.0", "body condition score, 1 to 5, at tupping"),
            ("teeth", "sound", "sound, worn or broken"),
            ("toes", "sound", "sound, treated or lame"),
            ("teats", "sound", "sound, lumpy or lost-half"),
            ("marks", $"[{Iso(_draft.Start.TupIn.PlusDays(4))}]", "days a fresh raddle mark was seen"),
            ("scan", "2", "lambs counted; 0 for empty"),
            ("note", "Needs a quiet corner", "anything a stranger should know"),
        ];
        foreach (var (key, value, remark) in hints.Where(h => !known.Contains(h.Key)))
        {
            Hint($"    {key}: {value}", remark);
        }
    }

    private void Section(string key)
    {
        _lines.Add(string.Empty);
        _lines.Add($"{key}:");
        _hashes = 2;
    }

    private void Remark(string text)
    {
        _lines.Add(string.Empty);
        _lines.Add($"# {text}");
        _hashes = 0;
    }

    private void Known(string key, string value, string remark = "") => Line($"  {key}: {FlockValue.Text(value).ToYaml()}", remark);

    /// <summary>A line of the format behind a hash, its indentation kept.</summary>
    private void Hint(string line, string remark = "") => Line($"{line[.._hashes]}# {line[_hashes..]}", remark);

    private void Line(string content, string remark = "") =>
        _lines.Add(remark.Length == 0 ? content : $"{content.PadRight(RemarkColumn - 2)}  # {remark}");

    private static string Day(LocalDate day) => day.ToString("ddd d MMM uuuu", CultureInfo.InvariantCulture);

    private static string Iso(LocalDate day) => LocalDatePattern.Iso.Format(day);

    private static string Invariant(int number) => number.ToString(CultureInfo.InvariantCulture);
}
