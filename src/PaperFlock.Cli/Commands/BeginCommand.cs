using System.CommandLine;
using System.Text;
using PaperFlock.Cli.Begin;
using PaperFlock.Flocks.Drafting;
using PaperFlock.Flocks.Reading;

namespace PaperFlock.Cli.Commands;

/// <summary>Writes a first flock file, from a few questions or from options alone.</summary>
internal static class BeginCommand
{
    /// <summary>Options that answer a question; texts as they are typed, still to be read.</summary>
    private static readonly (string Name, string Value, string About)[] Answers =
    [
        ("--name", "TEXT", "the name of the holding"),
        ("--keeper", "TEXT", "your name, for the sitter's sheet"),
        ("--place", "PLACE", "where it is: a grid reference such as \"NY 480 046\", or latitude and longitude such as \"54.46, -2.74\""),
        ("--time-zone", "ZONE", "such as Europe/London; worked out from the place if you do not say"),
        ("--tup-in", "DATE", "the day the tup goes in, such as 2026-11-05"),
        ("--lambing-from", "DATE", "or the day the first lambs are wanted, such as 2027-04-01"),
        ("--ewes", "N|LIST.csv", "how many ewes, or a list of them (CSV, as a spreadsheet saves it)"),
        (ListTables.Option, "COLUMN", ListTables.About),
        ("--paper", "A4|Letter", "the paper in the printer; what is usual in your country if you do not say"),
    ];

    public static Command Describe(Option<LocalDate?> asOf, Host host)
    {
        var file = new Argument<string?>("FILE.yaml") { Description = "where to write it; a name made from the holding's if you do not say", Arity = ArgumentArity.ZeroOrOne };
        var goodRows = new Option<bool>("--good-rows") { Description = "with a list: take the good rows even if others are refused" };
        var yes = new Option<bool>("--yes") { Description = "ask nothing: take the usual answer to whatever the options leave open" };
        var overwrite = new Option<bool>("--overwrite") { Description = "write over a file that is there already" };
        var from = new Option<string?>("--from") { HelpName = "THIS.yaml", Description = "last season's flock file: carry over what stays true of the flock, and leave behind what has been; goes with --tup-in" };
        var begin = new Command("begin", "write a first flock file: asks a few questions, each with a usual answer; or the next season's, from this one's") { file, from };
        foreach (var (name, value, about) in Answers)
        {
            begin.Add(new Option<string?>(name) { HelpName = value, Description = about });
        }

        Array.ForEach<Option>([goodRows, yes, overwrite, asOf], begin.Add);
        begin.SetAction(typed =>
        {
            string? Given(string option) => option == "--overwrite" ? null : typed.GetValue<string?>(option);
            var asker = new Asker(Given, typed.GetValue(yes), host);
            if (typed.GetValue(from) is { } last)
            {
                if (Answers.FirstOrDefault(a => a.Name != "--tup-in" && Given(a.Name) is not null) is { Name: not null } other)
                {
                    throw new UsageException($"--from takes the flock from last season's file: leave out {other.Name}, and change it in the new file");
                }

                var to = typed.GetValue(file) is { } name ? Named(name) : null;
                return new CarryOver(last, typed.GetValue(asOf) ?? Today(host), asker, host).Run(to, path => MayOverwrite(path, typed.GetValue(overwrite), asker, host));
            }

            var interview = new Interview(Given, typed.GetValue(goodRows), typed.GetValue(asOf) ?? Today(host), asker, host);
            return Run(typed.GetValue(file), typed.GetValue(overwrite), interview, asker, host);
        });
        return begin;
    }

    /// <param name="typed">Where to write, as typed; null for a name made from the holding's.</param>
    /// <exception cref="UsageException">An answer is none, or the file cannot be written or is there already.</exception>
    private static int Run(string? typed, bool overwrite, Interview interview, Asker asker, Host host)
    {
        var file = typed is null ? null : Named(typed);
        var mayOverwrite = file is not null && MayOverwrite(file, overwrite, asker, host);
        var draft = interview.Ask();
        if (file is null)
        {
            file = PackFileNames.FlockFile(draft.Name);
            mayOverwrite = MayOverwrite(file, overwrite, asker, host);
        }

        var bytes = Encoding.UTF8.GetBytes(FlockFileText.Of(draft, file));
        var reading = FlockReader.Read(file, bytes);
        if (reading.Flock is null)
        {
            throw new InvalidOperationException($"The file begun is wrong: {DiagnosticRenderer.Render(reading.Source, reading.Diagnostics)}");
        }

        StagedFiles.Write(new OutputFile(host.FullPath(file), file), bytes, host, mayOverwrite);
        host.Out.WriteLine();
        host.Out.WriteLine(
            $"wrote {file}: {ScreenText.Count(draft.Ewes.Length, "ewe")}, tup in {ScreenText.Day(draft.Start.TupIn)}, first lambs {ScreenText.Day(draft.Start.FirstLambs)}");
        host.WriteBelow(interview.Assumed);

        host.Out.WriteLine(Messages.Next(Messages.Typed("check", file), Messages.Typed("pack", file)));
        return interview.HasLeftOut ? ExitStatus.FlockErrors : ExitStatus.Clean;
    }

    private static string Named(string typed) => string.IsNullOrWhiteSpace(typed)
        ? throw new UsageException("the name of the file is empty: give one, or leave it out for a name made from the holding's")
        : Path.GetExtension(typed).ToUpperInvariant() switch
        {
            ".YAML" or ".YML" => typed,
            ".CSV" or ".TSV" or ".TXT" or ".XLSX" or ".XLS" or ".ODS" =>
                throw new UsageException($"{typed} is the name of a list, not of a flock file: {Messages.Program} begin --ewes {typed}"),
            _ => typed + ".yaml",
        };

    /// <exception cref="UsageException">It is there, and nobody says that it may go.</exception>
    private static bool MayOverwrite(string file, bool overwrite, Asker asker, Host host) =>
        overwrite || !File.Exists(host.FullPath(file)) ? overwrite
        : host.InIsTerminal && asker.Ask("--overwrite", $"There is a {file} already. Write over it? What is in it now is lost.", false, "no", YesOrNo) ? true
        : throw new UsageException($"{file} is there already, and nothing was written: give another name, or --overwrite to write over it");

    private static (bool Answer, string? WhyNot) YesOrNo(string text) => text.ToUpperInvariant() switch
    {
        "YES" or "Y" => (true, null),
        "NO" or "N" => (false, null),
        _ => (false, $"'{text}' is neither yes nor no"),
    };

    private static LocalDate Today(Host host) =>
        host.Today((host.HomeZone() is { } id ? DateTimeZoneProviders.Tzdb.GetZoneOrNull(id) : null) ?? DateTimeZone.Utc);
}
