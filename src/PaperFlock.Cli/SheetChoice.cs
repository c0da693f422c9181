using System.CommandLine.Parsing;
using PaperFlock.Diagnostics;
using PaperFlock.Sheets;

namespace PaperFlock.Cli;

/// <summary>The sheets named after <c>--sheets</c>, with commas between.</summary>
internal static class SheetChoice
{
    private static readonly string[] All = [.. PackComposer.Kinds, .. PackComposer.Codes.Select(c => c.Code)];

    /// <summary>By name, or by the page code they are printed with; capitals do not matter.</summary>
    /// <returns>Each once, in binding order.</returns>
    public static string[] Parse(ArgumentResult argument)
    {
        var chosen = new HashSet<string>(StringComparer.Ordinal);
        var typed = argument.Tokens.SelectMany(t => t.Value.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)).ToArray();
        foreach (var word in typed)
        {
            if (KindOf(word) is { } kind)
            {
                chosen.Add(kind);
            }
            else
            {
                argument.AddError(Complaint(word));
            }
        }

        if (typed.Length == 0)
        {
            argument.AddError(Messages.NoSheets);
        }

        return [.. PackComposer.Kinds.Where(chosen.Contains)];
    }

    private static string? KindOf(string word) =>
        PackComposer.Kinds.FirstOrDefault(k => string.Equals(k, word, StringComparison.OrdinalIgnoreCase))
        ?? PackComposer.Codes.FirstOrDefault(c => string.Equals(c.Code, word, StringComparison.OrdinalIgnoreCase)).Kind;

    private static string Complaint(string word)
    {
        // Such as FEED-2 or CARD-00101: the code of one leaf of many.
        var many = word.IndexOf('-', StringComparison.Ordinal) is > 0 and var dash && !All.Contains(word, StringComparer.OrdinalIgnoreCase)
            ? PackComposer.Codes.FirstOrDefault(c => c.Code.AsSpan().Equals(word.AsSpan(0, dash), StringComparison.OrdinalIgnoreCase)).Code
            : null;
        return many is null ? Messages.NoSuchSheet(word, NearestWord.Find(word, All)) : Messages.OneLeafOnly(word, many);
    }
}
