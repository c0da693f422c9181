using System.Text.RegularExpressions;

namespace PaperFlock.Packs;

/// <summary>What the files made of a flock are called.</summary>
public static partial class PackFileNames
{
    /// <summary>What they all begin with: the name of the flock file without its folder and ending.</summary>
    public static string Of(string flockFile) => Path.GetFileNameWithoutExtension(flockFile) is { Length: > 0 } name ? name : "flock";

    /// <summary>What the flock file of a holding is called: in lower case, words joined by hyphens, a name every disk takes.</summary>
    public static string FlockFile(string holding)
    {
        var plain = string.Concat(holding.Select(c => char.IsAsciiLetterOrDigit(c) ? char.ToLowerInvariant(c) : ' '));
        var name = string.Join('-', plain.Split(' ', StringSplitOptions.RemoveEmptyEntries));
        return (name.Length == 0 ? "flock" : name) + ".yaml";
    }

    /// <summary>All that may follow the flock's name in the name of a document.</summary>
    public static ImmutableArray<string> Suffixes(PackRequest request) =>
        !request.IsOfAll || request.Draft ? [""] : request.Split ? [.. PrintWay.All.Select(w => $"-{w.Name}"), PackBinding.PlannerSuffix] : ["", PackBinding.PlannerSuffix];

    /// <summary>Whether a PDF that is there may be replaced by a pack of that holding, whatever its season: no other is ever lost by chance.</summary>
    /// <returns>Null where it may; else what it is, to follow its name.</returns>
    public static string? WhyNotReplace(ReadOnlyMemory<byte> pdf, string holding) =>
        PdfAttachments.TitleOf(pdf.Span) is not { } title ? "is no pack that this program has made, or is damaged"
        : title.StartsWith(holding, StringComparison.Ordinal) && PackId().IsMatch(title.AsSpan(holding.Length)) ? null
        : $"is of another holding: {title}";

    /// <summary>The number of the issue that the name of a file tells; 0 for none.</summary>
    internal static int IssueIn(string file) => IssueNumber().Match(file) is { Success: true } match ? int.Parse(match.Groups[1].ValueSpan, CultureInfo.InvariantCulture) : 0;

    /// <summary>Whether a file beside a pack may remember one of its issues: the pack itself, an issue of changed leaves, or the binder of either.</summary>
    /// <param name="flock">What the names of the flock's files begin with.</param>
    public static bool MayRemember(string flock, string file) =>
        file == flock + EarlierIssue.OldEnding
        || (file.StartsWith(flock, StringComparison.Ordinal) && Remembering().IsMatch(file.AsSpan(flock.Length)));

    /// <summary>What the picture of each page is called: its page code, with a number where several pages share it.</summary>
    /// <returns>One name for each page of each document, in their order; no two alike even where case does not count.</returns>
    public static ImmutableArray<string> Pictures(IEnumerable<PackDocument> documents)
    {
        var all = documents.ToList();
        // What the first is called besides, such as what is in it, would be in the name of every picture.
        var first = all.Count > 0 ? all[0].Suffix : "";
        var codes = all.SelectMany(d => d.Print.Pages.Select(p => Safe(p.Label) + (d.Suffix.StartsWith(first, StringComparison.Ordinal) ? d.Suffix[first.Length..] : d.Suffix))).ToList();
        var shared = codes.GroupBy(c => c, StringComparer.OrdinalIgnoreCase).Where(g => g.Count() > 1).Select(g => g.Key).ToHashSet(StringComparer.OrdinalIgnoreCase);
        var taken = codes.Where(c => !shared.Contains(c)).ToHashSet(StringComparer.OrdinalIgnoreCase);
        return [.. codes.Select(code => (shared.Contains(code) ? Numbered(code, taken) : code) + ".png")];
    }

    private static string Numbered(string code, HashSet<string> taken) => Enumerable.Range(1, int.MaxValue).Select(n => $"{code}-{n}").First(taken.Add);

    /// <summary>A page code, or what is in a set of leaves, as a part of a name that any disk takes: it may hold a tag, and a tag may hold what a file name cannot.</summary>
    internal static string Safe(string label)
    {
        var safe = string.Concat(label.Select(c => char.IsAsciiLetterOrDigit(c) || c is '-' or '_' ? c : '-')).Trim('-');
        return safe.Length == 0 ? "page" : safe;
    }

    [GeneratedRegex(@"^ \S{1,8}-[0-9]{4}($|[:,])", RegexOptions.CultureInvariant)]
    private static partial Regex PackId();

    [GeneratedRegex(@"-issue-([0-9]{1,6})(-binder)?\.pdf$", RegexOptions.CultureInvariant)]
    private static partial Regex IssueNumber();

    [GeneratedRegex(@"^(-issue-[0-9]{1,6})?(-binder)?\.pdf$", RegexOptions.CultureInvariant)]
    private static partial Regex Remembering();
}
