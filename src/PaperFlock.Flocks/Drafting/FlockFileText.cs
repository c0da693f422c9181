using NodaTime.Text;
using PaperFlock.Flocks.Editing;

namespace PaperFlock.Flocks.Drafting;

/// <summary>
/// The text of a first flock file: what is known, and beside it, behind hashes, what may be added later. Taking a hash and the
/// space after it away always leaves a right file, so that nobody has to know how YAML is indented.
/// </summary>
public static class FlockFileText
{
    /// <summary>Where remarks begin, so that they read as a column.</summary>
    private const int RemarkColumn = 40;

    /// <summary>Parts a line from its remark while the text is made. No name can hold it.</summary>
    private const char To = '\0';

    /// <param name="file">What the file is called in its own advice.</param>
    /// <returns>LF between lines and after the last.</returns>
    public static string Of(FlockDraft draft, string file)
    {
        // The scan: the usual 75 to 80 days would find the last ewes, with a stay of six weeks, too few days in lamb to be counted, and warn of it.
        var (start, letter) = (draft.Start, draft.Paper == Paper.Letter);
        var text =
            $$"""
             # The flock file of {{draft.Name}}: all that the program knows about the flock.
             #
             # Change what stands after a colon, save, and let the program look at it:
             #     paperflock check {{file}}
             # It shows every mistake with its line and says what to do. A few rules:
             #
             #   - A label, a colon, a space, a value. What belongs to a label stands below it, two spaces further in.
             #   - Use the space bar, never the Tab key.
             #   - An entry of a list begins with a dash and a space. Short lists can stand on one line, in [ ] with commas.
             #   - A date is year, month, day, with dashes. A weight or a length has its unit, such as 74 kg, 163 lb, 3.6 m, 12 ft.
             #   - What stands behind a hash is for people; the program does not read it.
             #
             # Some lines below have a hash in front: things you may want later. Take the hash and one space away, and put your own.

             paperflock: 1

             holding:
               name: {{Yaml(draft.Name)}}
               {{(draft.Keeper is { } keeper ? $"keeper: {Yaml(keeper)}" : "# keeper: Your name")}}{{To}}the name on the sheet for a sitter
               {{Location(draft)}}
               time-zone: {{Yaml(draft.TimeZone)}}
             {{GridReference(draft)}}  # postcode: ZZ9 9ZZ{{To}}printed for the emergency services
               # signal: At the top gate{{To}}where a telephone works
               # find: Bins left of the shed door, tap inside it{{To}}for whoever is in charge; hay, hurdles and scales too
               # sick-pen: The lean-to{{To}}where a ewe that is unwell is brought in
               # contacts:{{To}}in the order they are to be rung
               #   - {role: Keeper, name: {{NodeText.Flow(FlockValue.Text(string.IsNullOrWhiteSpace(draft.Keeper) ? "Your name" : draft.Keeper).Node)}}, phone: 01632 960 101}
               #   - {role: Vet, name: Your vets, phone: 01632 960 202, note: out of hours too}
               #   - {role: Neighbour, name: Who would come, phone: 01632 960 404}

             print:
               paper: {{(letter ? "Letter" : "A4")}}{{To}}A4 or Letter: what the printer holds
               # planner: {{(letter ? "Tabloid" : "A3")}}{{To}}one more wall planner, for a printer that takes larger paper
               binding: {{(letter ? "three-hole" : "two-hole")}}{{To}}two-hole, three-hole, four-hole or none
               # duplex: single-sided{{To}}for a printer that cannot turn the paper; else long-edge or short-edge
               # units: {{(draft.CountryCode == "GB" ? "both" : "imperial")}}{{To}}metric, imperial or both

             season:
               {{Season(start)}}
               tup-out: {{Iso(start.TupOut)}}{{To}}six weeks: two and a half of the ewes' cycles

             practice:
               scan-days-after-tup-in: [82, 90]{{To}}late enough for the ewe that took last
               # house-days-before-lambing: 7{{To}}when they come in
               # checks-per-day: {normal: 2, heavy: 4, lambing: 6}{{To}}rounds a day, most of the year, when heavy in lamb, and while they lamb

             # Days you can work, and days a sitter holds the pack (both dates are days away).
             # keeper-days:
             #   free: [saturday, sunday]{{To}}days for jobs that need hours
             #   away:
             #     - {from: {{Iso(start.FirstLambs.PlusDays(-10))}}, to: {{Iso(start.FirstLambs.PlusDays(-4))}}, sitter: Tom Birkett, phone: 01632 960 303}

             # Jobs of your own, on a day or so many days before something: tup-in, scan, feeding, housing, first-due.
             # jobs:
             #   - {title: Clean and lime the lambing pens, before: first-due, days: [14, 7]}
             #   - {title: Feed merchant closed, on: {{Iso(start.FirstLambs.PlusDays(-7))}}}

             {{Groups(draft)}}
             # What they eat: the figures are on the bag and on the forage analysis.
             # feeds:
             #   forage: {kind: hay, bale: 20 kg}{{To}}hay, haylage, silage, straw or grass
             #   concentrate: {name: Ewe nuts, bag: 20 kg, scoop: 1.4 kg}{{To}}what one level scoop holds

             # Where they stand. `lambing: outdoors` for a flock that lambs at grass.
             # housing:
             #   lambing: indoors
             #   pens:
             #     - {name: North bay, length: 6 m, width: 4.8 m, trough: 9 m}
             #   lambing-pens: 4

             {{(draft.Ewes.All(e => e.IsUnnamed) ? "# Put what is on her ear in place of each line of dashes. Until then the card has a line to write it on.\n" : "")}}ewes:
             {{string.Concat(draft.Ewes.Select((ewe, i) => Ewe(ewe, i == 0, start)))}}
             """;
        return string.Join('\n', text.ReplaceLineEndings("\n").Split('\n').Select(WithRemark));
    }

