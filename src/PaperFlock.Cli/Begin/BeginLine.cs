using System.CommandLine;
using NodaTime;
using PaperFlock.Cli.Commands;
using PaperFlock.Cli.Wiring;

namespace PaperFlock.Cli.Begin;

/// <summary>What may be typed after <c>begin</c>.</summary>
internal static class BeginLine
{
    public static Command Describe(Option<LocalDate?> asOf, Surroundings surroundings, ILine line)
    {
        var file = new Argument<string?>(BeginWords.FileArgument) { Description = BeginWords.AboutFile, Arity = ArgumentArity.ZeroOrOne };
        var name = Text("--name", BeginWords.TextValue, BeginWords.AboutName);
        var keeper = Text("--keeper", BeginWords.TextValue, BeginWords.AboutKeeper);
        var place = Text("--place", BeginWords.PlaceValue, BeginWords.AboutPlace);
        var zone = Text("--time-zone", BeginWords.ZoneValue, BeginWords.AboutTimeZone);
        var tupIn = Text("--tup-in", Words.DateValue, BeginWords.AboutTupIn);
        var lambing = Text("--lambing-from", Words.DateValue, BeginWords.AboutLambingFrom);
        var ewes = Text("--ewes", BeginWords.EwesValue, BeginWords.AboutEwes);
        var goodRows = new Option<bool>("--good-rows") { Description = BeginWords.AboutGoodRows };
        var paper = Text("--paper", Words.PaperValue, BeginWords.AboutPaper);
        var yes = new Option<bool>("--yes") { Description = BeginWords.AboutYes };
        var overwrite = new Option<bool>("--overwrite") { Description = BeginWords.AboutOverwrite };

        var begin = new Command("begin", BeginWords.About) { file, name, keeper, place, zone, tupIn, lambing, ewes, goodRows, paper, yes, overwrite, asOf };
        begin.SetAction(typed => BeginCommand.Run(
            new BeginWishes(
                typed.GetValue(file), typed.GetValue(name), typed.GetValue(keeper), typed.GetValue(place), typed.GetValue(zone),
                typed.GetValue(tupIn), typed.GetValue(lambing), typed.GetValue(ewes), typed.GetValue(goodRows), typed.GetValue(paper), typed.GetValue(yes), typed.GetValue(overwrite)),
            typed.GetValue(asOf),
            surroundings,
            line));
        return begin;
    }

    private static Option<string?> Text(string option, string value, string about) => new(option) { HelpName = value, Description = about };
}
