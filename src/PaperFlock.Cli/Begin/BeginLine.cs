using System.CommandLine;
using NodaTime;
using PaperFlock.Cli.Commands;
using PaperFlock.Cli.Wiring;

namespace PaperFlock.Cli.Begin;

/// <summary>What may be typed after <c>begin</c>.</summary>
internal static class BeginLine
{
    public static Command Describe(Option<LocalDate?> asOf, Host host, ILine line)
    {
        var file = new Argument<string?>(BeginMessages.FileArgument) { Description = BeginMessages.AboutFile, Arity = ArgumentArity.ZeroOrOne };
        var name = Text("--name", BeginMessages.TextValue, BeginMessages.AboutName);
        var keeper = Text("--keeper", BeginMessages.TextValue, BeginMessages.AboutKeeper);
        var place = Text("--place", BeginMessages.PlaceValue, BeginMessages.AboutPlace);
        var zone = Text("--time-zone", BeginMessages.ZoneValue, BeginMessages.AboutTimeZone);
        var tupIn = Text("--tup-in", Messages.DateValue, BeginMessages.AboutTupIn);
        var lambing = Text("--lambing-from", Messages.DateValue, BeginMessages.AboutLambingFrom);
        var ewes = Text("--ewes", BeginMessages.EwesValue, BeginMessages.AboutEwes);
        var goodRows = new Option<bool>("--good-rows") { Description = BeginMessages.AboutGoodRows };
        var paper = Text("--paper", Messages.PaperValue, BeginMessages.AboutPaper);
        var yes = new Option<bool>("--yes") { Description = BeginMessages.AboutYes };
        var overwrite = new Option<bool>("--overwrite") { Description = BeginMessages.AboutOverwrite };

        var begin = new Command("begin", BeginMessages.About) { file, name, keeper, place, zone, tupIn, lambing, ewes, goodRows, paper, yes, overwrite, asOf };
        begin.SetAction(typed => BeginCommand.Run(
            new BeginOptions(
                typed.GetValue(file), typed.GetValue(name), typed.GetValue(keeper), typed.GetValue(place), typed.GetValue(zone),
                typed.GetValue(tupIn), typed.GetValue(lambing), typed.GetValue(ewes), typed.GetValue(goodRows), typed.GetValue(paper), typed.GetValue(yes), typed.GetValue(overwrite)),
            typed.GetValue(asOf),
            host,
            line));
        return begin;
    }

    private static Option<string?> Text(string option, string value, string about) => new(option) { HelpName = value, Description = about };
}
