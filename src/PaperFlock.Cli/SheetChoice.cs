using System.CommandLine.Parsing;
using PaperFlock.Cli.Wiring;
using PaperFlock.Diagnostics;

namespace PaperFlock.Cli;

/// <summary>The sheets named after <c>--sheets</c>, with commas between.</summary>
internal static class SheetChoice
{
    /// <returns>Each once, in binding order.</returns>
    public static SheetName[] Parse(ArgumentResult argument)
    {
        var chosen = new HashSet<SheetName>();
        var typed = argument.Tokens.SelectMany(t => t.Value.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)).ToArray();
        foreach (var word in typed)
        {
            if (SheetName.Find(word) is { } sheet)
            {
                chosen.Add(sheet);
            }
            else
            {
                argument.AddError(Words.NoSuchSheet(word, NearestWord.Find(word, SheetName.All.Select(s => s.Word))));
            }
        }

        if (typed.Length == 0)
        {
            argument.AddError(Words.NoSheets);
        }

        return [.. SheetName.All.Where(chosen.Contains)];
    }
}
