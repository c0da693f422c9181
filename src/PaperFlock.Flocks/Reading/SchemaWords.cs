namespace PaperFlock.Flocks.Reading;

/// <summary>What an editor shows beside a key: what it is for, how it is written, and what holds when it is left out.</summary>
internal static class SchemaWords
{
    public static string Of(FlockKey key)
    {
        var sentences = new[]
        {
            key.IsRequired ? $"Required: {key.Meaning}" : Capital(key.Meaning),
            Written(key.Form),
            key.Default is { } usual ? $"Left out: {usual}" : null,
        };
        return string.Join(" ", sentences.OfType<string>().Select(s => s + "."));
    }

    private static string? Written(Form form) => form switch
    {
        DateForm => "A date, year first: 2026-08-10",
        FlagForm => "true or false",
        ZoneForm => "The name of a time zone, such as Europe/London or Pacific/Auckland",
        TimeForm time => $"On the 24-hour clock, from {DateValues.Clock.Format(time.Least)} to {DateValues.Clock.Format(time.Most)}",
        TextForm text => $"At most {text.Longest} characters",
        ChoiceForm choice => $"One of {Or(choice.Words)}",
        NumberForm number => $"A {(number.IsWhole ? "whole " : "")}number from {NumberValues.Format(number.Least)} to {NumberValues.Format(number.Most)}",
        QuantityForm quantity => $"A number and its unit, {Or(quantity.Units.Select(u => u.Name))}: from {Size(quantity, quantity.Least)} to {Size(quantity, quantity.Most)}",
        ListForm { Fewest: 2, Most: 2, Item: NumberForm number } => $"Two whole numbers in brackets, each from {NumberValues.Format(number.Least)} to {NumberValues.Format(number.Most)}",
        ListForm { Item: DateForm } => "Dates in brackets: [2026-08-14, 2026-08-31]",
        ListForm { Item: ChoiceForm choice } => $"In brackets, any of {Or(choice.Words)}",
        _ => null,
    };

    private static string Or(IEnumerable<string> words) => FlockMessages.List(words, "or", quote: false);

    private static string Size(QuantityForm quantity, decimal size) =>
        $"{(size / quantity.Units[0].Factor).ToString("0.###", CultureInfo.InvariantCulture)} {quantity.Units[0].Name}";

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
