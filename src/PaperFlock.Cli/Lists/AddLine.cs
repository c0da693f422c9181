using System.CommandLine;
using PaperFlock.Cli.Commands;

namespace PaperFlock.Cli.Lists;

/// <summary>How <c>add ewes</c> is typed.</summary>
internal static class AddLine
{
    public static Command Describe(Argument<string> flock, Surroundings surroundings)
    {
        var list = new Argument<string>(ListWords.ListArgument) { Description = ListWords.AboutListArgument };
        var goodRows = new Option<bool>("--good-rows") { Description = ListWords.AboutGoodRows };
        var ewes = new Command("ewes", ListWords.AboutAddEwes) { flock, list, goodRows };
        ewes.SetAction(typed => AddEwesCommand.Run(typed.GetRequiredValue(flock), typed.GetRequiredValue(list), typed.GetValue(goodRows), surroundings));
        return new Command("add", ListWords.AboutAdd) { ewes };
    }
}
