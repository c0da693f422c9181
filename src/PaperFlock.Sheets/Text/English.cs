namespace PaperFlock.Sheets;

/// <summary>One and many.</summary>
public static class English
{
    /// <summary>Words that depend on a number.</summary>
    /// <param name="one">For 1.</param>
    /// <param name="many">For any other number.</param>
    public static string Plural(int number, string one, string many) => number == 1 ? one : many;

    /// <summary>A figure, a no-break space and what is counted: "1 ewe", "3 ewes".</summary>
    public static string Count(int number, string one, string many) => Count(number, number.ToString(CultureInfo.InvariantCulture), one, many);

    /// <summary>The same with a plain space, for sentences that may break there.</summary>
    public static string CountLoose(int number, string one, string many) => Count(number, one, many).Replace('\u00a0', ' ');

    /// <summary>The same with a figure of its own, such as "1½".</summary>
    /// <param name="number">Decides the form of the word: 1, or any other.</param>
    public static string Count(int number, string figure, string one, string many) => $"{figure}\u00a0{Plural(number, one, many)}";

    /// <summary>"a, b and c"; empty for nothing.</summary>
    public static string List(IReadOnlyList<string> items, string and = "and") =>
        items.Count <= 1 ? string.Concat(items) : $"{string.Join(", ", items.SkipLast(1))} {and} {items[^1]}";

    /// <summary>With a capital, and a full stop.</summary>
    /// <param name="clause">Not empty.</param>
    public static string Sentence(string clause) => $"{char.ToUpperInvariant(clause[0])}{clause[1..]}.";
}
