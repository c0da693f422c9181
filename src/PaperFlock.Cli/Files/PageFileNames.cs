using System.Collections.Immutable;
using System.Globalization;
using PaperFlock.Cli.Wiring;

namespace PaperFlock.Cli.Files;

/// <summary>What the picture of each page is called: its page code, with a number where several pages share it.</summary>
internal static class PageFileNames
{
    /// <returns>One name for each page of each document, in their order; no two alike even where case does not count.</returns>
    public static ImmutableArray<string> For(Pack pack)
    {
        var codes = pack.Documents
            .SelectMany(d => d.Print.Pages.Select(p => Safe(p.Label) + d.Suffix))
            .ToList();
        var shared = codes.GroupBy(c => c, StringComparer.OrdinalIgnoreCase).Where(g => g.Count() > 1).Select(g => g.Key).ToHashSet(StringComparer.OrdinalIgnoreCase);
        var taken = codes.Where(c => !shared.Contains(c)).ToHashSet(StringComparer.OrdinalIgnoreCase);
        return [.. codes.Select(code => (shared.Contains(code) ? Numbered(code, taken) : code) + ".png")];
    }

    private static string Numbered(string code, HashSet<string> taken)
    {
        for (var n = 1; ; n++)
        {
            var name = string.Create(CultureInfo.InvariantCulture, $"{code}-{n}");
            if (taken.Add(name))
            {
                return name;
            }
        }
    }

    /// <summary>A page code may hold a tag, and a tag may hold what a file name cannot.</summary>
    private static string Safe(string label)
    {
        var safe = string.Concat(label.Select(c => char.IsAsciiLetterOrDigit(c) || c is '-' or '_' ? c : '-')).Trim('-');
        return safe.Length == 0 ? "page" : safe;
    }
}
