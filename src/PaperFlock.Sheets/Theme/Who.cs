namespace PaperFlock.Sheets.Theme;

/// <summary>A ewe in a list: her name, one more mark of hers, and her tag whole and in the mono face.</summary>
internal static class Who
{
    public static readonly TextStyle TagStyle = new(Face.Mono, 10.5);

    /// <summary>Points for the number of a row, of three figures at the most.</summary>
    public const double NumberWidth = 19;

    public static Element Of(EwePlan ewe)
    {
        var name = new Run(ewe.Ewe.Name ?? "no name", TypeScale.BodyBold);
        ImmutableArray<Run> named = Mark(ewe) is { Length: > 0 } mark ? [name, new Run("  " + mark, TypeScale.Label)] : [name];
        return Block.Column(0, new Text(named, TextAlign.Left, 1.1), new Text([new Run(ewe.Ewe.Tag, TagStyle, Whole: true)], TextAlign.Left, 1.1));
    }

    /// <summary>The same behind the number of her row, by which what was written on paper is found again at the keys. Rows shift as ewes come and go, so the number is no content.</summary>
    /// <param name="row">From 1.</param>
    public static Element Of(EwePlan ewe, int row) => Block.Behind(RowNumber(row), Of(ewe), NumberWidth, at: VerticalAlign.Top);

    public static Text RowNumber(int row) => Block.Text(row.ToString(CultureInfo.InvariantCulture), TypeScale.Label, leading: 1.1) with { About = NotContent.Instance };

    /// <summary>What she is called in running text: her name, which stays in one piece; else her tag, in the mono face even there.</summary>
    public static Run Called(Ewe ewe, TextStyle style) => ewe.Name is { } name
        ? new Run(name.Replace(' ', '\u00a0'), style)
        : new Run(ewe.Tag, style with { Face = Face.Mono }, Whole: true);

    /// <summary>What each is called, with something behind it, and a dot between one and the next.</summary>
    public static IEnumerable<Run> AllCalled(IReadOnlyList<EwePlan> ewes, Func<EwePlan, string> behind) => ewes.SelectMany(
        (e, i) => new[] { Called(e.Ewe, TypeScale.Body), new Run(behind(e) + (i + 1 < ewes.Count ? Strikes.Between : ""), TypeScale.Body) });

    /// <summary>What an earlier issue said, which is known by its words alone: a tag among them is set whole and in the mono face.</summary>
    public static ImmutableArray<Run> Quoted(string words, SeasonPlan plan, TextStyle style)
    {
        var runs = ImmutableArray.CreateBuilder<Run>();
        var from = 0;
        while (NextTag(words, from, plan) is { } next)
        {
            runs.Add(new Run(words[from..next.At], style));
            runs.Add(new Run(next.Tag, style with { Face = Face.Mono }, Whole: true));
            from = next.At + next.Tag.Length;
        }

        runs.Add(new Run(words[from..], style));
        return runs.ToImmutable();
    }

    /// <summary>A tag of a few characters is left alone: it may as well be a figure.</summary>
    private static (int At, string Tag)? NextTag(string words, int from, SeasonPlan plan) => plan.Ewes
        .Where(e => e.Ewe.Name is null && e.Ewe.Tag.Length > 3)
        .Select(e => (At: words.IndexOf(e.Ewe.Tag, from, StringComparison.Ordinal), e.Ewe.Tag))
        .Where(found => found.At >= 0)
        .OrderBy(found => found.At).ThenByDescending(found => found.Tag.Length)
        .Cast<(int, string)?>().FirstOrDefault();

    /// <summary>What tells her from a namesake, such as "born 2021".</summary>
    private static string Mark(EwePlan ewe) => ewe.Ewe.Born is { } born
        ? $"born\u00a0{born}"
        : ewe.Ewe.Breed ?? "";
}
