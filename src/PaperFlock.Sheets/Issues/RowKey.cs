using NodaTime.Text;

namespace PaperFlock.Sheets.Issues;

/// <summary>What a row of a sheet is about: the same from issue to issue, wherever the row stands and whatever it says.</summary>
/// <param name="Id">Tells it from the others of its kind; empty for a paragraph.</param>
/// <param name="Name">What it is called in a list of changes.</param>
/// <param name="Last">The last day on which anyone acts on it. Once that is past, neither a change to it nor its absence is a reason to print again. Null for as long as the leaf is of use.</param>
public sealed record RowKey(RowKind Kind, string Id, string Name, LocalDate? Last = null) : Subject
{
    public string Name { get; init; } = Wording.Tidy(Name);

    public override string? Called => Name;

    public static readonly RowKey Paragraph = new(RowKind.Paragraph, string.Empty, string.Empty);

    public static RowKey Of(Ewe ewe) => new(RowKind.Ewe, ewe.Tag, ewe.CallName);

    public static RowKey Of(LocalDate day) => new(RowKind.Day, Iso(day), DateText.Short(day), day);

    /// <summary>A week that is over after its seventh day.</summary>
    public static RowKey OfWeek(LocalDate first) => new(RowKind.Week, Iso(first), $"week of {DateText.Short(first)}", first.PlusDays(6));

    /// <summary>A step of a feed chart, which may share its leaf with another.</summary>
    /// <param name="last">Its last day; null where it goes on.</param>
    public static RowKey OfRation(string chart, LocalDate first, LocalDate? last) => new(RowKind.Ration, $"{chart} {Iso(first)}", $"from {DateText.Short(first)}", last);

    /// <param name="name">What it is called in a list of changes: with its day where it is one of several days'.</param>
    public static RowKey OfRound(LocalDate day, string round, string name) => new(RowKind.Round, $"{Iso(day)} {round}", name, day);

    /// <summary>Something that its name alone tells from the others of its kind.</summary>
    public static RowKey Named(RowKind kind, string name) => new(kind, name, name);

    /// <summary>Whether both are of the same thing.</summary>
    public bool IsAbout(RowKey other) => Kind == RowKind.Earlier ? Name == other.Name : Kind == other.Kind && HiddenWords.AreSame(Id, other.Id);

    private static string Iso(LocalDate day) => LocalDatePattern.Iso.Format(day);
}
