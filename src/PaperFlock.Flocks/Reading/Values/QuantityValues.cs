using System.Buffers;

namespace PaperFlock.Flocks.Reading.Values;

/// <summary>Numbers with their unit, which is never guessed.</summary>
internal static class QuantityValues
{
    /// <summary>A comma too, so that what it is refused for is the comma and not a unit.</summary>
    private static readonly SearchValues<char> NumberMarks = SearchValues.Create("-0123456789.,");

    public static Mass? AsMass(this Field field) => field.AsQuantity() is { } kilograms ? new Mass(kilograms) : null;

    public static Length? AsLength(this Field field) => field.AsQuantity() is { } metres ? new Length(metres) : null;

    /// <summary>A percentage as a fraction: <c>85 %</c> is 0.85.</summary>
    public static decimal? AsFraction(this Field field) => field.AsQuantity();

    /// <summary>MJ for each kilogram of dry matter.</summary>
    public static decimal? AsEnergy(this Field field) => field.AsQuantity();

    /// <summary>Grams for each kilogram of dry matter.</summary>
    public static decimal? AsContent(this Field field) => field.AsQuantity();

    private static decimal? AsQuantity(this Field field)
    {
        var (units, least, most) = field.As<QuantityForm>();
        if (field.AsScalar() is not { } scalar)
        {
            return null;
        }

        var text = scalar.Text.Trim(' ');
        var split = text.AsSpan().IndexOfAnyExcept(NumberMarks);
        var figures = split < 0 ? text : text[..split].TrimEnd(' ');
        var unitName = split < 0 ? "" : text[split..].Trim(' ');
        // A figure after the unit's first letter is no unit: 1e3 and 5 st 4 are refused as numbers.
        if (!NumberValues.TryParse(figures, out var number) || unitName.AsSpan().ContainsAnyInRange('0', '9'))
        {
            field.Bag.Add(FlockMessages.NotANumber(field.Span, field.Name, scalar.Text, null, $"{NumberValues.Format(Example(units[0], least, most))} {units[0].Name}"));
            return null;
        }

        if (unitName.Length == 0)
        {
            field.Bag.Add(units == Unit.Parts && number is > 0 and < 1
                ? FlockMessages.BareFraction(field.Span, field.Name, figures, number * 100)
                : FlockMessages.MissingUnit(field.Span, field.Name, figures, units.Take(2).Select(u => u.Name)));
            return null;
        }

        if (units.FirstOrDefault(u => u.Is(unitName)) is not { } unit)
        {
            field.Bag.Add(FlockMessages.UnknownUnit(field.Span, field.Name, unitName, units.Select(u => u.Name)));
            return null;
        }

        // Compared in the unit typed: a number of 24 figures times a factor would overflow.
        if (number < least / unit.Factor || number > most / unit.Factor)
        {
            field.Bag.Add(FlockMessages.OutOfRange(
                field.Span, field.Name, scalar.Text,
                $"{NumberValues.Format(least / unit.Factor)} {unit.Name}", $"{NumberValues.Format(most / unit.Factor)} {unit.Name}", "figure and its unit"));
            return null;
        }

        return number * unit.Factor;
    }

    private static decimal Example(Unit unit, decimal least, decimal most) => decimal.Round((least + most) / 2 / unit.Factor, 1);
}
