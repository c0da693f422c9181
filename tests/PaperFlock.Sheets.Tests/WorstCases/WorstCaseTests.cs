using NodaTime;
using PaperFlock.Sheets.Tests.PaperRules;

namespace PaperFlock.Sheets.Tests.WorstCases;

/// <summary>Flocks that strain the page: read, planned and composed, and every paper rule held.</summary>
public sealed class WorstCaseTests
{
    private const string Wide = "WWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWW";
    private const string Long = "Old Mother Blackberry of the Upper Fields";
    private const string Note = "Bracken. Needs a quiet corner away from the gate, will not be driven and kicks at the trough; "
        + "last year she hung her first lamb by one leg, so look early and often, and she lets nobody but the keeper hold her head while she is being looked at or fed.";

    private static readonly LocalDate August = new(2026, 8, 1);
    private static readonly LocalDate November = new(2026, 11, 25);
    private static readonly LocalDate December = new(2026, 12, 20);
    private static readonly LocalDate January = new(2027, 1, 6);
    private static readonly string[] SixGroups = [.. Enumerable.Range(0, 6).Select(i => $"{{name: Group {(char)('A' + i)}, tup: Tup {i}, tup-in: 2026-08-{(10 + (2 * i)).ToString(CultureInfo.InvariantCulture)}, tup-out: 2026-10-01}}")];

