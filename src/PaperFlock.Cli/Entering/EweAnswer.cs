namespace PaperFlock.Cli.Entering;

/// <summary>What somebody says of one ewe, understood.</summary>
/// <param name="Words">Read back to them, such as "2 lambs, early".</param>
/// <param name="Parts">What it does to her part of the file, in order; no key twice.</param>
internal sealed record EweAnswer(string Words, ImmutableArray<AnswerPart> Parts);

/// <param name="Key">Of a ewe in the flock file.</param>
internal abstract record AnswerPart(string Key);

/// <param name="Value">As the flock file writes it; null takes the key away.</param>
internal sealed record KeyPart(string Key, string? Value) : AnswerPart(Key);

/// <summary>All the days a fresh raddle mark was seen; none takes them away.</summary>
internal sealed record MarksPart(ImmutableArray<LocalDate> Days) : AnswerPart("marks")
{
    public bool Equals(MarksPart? other) => other is not null && Days.Order().SequenceEqual(other.Days.Order());

    public override int GetHashCode() => Days.Length;
}

/// <summary>An answer, or else why it is none and what would be taken.</summary>
internal sealed record Understood(EweAnswer? Answer, string? WhyNot)
{
    public static Understood As(string words, params IEnumerable<AnswerPart> parts) => new(new EweAnswer(words, [.. parts]), null);

    public static Understood Not(string why) => new(null, why);
}
