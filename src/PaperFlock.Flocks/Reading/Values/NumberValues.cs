using System.Buffers;

namespace PaperFlock.Flocks.Reading.Values;

/// <summary>Plain numbers: counts, days, degrees.</summary>
internal static class NumberValues
{
    private static readonly SearchValues<char> FiguresAndPoint = SearchValues.Create("0123456789.");

    public static decimal? AsNumber(this Field field)
    {
        var (least, most, _) = field.As<NumberForm>();
        if (field.AsScalar() is not { } scalar)
        {
            return null;
        }

        return !TryParse(scalar.Text, out var number) ? field.Refuse<decimal?>(FlockMessages.NotANumber(
                field.Span, field.Name, scalar.Text, NumberSlip.Meant(scalar.Text, least, most), field.Example ?? Format(Math.Clamp(2, least, most))))
            : number >= least && number <= most ? number
            : field.Refuse<decimal?>(FlockMessages.OutOfRange(field.Span, field.Name, scalar.Text, Format(least), Format(most), "figure"));
    }

    public static int? AsWhole(this Field field) => field.AsNumber() switch
    {
        null => null,
        { } number when decimal.IsInteger(number) => (int)number,
        _ => field.Refuse<int?>(FlockMessages.NotAWholeNumber(field.Span, field.Name, field.AsScalar()!.Text)),
    };

    /// <summary>Two whole numbers in brackets, in the order written.</summary>
    public static (int First, int Second)? AsPair(this Field field, string example)
    {
        var items = field.AsItems();
        if (items is not [var one, var other])
        {
            return items is null ? null : field.Refuse<(int, int)?>(FlockMessages.WrongCount(field.Span, field.Name, "two numbers", example));
        }

        var (first, second) = (one.AsWhole(), other.AsWhole());
        return first is { } a && second is { } b ? (a, b) : null;
    }

    /// <summary>
    /// Figures, perhaps a minus before and a decimal point among them, and nothing else: no exponent, no thousands,
    /// no comma. What could be read in two ways is better refused.
    /// </summary>
    public static bool TryParse(ReadOnlySpan<char> text, out decimal number)
    {
        number = 0;
        text = text.Trim(' ');
        var figures = text.StartsWith("-") ? text[1..] : text;
        return figures.Length is > 0 and <= 24
            && char.IsAsciiDigit(figures[0])
            && char.IsAsciiDigit(figures[^1])
            && !figures.ContainsAnyExcept(FiguresAndPoint)
            && decimal.TryParse(text, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out number);
    }

    public static string Format(decimal number) => number.ToString("0.##", CultureInfo.InvariantCulture);
}
