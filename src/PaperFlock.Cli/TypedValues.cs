using System.CommandLine.Parsing;
using PaperFlock.Flocks.Reading.Values;

namespace PaperFlock.Cli;

/// <summary>Days, paper and sheets as they are typed after options.</summary>
internal static class TypedValues
{
    public static LocalDate? Day(ArgumentResult argument)
    {
        var meant = WrittenDate.Days(Text(argument));
        var days = meant.RemoveAll(d => d.Year is < ScreenText.FirstYear or > ScreenText.LastYear);
        if (days.Length == 1)
        {
            return days[0];
        }

        argument.AddError(!meant.IsEmpty && days.IsEmpty ? $"'{Text(argument)}' is outside the years this program works in, {ScreenText.FirstYear} to {ScreenText.LastYear}"
            : days.IsEmpty ? $"'{Text(argument)}' is no date: write it year first, such as {(argument.Parent as OptionResult)?.Option.Name} 2026-11-25"
            : ScreenText.TwoDays(Text(argument), days));
        return null;
    }

    public static Flocks.Paper Paper(ArgumentResult argument)
    {
        var text = Text(argument);
        if (Enum.GetValues<Flocks.Paper>().Where(p => string.Equals(p.ToString(), text, StringComparison.OrdinalIgnoreCase)).ToArray() is [var paper])
        {
            return paper;
        }

        argument.AddError($"there is no paper '{text}'; there are {ScreenText.List(Enum.GetNames<Flocks.Paper>())}");
        return default;
    }

    /// <summary>Names or page codes, with commas between.</summary>
    public static string[] Sheets(ArgumentResult argument)
    {
        var typed = argument.Tokens.SelectMany(t => t.Value.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)).ToList();
        var (sheets, codes, complaints) = SheetChoice.Read(typed);
        foreach (var complaint in typed.Count == 0 ? ["--sheets wants the names of sheets, such as --sheets planner,cards, or codes at the foot of their pages, such as --sheets CARD-00101"] : complaints)
        {
            argument.AddError(complaint);
        }

        return [.. sheets, .. codes];
    }

    private static string Text(ArgumentResult argument) => argument.Tokens.Count > 0 ? argument.Tokens[0].Value : "";
}
