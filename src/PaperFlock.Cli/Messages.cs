using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using NodaTime;
using NodaTime.Text;
using PaperFlock.Cli.Printing;
using PaperFlock.Pdf;
using PaperFlock.Planning;
using PaperFlock.Sheets;

namespace PaperFlock.Cli;

/// <summary>Every word the command line says. Plain English for somebody who keeps sheep and seldom types.</summary>
internal static class Messages
{
    public const string Program = "paperflock";

    // Help.
    public const string AboutProgram = "Turns one file about a small flock of ewes into a printed pack for the lambing season.";
    public const string AboutPack = "make the pack, a PDF to print";
    public const string AboutCheck = "read the flock file and say what is wrong with it, or that nothing is";
    public const string AboutDates = "show the dates of the jobs, and when each ewe is due";
    public const string AboutFigures = "write every figure of the plan as JSON";
    public const string AboutExplain = "say why the plan says what it says of a day, a job or a ewe";
    public const string ThingArgument = "DATE|JOB|EWE";
    public const string AboutThingArgument = "such as 2026-12-27, scan, Bracken or the end of a tag";
    public const string AboutCalendar = "write the jobs as a calendar file, for a telephone or another computer";
    public const string AboutTestPage = "make a page that shows what your printer does: scale, margins, both sides";
    public const string AboutGuide = "make a leaf that says how to use a pack, for whoever is handed one";
    public const string AboutSchema = "write the JSON Schema of the flock file, for an editor that checks while you type";
    public const string FlockArgument = "FLOCK.yaml";
    public const string AboutFlockArgument = "the file about your flock";
    public const string AboutFlocksArgument = "the file about your flock; or several of them, or a folder of them";
    public const string DateValue = "DATE";
    public const string AboutAsOf = "stands in for today, such as 2026-11-25";
    public const string FolderValue = "DIR";
    public const string AboutOut = "the folder to write into; this folder if you do not say";
    public const string SheetsValue = "a,b,…";
    public const string AboutFrom = "first day of a sitter's pack: only the leaves for those days";
    public const string AboutTo = "last day of a sitter's pack, included";
    public const string AboutSplit = "a PDF for each way of printing: binder, planner, pinned, cards, logs";
    public const string AboutChanged = "only leaves that say something else than those printed before, with a list of what to take out and put in";
    public const string AboutDryRun = "with --changed: says what would be printed and why, and writes nothing";
    public const string ChangedIsOfAll = "--changed is of the whole pack: leave out --sheets, --from and --to";
    public const string DryRunIsOfChanged = "--dry-run goes with --changed";
    public const string PaperValue = "A4|Letter";
    public const string AboutPaper = "the paper in the printer; A4 if you do not say";
    public const string AboutPng = "a picture of every page as well";

    public const string WhatNext =
        """
        PaperFlock turns one file about your flock into a printed pack for the lambing season.
        See it work:     paperflock pack flocks/hollin-bank.yaml
        Check your own:  paperflock check my-flock.yaml
        Everything else: paperflock --help
        """;

    /// <summary>Where the window closes with the program.</summary>
    public const string PressEnter = "Press Enter to close this window.";

    // Progress.
    public const string Composing = "laying out the sheets";

    // Trouble with the command line.
    public const string NoSheets = "--sheets wants the names of sheets, such as --sheets planner,cards";

    public const string FromMissing = "--to wants --from as well: the first day of the sitter's pack, such as --from 2026-12-27";

    public const string ToMissing = "--from wants --to as well: the last day of the sitter's pack, such as --to 2027-01-02";

    public const string NothingToPrint = "your flock gives those sheets nothing to say: nothing was written";

    // Trouble with files.
    public const string NoSuchFile = "there is no such file";
    public const string NoSuchFolder = "there is no such folder";
    public const string IsAFolder = "that is a folder";
    public const string IsAFolderThere = "that is a folder: give it another name, or write elsewhere";
    public const string LeadsNowhere = "that is a link to something that is not there";
    public const string ReadOnlyDisk = "that disk can be read only: write to another";
    public const string IsAFile = "that is a file, not a folder";
    public const string IsTheFlockFile = "that is your flock file";
    public const string NotAllowed = "this computer does not allow you to: see who may use it, or choose another place";
    public const string DiskFull = "the disk is full: make some room and try again";
    public const string PathTooLong = "the name is too long: choose a shorter one";
    public const string AnotherRun = "another run of this program has been writing there for half a minute: see whether it hangs, and try again when it has ended";
    public const string ChangedMeanwhile = "it has been changed by somebody else meanwhile; try again";
    public const string FolderIsGone = "the folder you are in is not there any more: go into another one and try again";
    public const string NotUtf8 = "it is not UTF-8 text";
    public const string UnnamedPack = "flock";
    public const string Stopped = "stopped; nothing was written";

    // What a check found.
    public const string NothingWrong = "nothing wrong found";

    // How to print.
    public const string ActualSize = "  at actual size (100 %), never \"fit to page\"; where there is a bar of 100 mm, lay a ruler on it";

    // Characters.
    public const string NoSuchCharacterAdvice = "the paper will show an empty box in its place: write it another way";

