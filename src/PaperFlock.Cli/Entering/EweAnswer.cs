namespace PaperFlock.Cli.Entering;

/// <summary>What somebody says of one ewe, understood.</summary>
/// <param name="Words">Read back to them, such as "2 lambs, early".</param>
/// <param name="Parts">What it does to her part of the file, in order.</param>
internal sealed record EweAnswer(string Words, ImmutableArray<AnswerPart> Parts);

internal abstract record AnswerPart;

/// <param name="Value">As the flock file writes it; null takes the key away.</param>
internal sealed record KeyPart(string Key, string? Value) : AnswerPart;

/// <summary>A day a fresh raddle mark was seen, or was not after all.</summary>
internal sealed record MarkPart(LocalDate Day, bool Seen) : AnswerPart;

/// <summary>An answer, or else why it is none and what would be taken.</summary>
internal sealed record Understood(EweAnswer? Answer, string? WhyNot)
{
    public static Understood As(string words, params IEnumerable<AnswerPart> parts) => new(new EweAnswer(words, [.. parts]), null);

    public static Understood Not(string why) => new(null, why);
}
