using System.Collections.Immutable;
using System.Text;

namespace PaperFlock.Words;

/// <summary>
/// A language for trying things out: every word is accented, so that one without an accent on paper was never said through a language, and
/// every text is at least 40 % longer, so that what has room for this has room for most languages.
/// </summary>
public static class Pseudo
{
    /// <summary>As in the locales of CLDR for this purpose.</summary>
    public const string Tag = "en-XA";

    private const double Longer = 0.4;

    // Letters that both families of type have. The others stay, so a word of these alone gets an accent by what is put behind it.
    private const string Plain = "aAcCdDeEgGhHiIkKlLnNoOrRsStTuUwWyYzZ";
    private const string Accented = "áÁçÇďĎéÉğĞħĦíÍķĶľĽñÑóÓřŘšŠťŤúÚŵŴýÝžŽ";

    /// <returns>The whole language, as text of a PO file.</returns>
    public static string CatalogueOf(ImmutableArray<SaidWords> said) => PoText.Translated(said, Tag, "nplurals=2; plural=(n != 1);", Of);

    /// <param name="template">With holes, which stay as they are, and so does what stands between backquotes.</param>
    public static string Of(string template)
    {
        var text = new StringBuilder(template.Length * 2);
        var (letters, added) = (0, 0);
        var verbatim = false;
        for (var i = 0; i < template.Length;)
        {
            if (template[i] == '{' && template.IndexOf('}', i) is var end and > 0)
            {
                text.Append(template, i, end - i + 1);
                i = end + 1;
            }
            else if (!char.IsAsciiLetter(template[i]) || verbatim)
            {
                verbatim ^= template[i] == '`';
                text.Append(template[i++]);
            }
            else
            {
                var start = i;
                while (i < template.Length && char.IsAsciiLetter(template[i]))
                {
                    text.Append(WithAccent(template[i++]));
                }

                letters += i - start;
                var wanted = (int)Math.Ceiling(letters * Longer);
                Lengthen(text, template[start..i], wanted - added);
                added = wanted;
            }
        }

        return text.ToString();
    }

    /// <summary>Whether it can be a word of this language.</summary>
    public static bool IsAccented(string word) => word.Any(c => c > '\u007f' && Accented.Contains(c, StringComparison.Ordinal));

    private static char WithAccent(char c) => Plain.IndexOf(c, StringComparison.Ordinal) is var at and >= 0 ? Accented[at] : c;

    private static void Lengthen(StringBuilder text, string word, int by)
    {
        var capitals = word.Length > 1 && word.All(char.IsAsciiLetterUpper);
        var least = word.Any(c => Plain.Contains(c, StringComparison.Ordinal)) ? 0 : 1;
        for (var i = 0; i < Math.Max(by, least); i++)
        {
            text.Append((capitals ? "ÉÓÁÚ" : "éóáú")[i % 4]);
        }
    }
}
