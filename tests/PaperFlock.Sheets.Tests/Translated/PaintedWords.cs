using System.Collections;
using System.Reflection;
using System.Text.RegularExpressions;
using PaperFlock.Flocks;
using PaperFlock.Layout.Pieces;
using PaperFlock.Sheets.House;

namespace PaperFlock.Sheets.Tests.Translated;

/// <summary>
/// What is painted and belongs neither to the language of the pack nor to the flock file. A part of a word is none of the language's either,
/// so a word that is cut in two where a line ends is found as well.
/// </summary>
internal static partial class PaintedWords
{
    /// <summary>The same in every language: units by their symbols, and sizes of paper by their names.</summary>
    private static readonly string[] Symbols = ["kg", "lb", "m", "ft", "mm", "A", "Letter", "Tabloid"];

    /// <param name="language">Texts of the language, such as the translations of a catalogue.</param>
    /// <returns>Page label and word.</returns>
    public static IEnumerable<string> Foreign(ComposedPack pack, Flock flock, IEnumerable<string> language)
    {
        var sheets = pack.WholePlanner is { } planner ? pack.Sheets.Add(planner) : pack.Sheets;
        var known = language.Concat(StringsOf(flock))
            .Concat(Symbols)
            .Concat(PackComposer.Codes.Select(c => c.Code))
            .Concat(sheets.Select(s => s.Code))
            .Concat(sheets.SelectMany(s => s.Parts).Select(p => p.Id))
            .Append(pack.Id)
            .Append(PackMark.TrialWords);
        return Unknown(sheets, known);
    }

    /// <summary>The same of a leaf that is made without a flock.</summary>
    public static IEnumerable<string> Foreign(Sheet leaf, IEnumerable<string> language) => Unknown([leaf], language.Concat(Symbols));

    private static IEnumerable<string> Unknown(IEnumerable<Sheet> sheets, IEnumerable<string> texts)
    {
        var known = texts.SelectMany(WordsOf).ToHashSet(StringComparer.OrdinalIgnoreCase);
        return
            from side in sheets.SelectMany(s => s.Sides)
            from text in side.Page.Content.Flatten().Items.OfType<TextItem>()
            from word in WordsOf(text.Text)
            where !known.Contains(word)
            select $"{side.Label}: {word} in “{text.Text}”";
    }

    private static IEnumerable<string> WordsOf(string text) => Letters().Matches(text).Select(m => m.Value);

    /// <summary>Every text of a flock, whatever it is of.</summary>
    private static IEnumerable<string> StringsOf(object? value)
    {
        switch (value)
        {
            case null or Enum:
                return [];
            case string text:
                return [text];
            case IEnumerable items:
                return items.Cast<object?>().SelectMany(StringsOf);
            default:
                var type = value.GetType();
                return type.Assembly == typeof(Flock).Assembly
                    ? type.GetProperties(BindingFlags.Public | BindingFlags.Instance).Where(p => p.GetIndexParameters().Length == 0).SelectMany(p => StringsOf(p.GetValue(value)))
                    : [];
        }
    }

    [GeneratedRegex(@"\p{L}+")]
    private static partial Regex Letters();
}
