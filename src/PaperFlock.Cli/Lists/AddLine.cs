using System.CommandLine;
using PaperFlock.Cli.Commands;

namespace PaperFlock.Cli.Lists;

/// <summary>How <c>add ewes</c> is typed.</summary>
internal static class AddLine
{
    public static Command Describe(Argument<string> flock, Host host)
    {
        var list = new Argument<string>(ListMessages.ListArgument) { Description = ListMessages.AboutListArgument };
        var goodRows = new Option<bool>("--good-rows") { Description = ListMessages.AboutGoodRows };
        var ewes = new Command("ewes", ListMessages.AboutAddEwes) { flock, list, goodRows };
        ewes.SetAction(typed => AddEwesCommand.Run(typed.GetRequiredValue(flock), typed.GetRequiredValue(list), typed.GetValue(goodRows), host));
        return new Command("add", ListMessages.AboutAdd) { ewes };
    }
}
