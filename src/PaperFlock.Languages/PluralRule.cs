using System.Globalization;

namespace PaperFlock.Languages;

/// <summary>
/// Which form of a word goes with a number, as a catalogue states it in its header: <c>nplurals=2; plural=(n != 1);</c>. The expression is
/// one of C with the single variable <c>n</c> (GNU gettext manual, section "Additional functions for plural forms").
/// </summary>
public sealed class PluralRule
{
    /// <summary>Numbers a rule is tried with when it is read: the published rules depend on the last two figures, or on small numbers.</summary>
    private const int Tried = 1200;

    private readonly Func<long, long> _form;

    private PluralRule(int forms, Func<long, long> form)
    {
        Forms = forms;
        _form = form;
    }

    /// <summary>As in English.</summary>
    public static PluralRule OneAndMany { get; } = new(2, n => n == 1 ? 0 : 1);

    /// <summary>How many forms a word has; at least 1.</summary>
    public int Forms { get; }

    /// <param name="number">Not negative.</param>
    /// <returns>From 0, less than <see cref="Forms"/>.</returns>
    public int FormOf(int number) => (int)Math.Clamp(_form(number), 0, Forms - 1);

    /// <returns>Null when it is not a rule, or gives a form that there is none of.</returns>
    public static PluralRule? Read(string words)
    {
        int? forms = null;
        Func<long, long>? form = null;
        foreach (var part in words.Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
        {
            var equals = part.IndexOf('=', StringComparison.Ordinal);
            switch (equals < 0 ? "" : part[..equals].Trim())
            {
                case "nplurals" when int.TryParse(part.AsSpan(equals + 1), NumberStyles.AllowLeadingWhite, CultureInfo.InvariantCulture, out var count):
                    forms = count;
                    break;
                case "plural":
                    form = PluralExpression.Read(part[(equals + 1)..]);
                    break;
                default:
                    return null;
            }
        }

        return forms is >= 1 and <= 10 && form is not null && IsSound(form, forms.Value) ? new PluralRule(forms.Value, form) : null;
    }

    private static bool IsSound(Func<long, long> form, int forms)
    {
        try
        {
            return Enumerable.Range(0, Tried).All(n => form(n) is var f && f >= 0 && f < forms);
        }
        catch (ArithmeticException)
        {
            return false;
        }
    }
}
