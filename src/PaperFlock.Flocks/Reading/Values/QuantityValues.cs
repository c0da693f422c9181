using System.Buffers;

namespace PaperFlock.Flocks.Reading.Values;

/// <summary>Numbers with their unit, which is never guessed.</summary>
internal static class QuantityValues
{
    /// <summary>A comma too, so that what it is refused for is the comma and not a unit.</summary>
    private static readonly SearchValues<char> NumberMarks = SearchValues.Create("-0123456789.,");

    public static Mass? AsMass(this Field field) => field.AsQuantity() is { } kilograms ? new Mass(kilograms) : null;

    public static Length? AsLength(this Field field) => field.AsQuantity() is { } metres ? new Length(metres) : null;

    /// <summary>In the unit the domain keeps: a percentage as a fraction, so that <c>85 %</c> is 0.85; MJ or grams for each kilogram of dry matter.</summary>
    public static decimal? AsQuantity(this Field field)
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
            var example = decimal.Round((least + most) / 2 / units[0].Factor, 1);
            return field.Refuse<decimal?>(FlockMessages.NotANumber(field.Span, field.Name, scalar.Text, null, $"{NumberValues.Format(example)} {units[0].Name}"));
        }

        if (unitName.Length == 0)
        {
            return field.Refuse<decimal?>(units == Unit.Parts && number is > 0 and < 1
                ? FlockMessages.BareFraction(field.Span, field.Name, figures, number * 100)
                : FlockMessages.MissingUnit(field.Span, field.Name, figures, units.Take(2).Select(u => u.Name)));
        }

        if (units.FirstOrDefault(u => u.Is(unitName)) is not { } unit)
        {
            return field.Refuse<decimal?>(FlockMessages.UnknownUnit(field.Span, field.Name, unitName, units.Select(u => u.Name)));
        }

        // Compared in the unit typed: a number of 24 figures times a factor would overflow.
        return number >= least / unit.Factor && number <= most / unit.Factor
            ? number * unit.Factor
            : field.Refuse<decimal?>(FlockMessages.OutOfRange(
                field.Span, field.Name, scalar.Text,
                $"{NumberValues.Format(least / unit.Factor)} {unit.Name}", $"{NumberValues.Format(most / unit.Factor)} {unit.Name}", "figure and its unit"));
    }
}
