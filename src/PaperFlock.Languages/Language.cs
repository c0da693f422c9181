using System.Collections.Frozen;
using System.Collections.Immutable;
using System.Globalization;
using System.Runtime.CompilerServices;

namespace PaperFlock.Languages;

/// <summary>
/// The language a pack is printed in. Sheets and plans say their words in English through it; English comes back as it is, any other
/// language as its catalogue has it, and in English what the catalogue has not. Immutable: a language is an argument like the flock.
/// </summary>
/// <remarks>
/// The tool <c>PaperFlock.Words</c> reads the words from the sources, so what stands in a call must be the text itself, never a variable.
/// Figures in holes are formatted for the invariant culture. What comes from the flock file is put into holes and is never looked up.
/// </remarks>
public sealed class Language
{
    private readonly FrozenDictionary<string, ImmutableArray<string>>? _translations;
    private readonly PluralRule _plurals;

    private Language(string tag, FrozenDictionary<string, ImmutableArray<string>>? translations, PluralRule plurals)
    {
        Tag = tag;
        _translations = translations;
        _plurals = plurals;
        Days = new Days(this);
    }

    /// <summary>The words as they stand in the sources.</summary>
    public static Language English { get; } = new("en-GB", null, PluralRule.OneAndMany);

    /// <summary>BCP 47, such as "en-GB".</summary>
    public string Tag { get; }

    public bool IsEnglish => _translations is null;

    /// <summary>Dates in words.</summary>
    public Days Days { get; }

    /// <param name="translations">What to say, by <see cref="KeyOf"/>: one text, or one for each plural form; no text may be wrong in its holes.</param>
    internal static Language Of(string tag, FrozenDictionary<string, ImmutableArray<string>> translations, PluralRule plurals) => new(tag, translations, plurals);

    /// <summary>Words without holes.</summary>
    public string Say(string words) => _translations is null ? words : Find(KeyOf(null, words), words)[0];

    /// <summary>Words with holes, which a translation may put in another order.</summary>
    public string Say([InterpolatedStringHandlerArgument("")] ref Phrase phrase) => Said(null, ref phrase);

    /// <summary>Words that are alike in English and may not be elsewhere.</summary>
    /// <param name="context">Tells them apart, for the translator.</param>
    public string SayAs(string context, string words) => _translations is null ? words : Find(KeyOf(context, words), words)[0];

    /// <inheritdoc cref="SayAs(string, string)"/>
    public string SayAs(string context, [InterpolatedStringHandlerArgument("")] ref Phrase phrase) => Said(context, ref phrase);

    /// <summary>Words that depend on a number. Both texts have the same holes in the same order.</summary>
    /// <param name="number">Not negative.</param>
    /// <param name="one">English for 1.</param>
    /// <param name="many">English for any other number.</param>
    public string Plural(
        int number, [InterpolatedStringHandlerArgument("")] ref Phrase one, [InterpolatedStringHandlerArgument("")] ref Phrase many)
    {
        if (_translations is null)
        {
            var (singular, plural) = (one.English(), many.English());
            return number == 1 ? singular : plural;
        }

        var forms = _translations.GetValueOrDefault(KeyOf(null, one.Template));
        return Template.Fill(
            forms.IsDefaultOrEmpty ? (number == 1 ? one.Template : many.Template) : forms[Math.Min(_plurals.FormOf(number), forms.Length - 1)],
            many.Holes);
    }

    /// <summary>A figure, a no-break space and what is counted: "1 ewe", "3 ewes".</summary>
    /// <param name="number">Not negative.</param>
    public string Count(int number, string one, string many)
    {
        var figure = number.ToString(CultureInfo.InvariantCulture);
        return Count(number, figure, one, many);
    }

    /// <summary>The same with a plain space, for sentences that may break there.</summary>
    public string CountLoose(int number, string one, string many) => Count(number, one, many).Replace('\u00a0', ' ');

    /// <summary>The same with a figure of its own, such as "1½".</summary>
    /// <param name="number">Decides the form of the word: 1, or any other.</param>
    public string Count(int number, string figure, string one, string many)
    {
        if (_translations is null)
        {
            return $"{figure}\u00a0{(number == 1 ? one : many)}";
        }

        var (singular, plural) = ($"{{0}}\u00a0{one}", $"{{0}}\u00a0{many}");
        var forms = _translations.GetValueOrDefault(KeyOf(null, singular));
        return Template.Fill(
            forms.IsDefaultOrEmpty ? (number == 1 ? singular : plural) : forms[Math.Min(_plurals.FormOf(number), forms.Length - 1)],
            [figure]);
    }

    /// <summary>What an entry is looked up by: gettext's own way to join a context and a text.</summary>
    internal static string KeyOf(string? context, string id) => context is null ? id : $"{context}\u0004{id}";

    private string Said(string? context, ref Phrase phrase)
    {
        if (_translations is null)
        {
            return phrase.English();
        }

        var template = phrase.Template;
        return Template.Fill(Find(KeyOf(context, template), template)[0], phrase.Holes);
    }

    private ImmutableArray<string> Find(string key, string english) =>
        _translations!.TryGetValue(key, out var found) ? found : [english];
}