    // The heads of the tables of dates.
    public static readonly ImmutableArray<string> JobHeads = ["date", "job", "group", "any use", "why"];
    public static readonly ImmutableArray<string> GatheringHeads = ["date", "jobs"];
    public static readonly ImmutableArray<string> EweHeads = ["tag", "name", "likely", "9 in 10 between", "dated by"];

    private static readonly LocalDatePattern LongDay = LocalDatePattern.CreateWithInvariantCulture("ddd d MMM uuuu");

    public static string AboutSheets { get; } =
        $"print only some sheets, by name or by the code at their foot: {string.Join(", ", PackComposer.Kinds)}";

    public static string Version { get; } = $"{Program} {typeof(Messages).Assembly.GetName().Version?.ToString(3)}";

    // Dates.

    /// <summary>Such as "Mon 4 Jan 2027".</summary>
    public static string Day(LocalDate day) => LongDay.Format(day);

    /// <summary>Such as "Sat 24 Oct to Thu 29 Oct", with a line break for a blank before "to"; one day alone where both are the same.</summary>
    public static string Between(LocalDate first, LocalDate last) =>
        first == last ? DateText.Loose(first) : $"{DateText.Loose(first)}\nto {DateText.Loose(last)}";

    public static string DatesTitle(SeasonPlan plan) => $"{plan.Flock.Holding.Name}: jobs as planned on {Day(plan.AsOf)}";

    public static string Gatherings(int days) => $"The ewes are handled on {Count(days, "day")}";

    public static string EwesDue(int ewes) => $"{Count(ewes, "ewe")}, and when each is due";

    public static string JobDay(Job job) => job.Date is { } day ? Day(day) : "NO DAY";

    public static string Window(Job job) => job.IsFixed ? "that day" : Between(job.Earliest, job.Latest);

    // Trouble.

    public static string Complaint(string what) => $"{Program}: {what}";

    public static string TryHelp(Command command) =>
        $"Try: {Program} {(command is RootCommand ? string.Empty : Typed(command) + " ")}--help";

    /// <summary>A command as it is typed after the program's name, such as "enter scan".</summary>
    public static string Typed(Command command) =>
        command.Parents.OfType<Command>().FirstOrDefault(p => p is not RootCommand) is { } parent ? $"{Typed(parent)} {command.Name}" : command.Name;

    public static string NoSubcommand(string command, IEnumerable<string> words) => $"{command} wants one word more: {List(words, "or")}";

    public static string NoSuchCommand(string word, string? nearest) => $"there is no command '{word}'{DidYouMean(nearest)}";

    public static string NoSuchOption(string word, string? nearest) => $"there is no option '{word}'{DidYouMean(nearest)}";

    public static string NoSuchSheet(string word, string? nearest) =>
        nearest is null
            ? $"there is no sheet '{word}'; there are {List(PackComposer.Kinds)}"
            : $"there is no sheet '{word}'{DidYouMean(nearest)}";

    /// <param name="leaf">Such as "FEED-2".</param>
    /// <param name="code">What the codes of all its kind begin with.</param>
    public static string OneLeafOnly(string leaf, string code) => $"'{leaf}' is one leaf of several: --sheets {code} prints them all";

    public static string OneTooMany(string word) => $"'{word}' is one thing too many: name one flock file, and put quotes round a name with spaces in it";

    public static string NoFlockFile(string command) => $"{command} wants a flock file, such as: {Program} {command} flocks/hollin-bank.yaml";

    public static string NothingToExplain { get; } =
        $"explain wants a flock file and a day, a job or a ewe, such as: {Program} explain flocks/hollin-bank.yaml scan";

    public static string NoValue(string option) => $"{option} wants something after it";

    /// <param name="option">Such as "--as-of".</param>
    public static string NotADate(string text, string option) => $"'{text}' is no date: write it year first, such as {option} 2026-11-25";

    public static string DaysReversed(LocalDate from, LocalDate to) =>
        $"--from {Day(from)} comes after --to {Day(to)}: put the first day after --from";

    public static string NotPlanned(LocalDate day, SeasonPlan plan) =>
        $"the plan of this flock runs from {Day(plan.From)} to {Day(plan.To)}, and {Day(day)} is outside it: nothing was written";

    public static string NotOfSomeDays(IReadOnlyList<string> kinds) =>
        $"a pack for some days leaves out {List(kinds)}; it may hold {List(PackComposer.KindsForDays)}";

    public static string NoSuchPaper(string text) => $"there is no paper '{text}'; there are {List(Enum.GetNames<Flocks.Paper>())}";

    public static string WantsNoFile(string command, string word) => $"'{word}' is one thing too many: {command} wants no file";

    public static string CannotRead(string path, string reason) => $"cannot read {path}: {reason}";

    public static string CannotWrite(string path, string reason) => $"cannot write {path}: {reason}; what was there before is untouched";

    public static string CannotWriteInto(string folder, string reason) => $"cannot write into {folder}: {reason}";

    public static string CannotPutRight(string folder, string reason) =>
        $"a run of this program was cut short in {folder}, and the files it had half replaced cannot be put back: {reason}";

