using System.Collections.Immutable;
using System.Globalization;
using System.Runtime.CompilerServices;
using System.Text;

namespace PaperFlock.Languages;

/// <summary>
/// Words with holes, as the compiler hands over <c>$"…"</c>. In English they are put together at once; for any other language text and
/// holes are kept apart, and the text with numbered holes is what is looked up.
/// </summary>
[InterpolatedStringHandler]
public ref struct Phrase
{
    private readonly StringBuilder? _template;
    private readonly ImmutableArray<string>.Builder? _holes;
    private DefaultInterpolatedStringHandler _english;

    public Phrase(int literalLength, int formattedCount, Language language)
    {
        ArgumentNullException.ThrowIfNull(language);
        if (language.IsEnglish)
        {
            _english = new DefaultInterpolatedStringHandler(literalLength, formattedCount, CultureInfo.InvariantCulture);
        }
        else
        {
            _template = new StringBuilder(literalLength + (formattedCount * 3));
            _holes = ImmutableArray.CreateBuilder<string>(formattedCount);
        }
    }

    /// <summary>Only for a language that is not English.</summary>
    internal readonly string Template => _template!.ToString();

    /// <inheritdoc cref="Template"/>
    internal readonly ImmutableArray<string> Holes => _holes!.ToImmutable();

    public void AppendLiteral(string value)
    {
        if (_template is null)
        {
            _english.AppendLiteral(value);
        }
        else
        {
            Languages.Template.AppendText(_template, value);
        }
    }

    public void AppendFormatted(string? value)
    {
        if (_template is null)
        {
            _english.AppendFormatted(value);
        }
        else
        {
            Hole(value ?? "");
        }
    }

    public void AppendFormatted<T>(T value, string? format = null)
    {
        if (_template is null)
        {
            _english.AppendFormatted(value, format);
        }
        else
        {
            Hole(value is IFormattable formattable ? formattable.ToString(format, CultureInfo.InvariantCulture) : value?.ToString() ?? "");
        }
    }

    /// <summary>Only for English. What the handler borrowed is given back.</summary>
    internal string English() => _english.ToStringAndClear();

    private readonly void Hole(string value)
    {
        Languages.Template.AppendHole(_template!, _holes!.Count);
        _holes.Add(value);
    }
}
