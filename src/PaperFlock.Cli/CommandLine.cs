using System.Collections.Immutable;
using System.CommandLine;
using NodaTime;
using PaperFlock.Cli.Begin;
using PaperFlock.Cli.Commands;
using PaperFlock.Cli.Entering;
using PaperFlock.Cli.Files;
using PaperFlock.Cli.Lists;
using PaperFlock.Cli.Wiring;
using PaperFlock.Flocks;
using PaperFlock.Sheets;

namespace PaperFlock.Cli;

/// <summary>What may be typed, and which command it leads to.</summary>
internal static class CommandLine
{
    /// <param name="dropped">The arguments begin with flock files and no command: a pack is to be made of each, beside it.</param>
    public static int Run(IReadOnlyList<string> args, bool dropped, Surroundings surroundings, ILine line)
    {
        var root = Describe(surroundings, line, packsGo: dropped ? null : ".");
        // No response files: `@` begins no file name a shepherd has heard of.
        var typed = root.Parse(dropped ? ["pack", .. args] : args, new ParserConfiguration { ResponseFileTokenReplacer = null });
        if (typed.Errors.Count > 0 && !AsksForHelp(typed))
        {
            foreach (var complaint in UsageComplaints.Of(typed))
            {
                surroundings.Error.WriteLine(Words.Complaint(complaint));
            }

            surroundings.Error.WriteLine(Words.TryHelp(typed.CommandResult.Command));
            return ExitStatus.WrongUse;
        }

        return typed.Invoke(new InvocationConfiguration
        {
            Output = surroundings.Out,
            Error = surroundings.Error,
            // Faults are reported in one place, and signals are the program's own.
            EnableDefaultExceptionHandler = false,
            ProcessTerminationTimeout = null,
        });
    }

