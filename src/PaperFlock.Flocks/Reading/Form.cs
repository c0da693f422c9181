using System.Text.Json;

namespace PaperFlock.Flocks.Reading;

/// <summary>
/// What may be written after a key's colon. Each limit of the format is stated once, here: the <c>As…</c> methods of
/// <see cref="Field"/> read by it, and the JSON Schema is made from it.
/// </summary>
internal abstract record Form
{
    /// <summary>The form itself, or the one of two, that is of the kind asked for.</summary>
    /// <exception cref="ArgumentException">There is none: a fault of the program.</exception>
    public T Among<T>()
        where T : Form =>
        this as T
        ?? (this as EitherForm)?.One as T
        ?? (this as EitherForm)?.Other as T
        ?? throw new ArgumentException($"{GetType().Name} is not to be read as {typeof(T).Name}.");

    public static Form Date { get; } = new DateForm();

    public static Form Flag { get; } = new FlagForm();

    public static Form Zone { get; } = new ZoneForm();

    public static Form Version { get; } = new VersionForm();

    /// <param name="longest">In characters as Unicode counts them.</param>
    public static Form Text(int longest = TextValues.LongestName) => new TextForm(longest, MayRunOn: false);

    public static Form Whole(int least, int most) => new NumberForm(least, most, IsWhole: true);

    public static Form Number(decimal least, decimal most) => new NumberForm(least, most, IsWhole: false);

    public static Form Mass(decimal leastKilograms, decimal mostKilograms) => new QuantityForm(Unit.Masses, leastKilograms, mostKilograms);

    public static Form Length(decimal leastMetres, decimal mostMetres) => new QuantityForm(Unit.Lengths, leastMetres, mostMetres);

    /// <param name="least">As a fraction, as is <paramref name="most"/>.</param>
    public static Form Percentage(decimal least, decimal most) => new QuantityForm(Unit.Parts, least, most);

    public static Form Energy(decimal least, decimal most) => new QuantityForm(Unit.Energies, least, most);

    public static Form Content(decimal least, decimal most) => new QuantityForm(Unit.Contents, least, most);

    /// <summary>The names of the values in small letters, their words joined by hyphens: <c>two-hole</c>.</summary>
    /// <param name="values">None stands for all there are.</param>
    public static Form Words<T>(params T[] values)
        where T : struct, Enum => Choice(values, JsonNamingPolicy.KebabCaseLower.ConvertName);

    /// <summary>The names of the values as they are.</summary>
    /// <param name="values">None stands for all there are.</param>
    public static Form Names<T>(params T[] values)
        where T : struct, Enum => Choice(values, name => name);

    /// <summary>Two whole numbers in brackets.</summary>
    public static Form Pair(int least, int most) => new ListForm(Whole(least, most), 2, 2);

    public static Form ListOf(Form item, int fewest = 0) => new ListForm(item, fewest, FlockReader.LongestList);

    /// <param name="path">Of the table of its keys.</param>
    public static Form Section(string path) => new SectionForm(path);

    private static ChoiceForm<T> Choice<T>(T[] values, Func<string, string> word)
        where T : struct, Enum => new([.. (values.Length == 0 ? Enum.GetValues<T>() : values).Select(v => (word(v.ToString()), v))]);
}

/// <summary>The version of the format: 1.</summary>
internal sealed record VersionForm : Form;

/// <summary>A day, as <c>2026-08-10</c>.</summary>
internal sealed record DateForm : Form;

/// <summary>True or false.</summary>
internal sealed record FlagForm : Form;

/// <summary>The name of a time zone.</summary>
internal sealed record ZoneForm : Form;

/// <summary>The one word false.</summary>
internal sealed record NoneForm : Form;

/// <param name="Longest">In characters as Unicode counts them.</param>
/// <param name="MayRunOn">Over several lines of the file, which are one on paper.</param>
internal sealed record TextForm(int Longest, bool MayRunOn) : Form;

/// <summary>Both limits are allowed values.</summary>
internal sealed record NumberForm(decimal Least, decimal Most, bool IsWhole) : Form;

/// <summary>A number and a unit. Limits are allowed values, in the unit the domain keeps.</summary>
/// <param name="Units">The one most used first.</param>
internal sealed record QuantityForm(Unit[] Units, decimal Least, decimal Most) : Form;

/// <summary>A time of day, as <c>21:30</c>. Both limits are allowed values.</summary>
internal sealed record TimeForm(LocalTime Least, LocalTime Most) : Form;

/// <summary>A word out of a few; capitals make no difference.</summary>
internal abstract record ChoiceForm : Form
{
    public abstract ImmutableArray<string> Words { get; }
}

internal sealed record ChoiceForm<T>(ImmutableArray<(string Word, T Value)> Pairs) : ChoiceForm
    where T : struct
{
    public override ImmutableArray<string> Words => [.. Pairs.Select(p => p.Word)];
}

internal sealed record ListForm(Form Item, int Fewest, int Most) : Form;

/// <summary>Keys below.</summary>
/// <param name="Path">Of their table.</param>
internal sealed record SectionForm(string Path) : Form
{
    public KeyTable Table => FlockKeys.At(Path);
}

/// <summary>One form or another, told apart by how they look.</summary>
internal sealed record EitherForm(Form One, Form Other) : Form;
