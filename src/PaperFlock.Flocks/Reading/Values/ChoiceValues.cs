namespace PaperFlock.Flocks.Reading.Values;

/// <summary>Words out of a few; capitals make no difference.</summary>
internal static class ChoiceValues
{
    public static T? AsChoice<T>(this Field field)
        where T : struct
    {
        var words = field.As<ChoiceForm<T>>().Pairs;
        if (field.AsScalar() is not { } scalar)
        {
            return null;
        }

        var text = scalar.Text.Trim(' ');
        foreach (var (word, value) in words)
        {
            if (string.Equals(word, text, StringComparison.OrdinalIgnoreCase))
            {
                return value;
            }
        }

        field.Bag.Add(FlockMessages.UnknownWord(field.Span, field.Name, text, words.Select(w => w.Word)));
        return null;
    }

    /// <summary><c>yes</c> and <c>no</c> too, but only where nothing else could be meant: a ewe may be called No.</summary>
    public static bool? AsFlag(this Field field)
    {
        if (field.AsScalar() is not { } scalar)
        {
            return null;
        }

        if (IsTrue(scalar.Text) || IsFalse(scalar.Text))
        {
            return IsTrue(scalar.Text);
        }

        field.Bag.Add(FlockMessages.NotTrueOrFalse(field.Span, field.Name, scalar.Text));
        return null;
    }

    public static bool IsFalse(string text) => Is(text, "false") || Is(text, "no");

    private static bool IsTrue(string text) => Is(text, "true") || Is(text, "yes");

    private static bool Is(string text, string word) => string.Equals(text.Trim(' '), word, StringComparison.OrdinalIgnoreCase);
}