    /// <param name="packsGo">Folder of the packs where no other is asked for; null for that of each flock file.</param>
    private static RootCommand Describe(Surroundings surroundings, ILine line, string? packsGo)
    {
        var root = new RootCommand(Words.AboutProgram);
        root.Directives.Clear();
        root.Options.OfType<VersionOption>().Single().Action = new VersionAction(surroundings.Out);
        root.SetAction(_ => WhatNext(surroundings.Out));

        var flock = new Argument<string>(Words.FlockArgument) { Description = Words.AboutFlockArgument };
        var flocks = new Argument<string[]>(Words.FlockArgument)
        {
            Description = Words.AboutFlocksArgument,
            Arity = ArgumentArity.OneOrMore,
        };
        flocks.Validators.Add(UsageComplaints.RefuseOptionsAsFiles);
        var asOf = new Option<LocalDate?>("--as-of")
        {
            HelpName = Words.DateValue,
            Description = Words.AboutAsOf,
            CustomParser = TypedDay.Parse,
        };

        var check = new Command("check", Words.AboutCheck) { flocks, asOf };
        check.SetAction(typed => CheckCommand.Run(Files(typed), typed.GetValue(asOf), surroundings, line));

        var dates = new Command("dates", Words.AboutDates) { flock, asOf };
        dates.SetAction(typed => DatesCommand.Run(Planner(typed), surroundings));

        var figures = new Command("figures", Words.AboutFigures) { flock, asOf };
        figures.SetAction(typed => FiguresCommand.Run(Planner(typed), surroundings));

        var into = new Option<string>("--out") { HelpName = Words.FolderValue, Description = Words.AboutOut };
        var sheets = new Option<string[]>("--sheets")
        {
            HelpName = Words.SheetsValue,
            Description = Words.AboutSheets,
            CustomParser = SheetChoice.Parse,
        };
        var png = new Option<bool>("--png") { Description = Words.AboutPng };
        var from = new Option<LocalDate?>("--from") { HelpName = Words.DateValue, Description = Words.AboutFrom, CustomParser = TypedDay.Parse };
        var to = new Option<LocalDate?>("--to") { HelpName = Words.DateValue, Description = Words.AboutTo, CustomParser = TypedDay.Parse };
        var split = new Option<bool>("--split") { Description = Words.AboutSplit };
        var changed = new Option<bool>("--changed") { Description = Words.AboutChanged };
        var dryRun = new Option<bool>("--dry-run") { Description = Words.AboutDryRun };
        var words = new Option<string>("--words") { HelpName = Words.WordsValue, Description = Words.AboutWords };
        var pack = new Command("pack", Words.AboutPack) { flocks, into, sheets, from, to, split, changed, dryRun, asOf, png, words };
        pack.SetAction(typed => PackCommand.Run(
            Files(typed),
            new PackWishes(typed.GetValue(into) ?? packsGo, Request(typed), typed.GetValue(png), typed.GetValue(asOf), typed.GetValue(words), typed.GetValue(dryRun)),
            surroundings,
            line));

        var calendar = new Command("calendar", Words.AboutCalendar) { flock, into, asOf };
        calendar.SetAction(typed => CalendarCommand.Run(Planner(typed), typed.GetValue(into) ?? ".", surroundings));

        var thing = new Argument<string[]>(Words.ThingArgument) { Description = Words.AboutThingArgument, Arity = ArgumentArity.OneOrMore };
        thing.Validators.Add(UsageComplaints.RefuseOptionsAsFiles);
        var explain = new Command("explain", Words.AboutExplain) { flock, thing, asOf };
        explain.SetAction(typed => ExplainCommand.Run(Planner(typed), typed.GetRequiredValue(thing), surroundings));

        var paper = new Option<Paper>("--paper") { HelpName = Words.PaperValue, Description = Words.AboutPaper, CustomParser = PaperChoice.Parse };
        var testPage = new Command("testpage", Words.AboutTestPage) { paper, into, words };
        testPage.SetAction(typed => LeafCommand.TestPage(typed.GetValue(paper), typed.GetValue(into) ?? ".", typed.GetValue(words), surroundings, line));

        var guide = new Command("guide", Words.AboutGuide) { paper, into, words };
        guide.SetAction(typed => LeafCommand.Guide(typed.GetValue(paper), typed.GetValue(into) ?? ".", typed.GetValue(words), surroundings, line));

        var schema = new Command("schema", Words.AboutSchema);
        schema.SetAction(_ => SchemaCommand.Run(surroundings));

        root.Add(BeginLine.Describe(asOf, surroundings, line));
        root.Add(AddLine.Describe(flock, surroundings));
        root.Add(pack);
        root.Add(check);
        root.Add(dates);
        root.Add(figures);
        root.Add(explain);
        root.Add(calendar);
        root.Add(EnterLine.Describe(flock, asOf, surroundings, line));
        root.Add(testPage);
        root.Add(guide);
        root.Add(schema);
        return root;

        PackRequest Request(ParseResult typed)
        {
            ImmutableArray<string> kinds = [.. typed.GetValue(sheets) ?? []];
            var request = new PackRequest(kinds, SitterDays.Of(typed.GetValue(from), typed.GetValue(to), kinds), typed.GetValue(split), typed.GetValue(changed));
            return request switch
            {
                { Changed: true, IsOfAll: false } => throw new UsageException(Words.ChangedIsOfAll),
                { Changed: false } when typed.GetValue(dryRun) => throw new UsageException(Words.DryRunIsOfChanged),
                _ => request,
            };
        }

        ImmutableArray<string> Files(ParseResult typed) => FlockFiles.Find(typed.GetRequiredValue(flocks), surroundings);

        Desk Planner(ParseResult typed) => new(typed.GetRequiredValue(flock), typed.GetValue(asOf), surroundings, line);
    }

    private static int WhatNext(TextWriter output)
    {
        output.WriteLine(Words.WhatNext);
        return ExitStatus.Clean;
    }

    private static bool AsksForHelp(ParseResult typed) => typed.Action is System.CommandLine.Help.HelpAction;
}
