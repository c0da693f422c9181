using System.CommandLine.Parsing;
using PaperFlock.Flocks;

namespace PaperFlock.Cli;

/// <summary>The size of paper named after <c>--paper</c>.</summary>
internal static class PaperChoice
{
    public static Paper Parse(ArgumentResult argument)
    {
        var text = argument.Tokens.Count > 0 ? argument.Tokens[0].Value : string.Empty;
        foreach (var paper in Enum.GetValues<Paper>())
        {
            if (string.Equals(paper.ToString(), text, StringComparison.OrdinalIgnoreCase))
            {
                return paper;
            }
        }

        argument.AddError(Messages.NoSuchPaper(text));
        return Paper.A4;
    }
}
