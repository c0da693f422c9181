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
    public static int Run(IReadOnlyList<string> args, bool dropped, Host host, ILine line)
    {
        var root = Describe(host, line, packsGo: dropped ? null : ".");
        // No response files: `@` begins no file name a shepherd has heard of.
        var typed = root.Parse(dropped ? ["pack", .. args] : args, new ParserConfiguration { ResponseFileTokenReplacer = null });
        if (typed.Errors.Count > 0 && !AsksForHelp(typed))
        {
            foreach (var complaint in UsageComplaints.Of(typed))
            {
                host.Error.WriteLine(Messages.Complaint(complaint));
            }

            host.Error.WriteLine(Messages.TryHelp(typed.CommandResult.Command));
            return ExitStatus.WrongUse;
        }

        return typed.Invoke(new InvocationConfiguration
        {
            Output = host.Out,
            Error = host.Error,
            // Faults are reported in one place, and signals are the program's own.
            EnableDefaultExceptionHandler = false,
            ProcessTerminationTimeout = null,
        });
    }

    /// <param name="packsGo">Folder of the packs where no other is asked for; null for that of each flock file.</param>
    private static RootCommand Describe(Host host, ILine line, string? packsGo)
    {
        var root = new RootCommand(Messages.AboutProgram);
        root.Directives.Clear();
        root.Options.OfType<VersionOption>().Single().Action = new VersionAction(host.Out);
        root.SetAction(_ => WhatNext(host.Out));

        var flock = new Argument<string>(Messages.FlockArgument) { Description = Messages.AboutFlockArgument };
        var flocks = new Argument<string[]>(Messages.FlockArgument)
        {
            Description = Messages.AboutFlocksArgument,
            Arity = ArgumentArity.OneOrMore,
        };
        flocks.Validators.Add(UsageComplaints.RefuseOptionsAsFiles);
        var asOf = new Option<LocalDate?>("--as-of")
        {
            HelpName = Messages.DateValue,
            Description = Messages.AboutAsOf,
            CustomParser = TypedDay.Parse,
        };

        var check = new Command("check", Messages.AboutCheck) { flocks, asOf };
        check.SetAction(typed => CheckCommand.Run(Files(typed), typed.GetValue(asOf), host, line));

        var dates = new Command("dates", Messages.AboutDates) { flock, asOf };
        dates.SetAction(typed => DatesCommand.Run(Planner(typed), host));

        var figures = new Command("figures", Messages.AboutFigures) { flock, asOf };
        figures.SetAction(typed => FiguresCommand.Run(Planner(typed), host));

        var into = new Option<string>("--out") { HelpName = Messages.FolderValue, Description = Messages.AboutOut };
        var sheets = new Option<string[]>("--sheets")
        {
            HelpName = Messages.SheetsValue,
            Description = Messages.AboutSheets,
            CustomParser = SheetChoice.Parse,
        };
        var png = new Option<bool>("--png") { Description = Messages.AboutPng };
        var from = new Option<LocalDate?>("--from") { HelpName = Messages.DateValue, Description = Messages.AboutFrom, CustomParser = TypedDay.Parse };
        var to = new Option<LocalDate?>("--to") { HelpName = Messages.DateValue, Description = Messages.AboutTo, CustomParser = TypedDay.Parse };
        var split = new Option<bool>("--split") { Description = Messages.AboutSplit };
        var changed = new Option<bool>("--changed") { Description = Messages.AboutChanged };
        var dryRun = new Option<bool>("--dry-run") { Description = Messages.AboutDryRun };
        var pack = new Command("pack", Messages.AboutPack) { flocks, into, sheets, from, to, split, changed, dryRun, asOf, png };
        pack.SetAction(typed => PackCommand.Run(
            Files(typed),
            new PackOptions(typed.GetValue(into) ?? packsGo, Request(typed), typed.GetValue(png), typed.GetValue(asOf), typed.GetValue(dryRun)),
            host,
            line));

        var calendar = new Command("calendar", Messages.AboutCalendar) { flock, into, asOf };
        calendar.SetAction(typed => CalendarCommand.Run(Planner(typed), typed.GetValue(into) ?? ".", host));

        var thing = new Argument<string[]>(Messages.ThingArgument) { Description = Messages.AboutThingArgument, Arity = ArgumentArity.OneOrMore };
        thing.Validators.Add(UsageComplaints.RefuseOptionsAsFiles);
        var explain = new Command("explain", Messages.AboutExplain) { flock, thing, asOf };
        explain.SetAction(typed => ExplainCommand.Run(Planner(typed), typed.GetRequiredValue(thing), host));

        var paper = new Option<Paper>("--paper") { HelpName = Messages.PaperValue, Description = Messages.AboutPaper, CustomParser = PaperChoice.Parse };
        var testPage = new Command("testpage", Messages.AboutTestPage) { paper, into };
        testPage.SetAction(typed => LeafCommand.TestPage(typed.GetValue(paper), typed.GetValue(into) ?? ".", host, line));

        var guide = new Command("guide", Messages.AboutGuide) { paper, into };
        guide.SetAction(typed => LeafCommand.Guide(typed.GetValue(paper), typed.GetValue(into) ?? ".", host, line));

        var schema = new Command("schema", Messages.AboutSchema);
        schema.SetAction(_ => SchemaCommand.Run(host));

        root.Add(BeginLine.Describe(asOf, host, line));
        root.Add(AddLine.Describe(flock, host));
        root.Add(pack);
        root.Add(check);
        root.Add(dates);
        root.Add(figures);
        root.Add(explain);
        root.Add(calendar);
        root.Add(EnterLine.Describe(flock, asOf, host, line));
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
                { Changed: true, IsOfAll: false } => throw new UsageException(Messages.ChangedIsOfAll),
                { Changed: false } when typed.GetValue(dryRun) => throw new UsageException(Messages.DryRunIsOfChanged),
                _ => request,
            };
        }

        ImmutableArray<string> Files(ParseResult typed) => FlockFiles.Find(typed.GetRequiredValue(flocks), host);

        FlockLoader Planner(ParseResult typed) => new(typed.GetRequiredValue(flock), typed.GetValue(asOf), host, line);
    }

    private static int WhatNext(TextWriter output)
    {
        output.WriteLine(Messages.WhatNext);
        return ExitStatus.Clean;
    }

    private static bool AsksForHelp(ParseResult typed) => typed.Action is System.CommandLine.Help.HelpAction;
}
