using System.CommandLine;
using System.CommandLine.Completions;
using System.CommandLine.Help;
using System.CommandLine.Invocation;
using System.CommandLine.Parsing;
using PaperFlock.Cli.Commands;
using PaperFlock.Flocks.Reading;
using PaperFlock.Planning;

namespace PaperFlock.Cli;

/// <summary>What may be typed, and which command it leads to.</summary>
internal static class CommandLine
{
    /// <param name="dropped">The arguments begin with flock files and no command: a pack is to be made of each, beside it.</param>
    public static int Run(IReadOnlyList<string> args, bool dropped, Host host)
    {
        var suggest = new SuggestDirective();
        var root = Describe(suggest, host);
        // No response files: `@` begins no file name a shepherd has heard of.
        var typed = root.Parse(dropped ? ["pack", .. args] : args, new ParserConfiguration { ResponseFileTokenReplacer = null });
        // What is to be completed is not whole yet.
        if (typed.Errors.Count > 0 && typed.Action is not HelpAction && typed.GetResult(suggest) is null)
        {
            foreach (var complaint in UsageComplaints.Of(typed))
            {
                host.Error.WriteLine(Messages.Complaint(complaint));
            }

            host.Error.WriteLine($"Try: {string.Join(' ', [Messages.Program, .. UsageComplaints.Typed(typed.CommandResult.Command), "--help"])}");
            return ExitStatus.WrongUse;
        }

        SayDaysBack(typed, host);
        return typed.Invoke(new InvocationConfiguration
        {
            Output = host.Out,
            Error = host.Error,
            // Faults are reported in one place, and signals are the program's own.
            EnableDefaultExceptionHandler = false,
            ProcessTerminationTimeout = null,
        });
    }

    /// <summary>A date in another form than the flock file's may have been meant otherwise.</summary>
    private static void SayDaysBack(ParseResult typed, Host host)
    {
        foreach (var result in typed.CommandResult.Children.OfType<OptionResult>())
        {
            if (result is { Option: Option<LocalDate?> option, Tokens: [var token] } && typed.GetValue(option) is { } day && token.Value != LocalDatePattern.Iso.Format(day))
            {
                host.Error.WriteLine(Messages.Complaint($"{option.Name} is {ScreenText.Day(day)}"));
            }
        }
    }

