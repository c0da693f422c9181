using System.Text;
using NodaTime;
using PaperFlock.Cli.Begin;
using PaperFlock.Cli.Files;
using PaperFlock.Cli.Wiring;
using PaperFlock.Diagnostics;

namespace PaperFlock.Cli.Commands;

/// <summary>Writes a first flock file, from a few questions or from options alone.</summary>
internal static class BeginCommand
{
    private const string Ending = ".yaml";

    /// <param name="asOf">Null for today where this computer is.</param>
    /// <exception cref="UsageException">An answer is none, or the file cannot be written or is there already.</exception>
    public static int Run(BeginOptions options, LocalDate? asOf, Host host, ILine line)
    {
        var asker = new Asker(host, options.Yes);
        var file = options.File is { } typed ? Named(typed) : null;
        var mayOverwrite = file is not null && MayOverwrite(file, options, host, asker);
        var interview = new Interview(options, asOf ?? Today(host), asker, host, line);
        var draft = interview.Ask();
        if (file is null)
        {
            file = NameOf(draft.Name);
            mayOverwrite = MayOverwrite(file, options, host, asker);
        }

        var bytes = Encoding.UTF8.GetBytes(FlockFileText.Of(draft, file));
        var reading = line.Read(file, bytes);
        if (reading.Flock is null)
        {
            throw new InvalidOperationException($"The file begun is wrong: {DiagnosticRenderer.Render(reading.Source, reading.Diagnostics)}");
        }

        host.Stop.ThrowIfCancellationRequested();
        using var staged = new StagedFiles();
        staged.Add(host.FullPath(file), file, bytes, mayOverwrite);
        staged.PutInPlace(host.Stop);

        host.Out.WriteLine();
        host.Out.WriteLine(BeginMessages.Wrote(file, draft));
        foreach (var sentence in interview.Assumed)
        {
            host.Out.WriteLine($"  {sentence}");
        }

        host.Out.WriteLine(BeginMessages.Next(file));
        return interview.HasLeftOut ? ExitStatus.FlockErrors : ExitStatus.Clean;
    }

    private static string Named(string typed) => Path.GetExtension(typed).ToUpperInvariant() switch
    {
        ".YAML" or ".YML" => typed,
        ".CSV" or ".TSV" or ".TXT" or ".XLSX" or ".XLS" or ".ODS" => throw new UsageException(BeginMessages.IsAList(typed)),
        _ => typed + Ending,
    };

    /// <summary>Lower case, words joined by hyphens: a name every disk takes.</summary>
    private static string NameOf(string holding)
    {
        var plain = string.Concat(holding.Select(c => char.IsAsciiLetterOrDigit(c) ? char.ToLowerInvariant(c) : ' '));
        var name = string.Join('-', plain.Split(' ', StringSplitOptions.RemoveEmptyEntries));
        return (name.Length == 0 ? Messages.UnnamedPack : name) + Ending;
    }

    /// <exception cref="UsageException">It is there, and nobody says that it may go.</exception>
    private static bool MayOverwrite(string file, BeginOptions options, Host host, Asker asker)
    {
        if (options.Overwrite || !File.Exists(host.FullPath(file)))
        {
            return options.Overwrite;
        }

        return host.InIsTerminal && asker.Ask(new Question<bool>("--overwrite", null, BeginMessages.AskOverwrite(file), false, "no", YesOrNo))
            ? true
            : throw new UsageException(BeginMessages.IsThere(file));
    }

    private static (bool Answer, string? WhyNot) YesOrNo(string text) => text.ToUpperInvariant() switch
    {
        "YES" or "Y" => (true, null),
        "NO" or "N" => (false, null),
        _ => (false, BeginMessages.NotYesOrNo(text)),
    };

    private static LocalDate Today(Host host)
    {
        var zone = host.HomeZone() is { } id ? DateTimeZoneProviders.Tzdb.GetZoneOrNull(id) : null;
        return host.Clock.GetCurrentInstant().InZone(zone ?? DateTimeZone.Utc).Date;
    }
}
