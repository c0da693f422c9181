using System.Collections.Immutable;
using System.Globalization;
using System.Text;

namespace PaperFlock.Languages;

/// <summary>A text with numbered holes: <c>Count all {0}</c>. Braces that are meant as such stand twice.</summary>
public static class Template
{
    public static void AppendText(StringBuilder template, string text)
    {
        foreach (var c in text)
        {
            template.Append(c);
            if (c is '{' or '}')
            {
                template.Append(c);
            }
        }
    }

    /// <param name="number">From 0.</param>
    public static void AppendHole(StringBuilder template, int number) =>
        template.Append('{').Append(number.ToString(CultureInfo.InvariantCulture)).Append('}');

    /// <returns>The numbers of its holes, sorted, each once; null when a brace has no partner or holds no number.</returns>
    public static ImmutableArray<int>? HolesOf(string template)
    {
        var holes = new SortedSet<int>();
        return Walk(template, _ => { }, number => holes.Add(number)) ? [.. holes] : null;
    }

    /// <exception cref="ArgumentException">It has a hole for which there is no word, or a brace without a partner.</exception>
    internal static string Fill(string template, ImmutableArray<string> holes)
    {
        var text = new StringBuilder(template.Length + 16);
        return Walk(template, c => text.Append(c), number => text.Append(holes[number]))
            ? text.ToString()
            : throw new ArgumentException($"not a template: {template}", nameof(template));
    }

    private static bool Walk(string template, Action<char> text, Action<int> hole)
    {
        for (var i = 0; i < template.Length; i++)
        {
            var c = template[i];
            if (c is not ('{' or '}'))
            {
                text(c);
            }
            else if (i + 1 < template.Length && template[i + 1] == c)
            {
                text(c);
                i++;
            }
            else if (c == '{' && template.IndexOf('}', i) is var end and > 0
                && int.TryParse(template.AsSpan(i + 1, end - i - 1), NumberStyles.None, CultureInfo.InvariantCulture, out var number))
            {
                hole(number);
                i = end;
            }
            else
            {
                return false;
            }
        }

        return true;
    }
}
