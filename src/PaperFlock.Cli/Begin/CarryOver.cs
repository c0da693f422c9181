using PaperFlock.Cli.Commands;
using PaperFlock.Flocks.Drafting;
using PaperFlock.Planning;

namespace PaperFlock.Cli.Begin;

/// <summary>Begins a season from the flock file of the one before.</summary>
internal sealed class CarryOver(string from, LocalDate today, Asker asker, Host host)
{
    /// <param name="file">Where to write, as typed; null for a name made from that of the old file.</param>
    /// <param name="mayOverwrite">Whether a file of that name may be replaced, if there is one; throws where nobody says so.</param>
    /// <returns>One of <see cref="ExitStatus"/>.</returns>
    /// <exception cref="UsageException">The day is none, or the old file would be written over.</exception>
    public int Run(string? file, Func<string, bool> mayOverwrite)
    {
        var lastFile = FlockFile.Open(from, InputFile.Read(from, host), out var reading, _ => today);
        var planned = PackMaker.Plan(reading, today, forPaper: false);
        if (planned.Plan is not { } last || lastFile is null)
        {
            DiagnosticsOut.Write(planned.Source, planned.Diagnostics, host);
            return ExitStatus.FlockErrors;
        }

        if (last.Flock.Ewes.All(e => e.Gone is not null))
        {
            throw new UsageException($"no ewe of {from} is still there: begin a new flock with {Messages.Program} begin");
        }

        var tupIn = TupIn(last.Flock);
        asker.ThrowIfWrong();
        file ??= SeasonAfter.FileName(from, tupIn);
        if (string.Equals(host.FullPath(file), host.FullPath(from), StringComparison.OrdinalIgnoreCase))
        {
            throw new UsageException($"{file} is last season's own file, and stays as it is: give the next one another name, such as {SeasonAfter.FileName(from, tupIn)}");
        }

        var overwrite = mayOverwrite(file);
        var next = NextSeason.After(lastFile, Path.GetFileName(from), tupIn);
        if (next.Edit.File is not { } made)
        {
            DiagnosticsOut.Write(next.Edit.Source, next.Edit.Diagnostics, host);
            host.Error.WriteLine(Messages.Complaint($"the next season would begin with these errors, so nothing was written: put them right in {from} first"));
            return ExitStatus.FlockErrors;
        }

        StagedFiles.Write(new OutputFile(host.FullPath(file), file), made.ToBytes(), host, overwrite);
        Say(file, next, last, made.Flock);
        return ExitStatus.Clean;
    }

    private LocalDate TupIn(Flock last)
    {
        var usual = new SeasonStart(SeasonAfter.UsualTupIn(last), IsLambing: false);
        return asker.Ask("--tup-in", "On which day does the tup go in? Type a date, such as 2027-11-05.", usual, LocalDatePattern.Iso.Format(usual.TupIn), text => Interview.Season(text, isLambing: false) switch
        {
            ({ } start, null) when SeasonAfter.WhyNot(last, start.TupIn) is { } whyNot => (null, whyNot),
            var read => read,
        }).TupIn;
    }

    private void Say(string file, NextSeason next, SeasonPlan last, Flock flock)
    {
        host.Out.WriteLine($"wrote {file}: {ScreenText.Count(flock.Ewes.Length, "ewe")}, tup in {ScreenText.Day(flock.Season.TupIn)}; the dates of all tups have moved by {ScreenText.Count(next.Days, "day")}");
        host.Out.WriteLine(next.HasRemarks
            ? "  what you wrote behind # is still there, and so are the notes: look for what was of last season"
            : $"  what you wrote behind # could not be kept, the way {from} is laid out; the notes are still there: look for what was of last season");
        foreach (var said in CarriedOver.Of(next, last))
        {
            host.Out.WriteLine();
            host.Out.WriteLine(said.Heading);
            host.WriteBelow(said.Lines);
        }

        host.Out.WriteLine();
        host.Out.WriteLine(Messages.Next($"{Messages.Typed("add ewes", file)} {AddEwesCommand.ListArgument} for ewes you have bought or kept", Messages.Typed("check", file)));
    }
}