    private static RootCommand Describe(SuggestDirective suggest, Host host)
    {
        var root = new RootCommand("Turns one file about a small flock of ewes into a printed pack for the lambing season.");
        root.Directives.Clear();
        root.Add(suggest);
        root.Options.OfType<VersionOption>().Single().Action = new VersionAction(host.Out);
        root.SetAction(_ => host.Out.WriteLine(
            """
            PaperFlock turns one file about your flock into a printed pack for the lambing season.
            See it work:     paperflock pack flocks/hollin-bank.yaml
            Check your own:  paperflock check my-flock.yaml
            Everything else: paperflock --help
            """));

        var flock = new Argument<string>("FLOCK.yaml") { Description = "the file about your flock" };
        var flocks = Several("FLOCK.yaml", "the file about your flock; or several of them, or a folder of them");
        var asOf = Day("--as-of", "stands in for today, such as 2026-11-25");
        var into = new Option<string>("--out") { HelpName = "DIR", Description = "the folder to write into; this folder if you do not say" };
        var beside = new Option<string>("--out") { HelpName = "DIR", Description = "the folder to write into; that of the flock file if you do not say" };
        var overwrite = new Option<bool>("--overwrite") { Description = "replace a file that is there even if it is of another holding, or no work of this program" };
        var paper = new Option<Paper>("--paper") { HelpName = "A4|Letter", Description = "the paper in the printer; A4 if you do not say", CustomParser = TypedValues.Paper };

        root.Add(BeginCommand.Describe(asOf, host));
        root.Add(AddEwesCommand.Describe(flock, asOf, host));
        root.Add(PackCommand.Describe(flocks, beside, overwrite, asOf, host));

        Add(new Command("check", "read the flock file and say what is wrong with it, or that nothing is") { flocks, asOf }, typed =>
        {
            var files = FlockFiles.Find(typed.GetRequiredValue(flocks), host);
            return ManyFlocks.Run("check", files, host, "flock file", "without errors", file => Check(file, typed.GetValue(asOf), saysNext: files.Length == 1, host));
        });

        AddReport(new Command("dates", "show the dates of the jobs, and when each ewe is due") { flock, asOf }, (plan, _) => new ReportWriter(host).Write(PackMaker.Dates(plan)));

        AddReport(new Command("figures", "write every figure of the plan as JSON") { flock, asOf }, (plan, _) => host.Out.Write(PackMaker.Figures(plan) + '\n'));

        var thing = Several("DATE|JOB|EWE", "such as 2026-12-27, scan, Bracken or the end of a tag");
        AddReport(new Command("explain", "say why the plan says what it says of a day, a job or a ewe") { flock, thing, asOf }, (plan, typed) =>
            // A tag may be typed as several words, without quotes.
            Explain(plan, string.Join(' ', typed.GetRequiredValue(thing)).Trim(), host));

        AddReport(new Command("calendar", "write the jobs as a calendar file, for a telephone or another computer") { flock, beside, overwrite, asOf }, (plan, typed) =>
        {
            var file = new PackPaths(typed.GetRequiredValue(flock), typed.GetValue(beside), host).Of(".ics");
            var calendar = PackMaker.Calendar(plan);
            if (!typed.GetValue(overwrite))
            {
                // Ours begin alike for one holding, up to the first job.
                var head = calendar.AsMemory(0, Math.Max(0, calendar.AsSpan().IndexOf("BEGIN:VEVENT"u8)));
                PackPaths.RefuseToReplace(file, there => there.AsSpan().StartsWith(head.Span) ? null : "is no calendar of this holding", host);
            }

            StagedFiles.Write(file, calendar, host);
            var unplaced = plan.Jobs.Count(j => j.Date is null);
            host.Out.WriteLine($"wrote {file.Shown}: {ScreenText.Count(plan.Jobs.Length, "job")}"
                + (unplaced == 0 ? "" : $", {unplaced} of them without a day: marked, and put where they would best be done"));
            host.Out.WriteLine(Messages.Next("open it with your calendar, on this computer or sent to a telephone; after a change, write it and open it again"));
        });

        AddReport(new Command("births", "write the lambs born, for the flock book, as rows for a spreadsheet") { flock, beside, overwrite, asOf }, (plan, typed) =>
        {
            var file = new PackPaths(typed.GetRequiredValue(flock), typed.GetValue(beside), host).Of("-births.csv");
            if (!typed.GetValue(overwrite))
            {
                PackPaths.RefuseToReplace(file, there => PackMaker.WhyNotReplaceBirths(there, plan), host);
            }

            StagedFiles.Write(file, PackMaker.Births(plan), host);
            host.Out.WriteLine($"wrote {file.Shown}: {ScreenText.Count(plan.Outcome.BornAlive + plan.Outcome.BornDead, "lamb")} of {ScreenText.Count(plan.Outcome.Lambings.Length, "ewe")}");
            host.Out.WriteLine(Messages.Next("open it with your spreadsheet; after another lambing, write it again"));
        });

        root.Add(EnterCommand.Describe(flock, asOf, host));

        Add(new Command("testpage", "make a page that shows what your printer does: scale, margins, both sides") { paper, into }, typed =>
            WriteLeaf(PackMaker.TestPage(typed.GetValue(paper)), $"testpage-{typed.GetValue(paper)}", Folder(typed), host));

        Add(new Command("guide", "make a leaf that says how to use a pack, for whoever is handed one") { paper, into }, typed =>
            WriteLeaf(PackMaker.Guide(typed.GetValue(paper)), typed.GetValue(paper) == Paper.A4 ? "how-to-use-this-pack" : $"how-to-use-this-pack-{typed.GetValue(paper)}", Folder(typed), host));

        Add(new Command("schema", "write the JSON Schema of the flock file, for an editor that checks while you type"), _ =>
        {
            host.Out.Write(FlockSchema.Json());
            return ExitStatus.Clean;
        });

        root.Add(CompletionCommand.Describe(host));

        Add(new Command("version", "say which version this is"), _ =>
        {
            host.Out.WriteLine(Messages.Version);
            return ExitStatus.Clean;
        });

        var words = new Argument<string[]>("COMMAND") { Description = "what to say more about; all commands if you do not say", Arity = ArgumentArity.ZeroOrMore };
        Add(new Command("help", "say what a command does, and what may follow it") { words }, typed =>
        {
            var asked = typed.GetValue(words) ?? [];
            Command at = root;
            foreach (var word in asked)
            {
                at = at.Subcommands.FirstOrDefault(c => c.Name == word) ?? throw new UsageException(UsageComplaints.Unknown(word, at));
            }

            return Run([.. asked, "--help"], dropped: false, host);
        });
        return root;

        string Folder(ParseResult typed) => typed.GetValue(into) ?? ".";

        void Add(Command command, Func<ParseResult, int> run)
        {
            command.SetAction(run);
            root.Add(command);
        }

        void AddReport(Command command, Action<SeasonPlan, ParseResult> report) => Add(command, typed =>
        {
            if (FlockLoader.Plan(typed.GetRequiredValue(flock), typed.GetValue(asOf), forPaper: false, host).Plan is not { } plan)
            {
                return ExitStatus.FlockErrors;
            }

            report(plan, typed);
            return ExitStatus.Clean;
        });
    }

