using System.CommandLine.Parsing;
using PaperFlock.Diagnostics;
using PaperFlock.Sheets;

namespace PaperFlock.Cli;

/// <summary>The sheets named after <c>--sheets</c>, with commas between.</summary>
internal static class SheetChoice
{
    private static readonly string[] All = [.. PackSheets.All.Select(s => s.Kind), .. PackSheets.All.Select(s => s.Code)];

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

        return [.. PackSheets.All.Select(s => s.Kind).Where(chosen.Contains)];
    }

    private static string? KindOf(string word) =>
        PackSheets.All.FirstOrDefault(s => s.Kind.Equals(word, StringComparison.OrdinalIgnoreCase) || s.Code.Equals(word, StringComparison.OrdinalIgnoreCase))?.Kind;

    private static string Complaint(string word)
    {
        // Such as FEED-2 or CARD-00101: the code of one leaf of many.
        return PackSheets.OfCode(word) is { } many ? Messages.OneLeafOnly(word, many.Code) : Messages.NoSuchSheet(word, NearestWord.Find(word, All));
    }
}
