using System.Text.RegularExpressions;

namespace PaperFlock.Packs;

/// <summary>What the files made of a flock are called.</summary>
public static partial class PackFileNames
{
    /// <summary>What they all begin with: the name of the flock file without its folder and ending.</summary>
    public static string Of(string flockFile) => Path.GetFileNameWithoutExtension(flockFile) is { Length: > 0 } name ? name : "flock";

    /// <summary>All that may follow the flock's name in the name of a document.</summary>
    /// <param name="forDays">A pack for some days has them in its name, which no other can then have by chance.</param>
    public static ImmutableArray<string> Suffixes(bool split, bool forDays) =>
        forDays ? [""] : split ? [.. PrintWay.All.Select(w => $"-{w.Name}"), PackBinding.PlannerSuffix] : ["", PackBinding.PlannerSuffix];

    /// <summary>Whether a file beside a pack may remember one of its issues: the pack itself, an issue of changed leaves, or the binder of either.</summary>
    /// <param name="flock">What the names of the flock's files begin with.</param>
    public static bool MayRemember(string flock, string file) =>
        file == flock + EarlierIssue.OldEnding
        || (file.StartsWith(flock, StringComparison.Ordinal) && Remembering().IsMatch(file.AsSpan(flock.Length)));

    /// <summary>What the picture of each page is called: its page code, with a number where several pages share it.</summary>
    /// <returns>One name for each page of each document, in their order; no two alike even where case does not count.</returns>
    public static ImmutableArray<string> Pictures(IEnumerable<PackDocument> documents)
    {
        var codes = documents.SelectMany(d => d.Print.Pages.Select(p => Safe(p.Label) + d.Suffix)).ToList();
        var shared = codes.GroupBy(c => c, StringComparer.OrdinalIgnoreCase).Where(g => g.Count() > 1).Select(g => g.Key).ToHashSet(StringComparer.OrdinalIgnoreCase);
        var taken = codes.Where(c => !shared.Contains(c)).ToHashSet(StringComparer.OrdinalIgnoreCase);
        return [.. codes.Select(code => (shared.Contains(code) ? Numbered(code, taken) : code) + ".png")];
    }

    private static string Numbered(string code, HashSet<string> taken) => Enumerable.Range(1, int.MaxValue).Select(n => $"{code}-{n}").First(taken.Add);

    /// <summary>A page code may hold a tag, and a tag may hold what a file name cannot.</summary>
    private static string Safe(string label)
    {
        var safe = string.Concat(label.Select(c => char.IsAsciiLetterOrDigit(c) || c is '-' or '_' ? c : '-')).Trim('-');
        return safe.Length == 0 ? "page" : safe;
    }

    [GeneratedRegex(@"^(-issue-[0-9]{1,6})?(-binder)?\.pdf$", RegexOptions.CultureInvariant)]
    private static partial Regex Remembering();
}