    public static Option<LocalDate?> Day(string name, string about) => new(name) { HelpName = "DATE", Description = about, CustomParser = TypedValues.Day };

    private static Argument<string[]> Several(string name, string about)
    {
        var several = new Argument<string[]>(name) { Description = about, Arity = ArgumentArity.OneOrMore };
        several.Validators.Add(UsageComplaints.RefuseOptionsAsFiles);
        return several;
    }

    private static void Explain(SeasonPlan plan, string thing, Host host)
    {
        try
        {
            new ReportWriter(host).Write(PackMaker.Explain(plan, thing));
        }
        catch (SeveralTagsException several) when (host.InIsTerminal)
        {
            if (WhichEwe.Ask(thing, several.Ewes, host) is { } ewe)
            {
                new ReportWriter(host).Write(PackMaker.Explain(plan, ewe.Tag));
            }
        }
    }

    /// <param name="saysNext">Say what to type next too: of many files nobody would read that.</param>
    private static FlockResult Check(string file, LocalDate? asOf, bool saysNext, Host host)
    {
        var planned = FlockLoader.Plan(file, asOf, forPaper: true, host);
        if (planned.Plan is not { } plan)
        {
            return new FlockResult(ExitStatus.FlockErrors);
        }

        host.Out.WriteLine($"{file}: {ScreenText.Summary(plan)}");
        host.Out.WriteLine(planned.Diagnostics.IsEmpty ? "nothing wrong found" : $"no errors, {ScreenText.Count(planned.Diagnostics.Length, "warning")}");
        if (saysNext)
        {
            host.Out.WriteLine(Messages.Next(Messages.Typed("pack", file)));
        }

        return new FlockResult(ExitStatus.Clean, plan, planned.Diagnostics.Length);
    }

    /// <summary>A leaf that belongs to no flock.</summary>
    private static int WriteLeaf(PackDocument leaf, string name, string folder, Host host)
    {
        var file = OutputFile.In(folder, name + PackPaths.Pdf, host);
        StagedFiles.Write(file, leaf.ToPdf(), host);
        PackCommand.Tell(leaf, file.Shown, host);
        return ExitStatus.Clean;
    }

    /// <summary>This program's version: the library's own way asks the process, which in a test is another program.</summary>
    private sealed class VersionAction(TextWriter output) : SynchronousCommandLineAction
    {
        public override bool ClearsParseErrors => true;

        public override int Invoke(ParseResult parseResult)
        {
            output.WriteLine(Messages.Version);
            return ExitStatus.Clean;
        }
    }
}
