using System.CommandLine.Parsing;
using PaperFlock.Diagnostics;
using PaperFlock.Sheets;

namespace PaperFlock.Cli;

/// <summary>The sheets named after <c>--sheets</c>, with commas between.</summary>
internal static class SheetChoice
{
    /// <returns>Each once, in binding order.</returns>
    public static string[] Parse(ArgumentResult argument)
    {
        var chosen = new HashSet<string>(StringComparer.Ordinal);
        var typed = argument.Tokens.SelectMany(t => t.Value.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)).ToArray();
        foreach (var word in typed)
        {
            if (PackComposer.Kinds.FirstOrDefault(k => string.Equals(k, word, StringComparison.OrdinalIgnoreCase)) is { } kind)
            {
                chosen.Add(kind);
            }
            else
            {
                argument.AddError(Words.NoSuchSheet(word, NearestWord.Find(word, PackComposer.Kinds)));
            }
        }

        if (typed.Length == 0)
        {
            argument.AddError(Words.NoSheets);
        }

        return [.. PackComposer.Kinds.Where(chosen.Contains)];
    }
}
