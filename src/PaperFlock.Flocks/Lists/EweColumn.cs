namespace PaperFlock.Flocks.Lists;

/// <summary>A column of a list of ewes.</summary>
/// <param name="Key">The key of a ewe that it fills, or <see cref="Age"/>.</param>
/// <param name="Unit">Of weights, where the heading says it: <c>Weight (kg)</c>.</param>
/// <param name="At">Which cell of each row, from 0.</param>
internal sealed record EweColumn(string Key, string? Unit, int At, CsvCell Heading)
{
    /// <summary>Not a key: the year of birth follows from it.</summary>
    public const string Age = "age";

    /// <summary>Headings that people and breed societies put over each, the best first. Common practice, no source.</summary>
    private static readonly (string Key, string[] Headings)[] Known =
    [
        ("tag", ["tag", "ear tag", "eartag", "tag number", "tag no", "ear tag number", "ear tag no", "ewe tag", "ear number", "animal tag", "official tag", "uk tag", "flock number", "animal id", "ewe id", "eid", "eid number", "id"]),
        ("name", ["name", "ewe", "ewe name", "pet name", "called"]),
        ("breed", ["breed", "breed name"]),
        ("group", ["group", "tupping group", "mob", "tup group", "ram group"]),
        ("born", ["born", "year born", "birth year", "year of birth", "yob", "dob", "date of birth", "birth date", "birthdate"]),
        (Age, ["age", "age years", "years old"]),
        ("weight", ["weight", "wt", "live weight", "liveweight", "body weight", "tupping weight"]),
        ("condition", ["condition", "condition score", "score", "bcs", "body condition", "body condition score", "cs"]),
        ("teeth", ["teeth", "mouth"]),
        ("toes", ["toes", "feet", "foot"]),
        ("teats", ["teats", "udder", "bag"]),
        ("to-tup", ["to tup", "tup", "to the tup", "to ram"]),
        ("marks", ["marks", "mark", "marked", "raddle", "raddled", "raddle marks", "tupped", "date marked", "mating date", "service date"]),
        ("scan", ["scan", "scanned", "lambs", "lambs scanned", "scan result", "scanning"]),
        ("scan-stage", ["scan stage", "stage"]),
        ("lambed", ["lambed", "lambed on", "lambing date", "date lambed"]),
        ("note", ["note", "notes", "comment", "comments", "remark", "remarks"]),
    ];

    private static readonly string[] WeightUnits = ["kg", "kgs", "lb", "lbs", "st", "stone"];

    public static IEnumerable<string> Headings => Known.Select(k => k.Headings[0]);

    /// <returns>Null for a heading that is not known to stand over ear tags; else a small number, the smaller the surer.</returns>
    public static int? TagRank(string heading) => Match(heading) is { Key: "tag" } match ? match.Rank : null;

    /// <summary>The columns that are known beside the tag's, one for a key; of two, the one whose heading says it best.</summary>
    public static ImmutableArray<EweColumn> Of(ImmutableArray<CsvCell> headings, int tag)
    {
        var found = headings
            .Select((cell, at) => (Cell: cell, At: at, Match: at == tag ? null : Match(cell.Text)))
            .Where(c => c.Match is not null and not { Key: "tag" })
            .GroupBy(c => c.Match!.Value.Key, StringComparer.Ordinal)
            .Select(same => same.OrderBy(c => c.Match!.Value.Rank).First())
            .Select(c => new EweColumn(c.Match!.Value.Key, c.Match.Value.Unit, c.At, c.Cell));
        // In the order a ewe's keys are written; a year of birth is better than an age.
        var columns = found.OrderBy(c => Array.FindIndex(Known, k => k.Key == c.Key)).ToImmutableArray();
        return columns.Any(c => c.Key == "born") ? columns.RemoveAll(c => c.Key == Age) : columns;
    }

    /// <summary>Which key a heading stands for; null for none.</summary>
    public static string? KeyOf(string heading) => Match(heading)?.Key;

    private static (string Key, int Rank, string? Unit)? Match(string heading)
    {
        var words = string.Concat(heading.Select(c => char.IsLetter(c) ? char.ToLowerInvariant(c) : ' ')).Split(' ', StringSplitOptions.RemoveEmptyEntries).ToList();
        var unit = words.Count > 1 && WeightUnits.Contains(words[^1], StringComparer.Ordinal) ? words[^1] : null;
        if (unit is not null)
        {
            words.RemoveAt(words.Count - 1);
        }

        var bare = string.Join(' ', words);
        return Known.Where(k => k.Headings.Contains(bare)).Select(k => ((string, int, string?)?)(k.Key, Array.IndexOf(k.Headings, bare), unit)).FirstOrDefault();
    }
}
