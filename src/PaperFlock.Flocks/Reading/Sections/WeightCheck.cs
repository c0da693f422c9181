namespace PaperFlock.Flocks.Reading.Sections;

/// <param name="IsGrowing">By the year she was born she may not be grown; false where it is not given.</param>
internal sealed record WeighedEwe(string? Breed, decimal Kilograms, bool IsGrowing, Field At);

/// <summary>A ewe far from the weight of her breed: her ration, the chart she is on and her room go by it.</summary>
internal static class WeightCheck
{
    /// <summary>
    /// Of what her breed weighs: grown ewes of one breed differ by a tenth or two, and one thin or heavy in lamb by little more, so that what lies
    /// further off is a slip of a figure oftener than a ewe. Common practice, no source.
    /// </summary>
    private const decimal Least = 0.8m;

    private const decimal Most = 1.35m;

    /// <summary>A ewe lamb goes to the tup at six tenths of her grown weight (from memory: AHDB), the lightest at less.</summary>
    private const decimal LeastGrowing = 0.5m;

    /// <summary>Ewes put on weight until they are two years old or so: common practice, no source.</summary>
    private const int MonthsOfGrowing = 24;

    /// <summary>Kilograms at birth; twins weigh half of it, and a single that comes near is large. Common practice, no source.</summary>
    private const decimal HeaviestLamb = 8;

    /// <summary>Ewes of one breed whose middle says what it weighs, where the file does not.</summary>
    private const int Enough = 4;

    /// <summary>By the year alone, so that she is taken for as old as she can be.</summary>
    /// <param name="born">The year; null where it is not given.</param>
    /// <param name="tupIn">Null where it is not known.</param>
    public static bool IsGrowing(int? born, LocalDate? tupIn) => born is { } year && new LocalDate(year, 1, 1).PlusMonths(MonthsOfGrowing) > tupIn;

    public static void Of(IEnumerable<WeighedEwe> ewes, ImmutableArray<BreedDraft> breeds)
    {
        foreach (var breed in ewes.GroupBy(e => e.Breed))
        {
            var weights = breed.Select(e => e.Kilograms).Order().ToList();
            var (middle, listed) = (weights[weights.Count / 2], breeds.FirstOrDefault(b => b.Made.Name == breed.Key));
            var usual = listed?.Made.MatureWeight?.Kilograms ?? (weights.Count >= Enough ? middle : (decimal?)null);
            var unlikely = usual is { } known ? breed.Where(e => !IsLikely(e, e.Kilograms, known)).ToList() : [];
            if (listed?.MatureWeight is { } at && weights.Count >= Enough && unlikely.Count * 2 > weights.Count)
            {
                at.Bag.Add(FlockMessages.MatureWeightUnlikely(at.Span, listed.Made.Name, unlikely.Count, weights.Count, middle, InOtherUnit(at, kilograms => IsLikely(breed.First(), middle, kilograms))));
                continue;
            }

            unlikely.ForEach(ewe => ewe.At.Bag.Add(
                FlockMessages.WeightUnlikely(ewe.At.Span, ewe.At.AsWord()!, usual!.Value, InOtherUnit(ewe.At, kilograms => IsLikely(ewe, kilograms, usual.Value)))));
        }
    }

    /// <summary>Reports a lamb heavier at birth than lambs are.</summary>
    public static void Lamb(Field? at, Mass? weight) => at?.Bag.Add(weight?.Kilograms > HeaviestLamb
        ? FlockMessages.LambTooHeavy(at.Span, at.AsWord()!, HeaviestLamb, InOtherUnit(at, kilograms => kilograms is >= 1 and <= HeaviestLamb))
        : null);

    private static bool IsLikely(WeighedEwe ewe, decimal kilograms, decimal usual) =>
        kilograms >= (ewe.IsGrowing ? LeastGrowing : Least) * usual && kilograms <= Most * usual;

    /// <summary>The same figure in pounds, or in kilograms, where that would be likely.</summary>
    /// <param name="isLikely">Of a weight in kilograms.</param>
    private static string? InOtherUnit(Field at, Func<decimal, bool> isLikely)
    {
        var written = at.AsWord()!;
        var figures = new string([.. written.TakeWhile(c => char.IsAsciiDigit(c) || c == '.')]);
        var isPounds = Unit.Masses.Single(u => u.Name == "lb").Is(written[figures.Length..].Trim(' '));
        return NumberValues.TryParse(figures, out var number) && isLikely(isPounds ? number : number * Mass.KilogramsPerPound) ? $"{figures} {(isPounds ? "kg" : "lb")}" : null;
    }
}