    /// <summary>What is printed for the emergency services is never made up: without a place both lines are switched off.</summary>
    private static string Location(FlockDraft draft) => draft.Place is { } place
        ? string.Create(CultureInfo.InvariantCulture, $"location: {{latitude: {place.Latitude}, longitude: {place.Longitude}}}{To}")
            + (place.GridReference is null ? "south and west are negative" : "worked out from the grid reference")
        : $"# location: {{latitude: 54.46, longitude: -2.74}}{To}YOUR OWN figures, for sunrise and for the emergency services; south and west are negative";

    private static string GridReference(FlockDraft draft) => draft.Place switch
    {
        null => $"  # grid-reference: NY 480 046{To}YOUR OWN, printed for the emergency services\n",
        { GridReference: { } grid } => $"  grid-reference: {Yaml(grid)}{To}printed for the emergency services\n",
        _ => "",
    };

    private static string Season(SeasonStart start) => start.IsLambing
        ? $"lambing-from: {Iso(start.Day)}{To}the tup goes in 147 days before: {FlockMessages.Day(start.TupIn)}"
        : $"tup-in: {Iso(start.Day)}{To}first lambs 147 days on: {FlockMessages.Day(start.FirstLambs)}";

    private static string Groups(FlockDraft draft)
    {
        const string Tup = "tup: Bramley";
        const string Raddle = "raddle: [yellow, orange, red, blue]";
        const string Order = "crayons in the order they go on, light to dark";
        return draft.Groups.IsEmpty
            ? $"""
               # Two tups? Give each a group here, and each ewe below its name after `group`.
               # groups:
               #   - name: Orchard
               #     {Tup}
               #     {Raddle}{To}{Order}

               """
            : $"groups:\n{string.Concat(draft.Groups.Select(group => $"  - name: {group}\n    # {Tup}{To}his name\n    # {Raddle}{To}{Order}\n"))}";
    }

    /// <param name="isFirst">Under her stands what may stand under any.</param>
    private static string Ewe(DraftEwe ewe, bool isFirst, SeasonStart start)
    {
        (string Key, string Value, string Remark)[] hints =
        [
            ("name", "Bracken", "what she is called"),
            ("breed", "Ryeland", ""),
            ("born", (start.TupIn.Year - 4).ToString(CultureInfo.InvariantCulture), "the year"),
            ("weight", "72 kg", "at tupping"),
            ("condition", "3.0", "body condition score, 1 to 5, at tupping"),
            ("teeth", "sound", "sound, worn or broken"),
            ("toes", "sound", "sound, treated or lame"),
            ("teats", "sound", "sound, lumpy or lost-half"),
            ("marks", $"[{Iso(start.TupIn.PlusDays(4))}]", "days a fresh raddle mark was seen"),
            ("scan", "2", "lambs counted; 0 for empty"),
            ("note", "Needs a quiet corner", "anything a stranger should know"),
        ];
        var known = ewe.Lines.Select((line, i) => $"  {(i == 0 ? '-' : ' ')} {line.Key}: {line.Value.ToYaml()}\n");
        var more = hints.Where(h => isFirst && !ewe.Lines.Any(l => l.Key == h.Key)).Select(h => $"    # {h.Key}: {h.Value}{(h.Remark.Length == 0 ? "" : To + h.Remark)}\n");
        return string.Concat(known.Concat(more));
    }

    private static string WithRemark(string line) => line.Split(To) is [var content, var remark] ? $"{content.PadRight(RemarkColumn - 2)}  # {remark}" : line;

    /// <summary>What is blank stays so: the reader says what is wrong with it.</summary>
    private static string Yaml(string text) => string.IsNullOrWhiteSpace(text) ? "\"\"" : FlockValue.Text(text).ToYaml();

    private static string Iso(LocalDate day) => LocalDatePattern.Iso.Format(day);
}
