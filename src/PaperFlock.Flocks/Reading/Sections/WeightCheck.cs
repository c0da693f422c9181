namespace PaperFlock.Flocks.Reading.Sections;

internal sealed record WeighedEwe(string? Breed, decimal Kilograms, Field At);

/// <summary>A ewe far from the weight of her breed: her ration, the chart she is on and her room go by it.</summary>
internal static class WeightCheck
{
    /// <summary>Of what her breed weighs. A ewe lamb goes to the tup at six tenths of her grown weight (from memory: AHDB), and the leanest ewe is not half of the fattest.</summary>
    private const decimal Least = 0.5m;

    private const decimal Most = 1.75m;

    /// <summary>Ewes of one breed whose middle says what it weighs, where the file does not.</summary>
    private const int Enough = 4;

    public static void Of(IEnumerable<WeighedEwe> ewes, ImmutableArray<Breed> breeds)
    {
        foreach (var breed in ewes.GroupBy(e => e.Breed))
        {
            var weights = breed.Select(e => e.Kilograms).Order().ToList();
            var usual = breeds.FirstOrDefault(b => b.Name == breed.Key)?.MatureWeight?.Kilograms ?? (weights.Count >= Enough ? weights[weights.Count / 2] : (decimal?)null);
            foreach (var ewe in usual is { } known ? breed.Where(e => !IsLikely(e.Kilograms, known)) : [])
            {
                ewe.At.Bag.Add(FlockMessages.WeightUnlikely(ewe.At.Span, Written(ewe), usual!.Value, InOtherUnit(ewe, usual.Value)));
            }
        }
    }

    private static bool IsLikely(decimal kilograms, decimal usual) => kilograms >= Least * usual && kilograms <= Most * usual;

    private static string Written(WeighedEwe ewe) => ewe.At.AsWord()!;

    /// <summary>The same figure in pounds, or in kilograms, where that would be likely.</summary>
    private static string? InOtherUnit(WeighedEwe ewe, decimal usual)
    {
        var figures = new string([.. Written(ewe).TakeWhile(c => char.IsAsciiDigit(c) || c == '.')]);
        var isPounds = Unit.Masses.Single(u => u.Name == "lb").Is(Written(ewe)[figures.Length..].Trim(' '));
        return NumberValues.TryParse(figures, out var number) && IsLikely(isPounds ? number : number * Mass.KilogramsPerPound, usual) ? $"{figures} {(isPounds ? "kg" : "lb")}" : null;
    }
}
