namespace PaperFlock.Flocks.Reading.Values;

/// <summary>Words out of a few; capitals make no difference.</summary>
internal static class ChoiceValues
{
    public static T? AsChoice<T>(this Field field)
        where T : struct
    {
        var words = field.As<ChoiceForm<T>>().Pairs;
        if (field.AsWord() is not { } text)
        {
            return null;
        }

        var meant = words.Where(w => string.Equals(w.Word, text, StringComparison.OrdinalIgnoreCase)).Select(w => (T?)w.Value).FirstOrDefault();
        return meant ?? field.Refuse<T?>(FlockMessages.UnknownWord(field.Span, field.Name, text, words.Select(w => w.Word)));
    }

    /// <summary><c>yes</c> and <c>no</c> too, but only where nothing else could be meant: a ewe may be called No.</summary>
    public static bool? AsFlag(this Field field) => field.AsScalar()?.Text switch
    {
        null => null,
        var text when Is(text, "true") || Is(text, "yes") => true,
        var text when IsFalse(text) => false,
        var text => field.Refuse<bool?>(FlockMessages.NotTrueOrFalse(field.Span, field.Name, text)),
    };

    public static bool IsFalse(string text) => Is(text, "false") || Is(text, "no");

    private static bool Is(string text, string word) => string.Equals(text.Trim(' '), word, StringComparison.OrdinalIgnoreCase);
}
