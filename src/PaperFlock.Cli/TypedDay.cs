using System.CommandLine.Parsing;
using NodaTime;
using NodaTime.Text;

namespace PaperFlock.Cli;

/// <summary>A day typed after an option.</summary>
internal static class TypedDay
{
    /// <summary>Years for which lambing can be worked out either side without leaving the calendar.</summary>
    private const int FirstYear = 1900;
    private const int LastYear = 2200;

    public static LocalDate? Parse(ArgumentResult argument)
    {
        var text = argument.Tokens.Count > 0 ? argument.Tokens[0].Value : string.Empty;
        var parsed = LocalDatePattern.Iso.Parse(text);
        if (parsed.Success && parsed.Value.Year is >= FirstYear and <= LastYear)
        {
            return parsed.Value;
        }

        argument.AddError(Messages.NotADate(text, argument.Parent is OptionResult option ? option.Option.Name : string.Empty));
        return null;
    }
}