    /// <param name="name">A part of the path that is a file, though it would have to be a folder.</param>
    public static string FolderIsAFile(string name) => $"{name} is a file, not a folder";

    public static string CannotWriteOut(string reason) => $"cannot write the results out: {reason}";

    public static string NoFlockFilesIn(string folder) => $"there is no flock file in {folder}: their names end in .yaml";

    public static string NothingMatches(string pattern) => $"no file is called {pattern}";

    public static string SamePack(string first, string second, string pack) =>
        $"{first} and {second} would both be written to {pack}: give one of them another name; nothing was written";

    public static string DoesNotFit(string what) => $"something is too long for its place on the paper: {what}";

    public static string Fault(string place) =>
        $"this is a fault of the program, not of your flock file; please report it with the details in {place}";

    public static string FaultUnsaved(Exception fault) =>
        $"this is a fault of the program, not of your flock file; please report it: {fault.GetType().Name}, {fault.Message.ReplaceLineEndings(" ")}";

    public static string NoSuchCharacter(string character) => $"`{character}` is in none of the typefaces";

    // Results.

    /// <summary>Such as "hollin-bank.yaml: 24 ewes, 2 groups, first lambs due Mon 4 Jan 2027".</summary>
    public static string Found(string path, SeasonPlan plan)
    {
        var flock = plan.Flock;
        var due = plan.Dates.FirstDue is { } first ? $"first lambs due {Day(first)}" : "no lambs due";
        return $"{path}: {Count(flock.Ewes.Length, "ewe")}, {Count(flock.Groups.Length, "group")}, {due}";
    }

    public static string ManyPacked(int done, int failed) => $"{Count(done, "pack")} made, {failed} failed";

    public static string ManyChecked(int done, int failed) => $"{Count(done, "flock file")} without errors, {failed} failed";

    public static string StoppedEarly(int done, int flocks) => $"stopped: {done} of {Count(flocks, "flock")} done, and what was written for them stays";

    /// <summary>A line of the summary of many flocks.</summary>
    public static string Outcome(string file, int status) => $"  {file}: " + status switch
    {
        ExitStatus.Clean => "done",
        ExitStatus.FlockErrors => "there are errors in it",
        ExitStatus.WrongUse => "could not be read or written",
        _ => "failed by a fault of the program",
    };

    public static string NoErrors(int warnings) => $"no errors, {Count(warnings, "warning")}";

    public static string Printing(string file) => $"printing {file}";

    public static string Painting(string file) => $"painting {file}";

    public static string Wrote(string file, int pages, string paper) => $"wrote {file}: {Count(pages, "page")} on {paper}";

    public static string WrotePictures(string folder, int pages) => $"wrote {Count(pages, "picture")} into {folder}";

    public static string WroteCalendar(string file, SeasonPlan plan)
    {
        var wrote = $"wrote {file}: {Count(plan.Jobs.Length, "job")}";
        var unplaced = plan.Jobs.Count(j => j.Date is null);
        return unplaced == 0 ? wrote : $"{wrote}, {unplaced} of them without a day: marked, and put where they would best be done";
    }

    /// <summary>Such as "12 sheets of A4 card".</summary>
    public static string Leaves(int leaves, Stock stock) => $"{Count(leaves, "sheet")} of {Name(stock)}";

    public static string ToPrint(string file) => $"To print {file}:";

    /// <summary>Pages that are all backs belong on paper that has been through the printer.</summary>
    public const string OnTheFronts = "  on the backs of the fronts: put them into the tray again as they came out, first sheet first, and try one sheet before the rest";

    public static string Sides(DuplexHint duplex) => duplex switch
    {
        DuplexHint.Simplex => "  on one side of the paper",
        DuplexHint.ShortEdge => "  on both sides, flip on short edge",
        _ => "  on both sides, flip on long edge",
    };

    /// <summary>A line for each run of pages; pages for one tray need no numbers.</summary>
    public static IEnumerable<string> PagesOnPaper(IReadOnlyList<PaperRun> runs) =>
        runs.Count == 1
            ? [$"  on {Name(runs[0].Stock)}"]
            : runs.Select(r => $"  {(r.First == r.Last ? Invariant($"page {r.First}") : Invariant($"pages {r.First} to {r.Last}"))} on {Name(r.Stock)}");

    /// <summary>Why a ewe has no due date.</summary>
    public static string NotDue(Standing standing) => standing switch
    {
        Standing.Empty => "empty",
        Standing.LeftOut => "left out of the tup",
        Standing.Lambed => "lambed",
        _ => "not known",
    };

    // Small words.

    public static string Count(int number, string noun) => Invariant($"{number} {noun}{(number == 1 ? string.Empty : "s")}");

    /// <summary>Such as "a, b and c".</summary>
    public static string List(IEnumerable<string> things, string and = "and") => English.List([.. things], and);

    private static string Name(Stock stock) => stock.IsCard ? $"{stock.Paper} card" : stock.Paper;

    private static string DidYouMean(string? nearest) => nearest is null ? string.Empty : $"; did you mean '{nearest}'?";

    private static string Invariant(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
