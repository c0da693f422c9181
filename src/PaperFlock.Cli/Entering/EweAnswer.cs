namespace PaperFlock.Cli.Entering;

/// <summary>What somebody says of one ewe, understood.</summary>
/// <param name="Words">Read back to them, such as "2 lambs, early".</param>
/// <param name="Parts">What it does to her part of the file, in order; no key twice.</param>
internal sealed record EweAnswer(string Words, ImmutableArray<AnswerPart> Parts);

/// <param name="Key">Of a ewe in the flock file.</param>
/// <param name="Value">Null takes the key away.</param>
internal record AnswerPart(string Key, FlockValue? Value)
{
    /// <param name="value">A word, a number or a date as the flock file writes it.</param>
    public static AnswerPart Word(string key, string? value) => new(key, value is null ? null : FlockValue.Word(value));

    /// <summary>Whether both would write the same.</summary>
    public bool IsSame(AnswerPart other) => Key == other.Key && string.Equals(Value?.ToYaml(), other.Value?.ToYaml(), StringComparison.OrdinalIgnoreCase);
}

/// <summary>All the days a fresh raddle mark was seen, as the flock file writes them; none takes them away.</summary>
internal sealed record MarksPart(ImmutableArray<string> Days) : AnswerPart("marks", Days.IsEmpty ? null : FlockValue.List(Days.Select(FlockValue.Word)));

/// <summary>An answer, or else why it is none and what would be taken.</summary>
/// <param name="Cell">Which of the cells of a spreadsheet is at fault, where one is.</param>
internal sealed record Understood(EweAnswer? Answer, string? WhyNot, int Cell = 0)
{
    public static Understood As(string words, params IEnumerable<AnswerPart> parts) => new(new EweAnswer(words, [.. parts]), null);

    /// <summary>All that is said of a ewe together; the first of it that is no answer refuses the whole.</summary>
    public static Understood All(IEnumerable<Understood> said)
    {
        var all = said.ToList();
        return all.Find(s => s.Answer is null) ?? As(string.Join(", ", all.Select(s => s.Answer!.Words)), all.SelectMany(s => s.Answer!.Parts));
    }

    public static Understood Not(string why, int cell = 0) => new(null, why, cell);
}