    private static readonly (string Name, LocalDate AsOf, FlockText Flock)[] Cases =
    [
        ("a name of 40 wide letters", November, new FlockText { Ewes = FlockText.Many(5, _ => "scan: 2, weight: 72 kg", n => n == 1 ? Wide : "Bracken") }),
        ("names of 40 ordinary letters", November, new FlockText { Ewes = FlockText.Many(9, n => $"scan: {n % 4}", n => $"{Long[..38]} {n}") }),
        ("every ewe named in 40 wide letters, lambing", January, new FlockText { Ewes = FlockText.Many(6, n => $"scan: {n % 4}", _ => Wide) }),
        ("a tag of 20 characters", November, new FlockText { Ewes = [FlockText.Ewe(1, "scan: 1", "Bracken", "ZZ 0123456789 012345"), FlockText.Ewe(2, "scan: 3", Wide, "WWWWWWWWWWWWWWWWWW01")] }),
        ("tags that end alike", November, new FlockText { Ewes = [FlockText.Ewe(1, "scan: 1", "A", "ZZ 1 00001"), FlockText.Ewe(2, "scan: 1", "B", "ZZ 2 00001"), FlockText.Ewe(3, "scan: 1", "C", "7")] }),
        ("notes of 240 characters", November, new FlockText { Ewes = FlockText.Many(8, n => $"scan: {n % 4}, note: \"{Note[..236]} {n}.\"") }),
        ("a note of 240 wide letters with a wide name and tag", November, new FlockText
        {
            Ewes = [FlockText.Ewe(1, $"scan: 3, weight: 72 kg, condition: 2.0, born: 2019, breed: \"{Long[..40]}\", note: \"{string.Join(' ', Enumerable.Repeat("WWWWWWWWW", 24))}\"", Wide, "WWWWWWWWWWWWWWWWWW01")],
        }),
        ("the same on a quarter of Letter with turned backs", November, new FlockText
        {
            Print = "paper: Letter\nplanner: Letter\nduplex: short-edge\nunits: both\ngloves: true",
            Ewes =
            [
                FlockText.Ewe(1, $"scan: 5, weight: 72 kg, condition: 2.0, born: 2019, breed: \"{Long[..40]}\", note: \"{string.Join(' ', Enumerable.Repeat("WWWWWWWWW", 24))}\"", Wide, "WWWWWWWWWWWWWWWWWW01"),
                FlockText.Ewe(2, "scan: 3", Long[..40]),
                FlockText.Ewe(3, "scan: 5", Wide),
            ],
        }),
        ("accents from Welsh to Icelandic", November, new FlockText
        {
            Holding = "name: Tŷ Gŵyr Ýmir\nkeeper: Þórdís Ŵynne-Ðöll",
            Contacts = ["{role: Milfeddyg, name: Siân Ŷ, phone: 01632 960 202, note: Ystâd ôl-oriau}"],
            Away = ["{from: 2026-12-27, to: 2027-01-02, sitter: Guðrún Ægisdóttir, phone: 01632 960 303}"],
            Ewes = [FlockText.Ewe(1, "scan: 2", "Ŵyna Ŷsgafn"), FlockText.Ewe(2, "scan: 1", "Þrúður Ægisdóttir"), FlockText.Ewe(3, "scan: 3", "Çiğdem Škoda Łąka"), FlockText.Ewe(4, "", "Ñandú Öxarárfoß")],
        }),
        ("one ewe", November, new FlockText { Ewes = [FlockText.Ewe(1, "scan: 1", "Bracken")] }),
        ("one ewe in August, not scanned", August, new FlockText()),
        ("300 ewes", December, new FlockText
        {
            Ewes = FlockText.Many(300, n => $"scan: {n % 4}, weight: {(55 + (n % 30)).ToString(CultureInfo.InvariantCulture)} kg, marks: [2026-08-{(11 + (n % 17)).ToString(CultureInfo.InvariantCulture)}]"),
            Pens = [.. Enumerable.Range(1, 12).Select(i => $"{{name: Bay {i}, length: 6 m, width: 5 m, trough: 9 m}}")],
            Housing = "lambing-pens: 20",
            Away = ["{from: 2026-12-27, to: 2027-01-02, sitter: Tom Birkett}"],
        }),
        ("300 ewes without names", December, new FlockText { Ewes = FlockText.Many(300, _ => "", _ => null) }),
        ("no pens, no contacts, no weights", November, new FlockText { Ewes = FlockText.Many(7, n => $"scan: {n % 3}") }),
        ("lambing outdoors", November, new FlockText { Ewes = FlockText.Many(7, n => $"scan: {n % 3}"), Housing = "lambing: outdoors" }),
        ("a group with every ewe empty", November, new FlockText
        {
            Groups = ["{name: Orchard}", "{name: Paddock}"],
            Ewes = FlockText.Many(8, n => n > 4 ? "group: Paddock, scan: 0" : "group: Orchard, scan: 2"),
        }),
        ("all ewes empty", November, new FlockText { Ewes = FlockText.Many(6, _ => "scan: 0") }),
        ("all ewes lambed", January, new FlockText { Ewes = FlockText.Many(6, n => $"scan: 2, lambed: 2027-01-0{n}") }),
        ("all ewes left out", August, new FlockText { Ewes = FlockText.Many(6, _ => "to-tup: false, teeth: broken") }),
        ("a sitter for one night", December, new FlockText { Away = ["{from: 2026-12-31, to: 2026-12-31, sitter: Tom Birkett}"], Ewes = FlockText.Many(6, n => $"scan: {n % 4}") }),
        ("three absences, one with a long name and number", November, new FlockText
        {
            Away =
            [
                "{from: 2026-11-28, to: 2026-11-29}",
                $"{{from: 2026-12-27, to: 2027-01-02, sitter: \"{Wide}\", phone: \"+00 (0) 1632 960 303 ext 00000\"}}",
                "{from: 2027-01-10, to: 2027-01-20, sitter: Tom Birkett, phone: 01632 960 303}",
            ],
            Ewes = FlockText.Many(20, n => $"scan: {n % 4}, note: \"{Note[..120]}\""),
        }),
        ("due on a leap day", new(2028, 1, 10), new FlockText { Season = "lambing-from: 2028-02-29", Ewes = FlockText.Many(6, n => $"scan: {n % 4}, marks: [2027-10-{(n + 4).ToString("00", CultureInfo.InvariantCulture)}]") }),
        ("lambing over the year end", December, new FlockText { Season = "lambing-from: 2026-12-24", Ewes = FlockText.Many(6, n => $"scan: {n % 4}") }),
        ("six groups", August, new FlockText { Groups = SixGroups, Ewes = FlockText.Many(24, n => $"group: Group {(char)('A' + (n % 6))}") }),
        ("six groups, scanned", December, new FlockText { Groups = SixGroups, Ewes = FlockText.Many(24, n => $"group: Group {(char)('A' + (n % 6))}, scan: {n % 4}") }),
        ("six groups with wide names", December, new FlockText
        {
            Groups = [.. Enumerable.Range(0, 6).Select(i => $"{{name: \"{Wide[..39]}{i}\", tup: \"{Wide[..39]}{i}\"}}")],
            Ewes = FlockText.Many(12, n => $"group: \"{Wide[..39]}{n % 6}\", scan: {n % 4}"),
        }),
        ("not scanned in August", August, new FlockText { Ewes = FlockText.Many(14) }),
        ("eight checks a day", November, new FlockText { Practice = "checks-per-day: {normal: 8, heavy: 8}", Ewes = FlockText.Many(6, n => $"scan: {n % 4}") }),
        ("twelve checks a day when heavy", November, new FlockText { Practice = "checks-per-day: {normal: 1, heavy: 12, heavy-from-weeks-before-lambing: 20}", Ewes = FlockText.Many(6, n => $"scan: {n % 4}") }),
        ("triplets, quads and fives", November, new FlockText { Ewes = FlockText.Many(9, n => $"scan: {3 + (n % 3)}, weight: 100 kg, marks: [2026-08-12]"), Feeds = "per-lamb: 1.5 lb\nlargest-feed: 0.4 kg" }),
        ("pens with wide names", December, new FlockText
        {
            Pens = [$"{{name: \"{Wide}\", length: 60 m, width: 20 m, trough: 100 m}}", $"{{name: \"{Long[..40]}\", length: 6 m, width: 5 m}}"],
            Housing = "lambing-pens: 1",
            Ewes = FlockText.Many(30, n => $"scan: {n % 4}, weight: 72 kg"),
        }),
        ("a holding of 40 wide letters with everything long", November, new FlockText
        {
            Holding = $"name: \"{Wide}\"\nkeeper: \"{Wide}\"\ngrid-reference: \"{Wide}\"\npostcode: WWWWWWWWWWWWWWWWWWWW",
            Contacts = [.. Enumerable.Range(1, 6).Select(_ => $"{{role: \"{Wide}\", name: \"{Wide}\", phone: \"000000 000000 000000 000000 00\", note: \"{Wide} {Wide[..19]}\"}}")],
            Jobs = [.. Enumerable.Range(1, 8).Select(i => $"{{title: \"{Wide} {Wide[..16]} {i}\", on: 2026-12-1{i % 3}}}")],
            Ewes = FlockText.Many(6, n => $"scan: {n % 4}"),
        }),
        ("feeds with long names", November, new FlockText
        {
            Feeds = $"concentrate: {{name: \"{Wide}\", scoop: 0.1 kg}}\nbuckets: {{name: \"{Wide}\"}}\nforage: {{kind: haylage}}\nmethod: energy-balance",
            Ewes = FlockText.Many(60, n => $"scan: {n % 4}, weight: 90 kg"),
        }),
        ("thirty of the keeper's own jobs", August, new FlockText { Jobs = [.. Enumerable.Range(1, 30).Select(i => $"{{title: Own job number {i}, on: 2026-{(8 + (i % 4)).ToString("00", CultureInfo.InvariantCulture)}-{i.ToString("00", CultureInfo.InvariantCulture)}}}")], Ewes = FlockText.Many(4) }),
        ("a season of more than a year", August, new FlockText
        {
            Groups = ["{name: Early, tup-in: 2026-08-01, tup-out: 2026-09-01}", "{name: Late, tup-in: 2027-01-10, tup-out: 2027-02-20}"],
            Practice = "shear: after-lambing",
            Ewes = FlockText.Many(6, n => n % 2 == 0 ? "group: Early" : "group: Late"),
        }),
        ("the pack printed when the season is over", new(2027, 6, 1), new FlockText { Ewes = FlockText.Many(4, n => $"scan: {n % 3}") }),
        ("artificial and hand mating", November, new FlockText
        {
            Groups = ["{name: A, mating: artificial, date: 2026-08-14}", "{name: B, mating: hand, date: 2026-08-20}", "{name: C, raddle: false}"],
            Ewes = FlockText.Many(9, n => $"group: {(char)('A' + (n % 3))}, scan: {n % 4}"),
        }),
        ("raddles changed daily almost", August, new FlockText
        {
            Practice = "changeover-days: 10",
            Season = "tup-in: 2026-08-10\ntup-out: 2027-01-20",
            Groups = [$"{{name: A, raddle: [\"{Wide[..20]}\", pale yellow green]}}"],
            Ewes = FlockText.Many(5),
        }),
    ];

    public static TheoryData<string> Names => [.. Cases.Select(c => c.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void A_flock_that_strains_the_page_keeps_every_rule(string name)
    {
        var (_, asOf, flock) = Cases.Single(c => c.Name == name);
        PaperCheck.Keeps(flock.On(asOf));
    }
}
