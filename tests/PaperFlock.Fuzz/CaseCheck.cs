using NodaTime;
using PaperFlock.Diagnostics;
using PaperFlock.Flocks.Reading;
using PaperFlock.Packs;
using PaperFlock.Packs.Screen;

namespace PaperFlock.Fuzz;

/// <summary>What one case cost, and what was wrong with the answer.</summary>
/// <param name="Took">Time on the processor, so that a busy machine is not taken for a slow reader.</param>
/// <param name="Allocated">Bytes asked for in all, most of them given back on the way.</param>
/// <param name="Fault">Null when all is well.</param>
internal sealed record CaseResult(TimeSpan Took, long Allocated, bool Accepted, string? Fault);

/// <summary>Reads one case and draws what was found, as the program does.</summary>
internal static class CaseCheck
{
    private static readonly LocalDate Today = new(2027, 6, 20);

    public static readonly TimeSpan Longest = TimeSpan.FromSeconds(2);

    /// <summary>What lists are added to, and a damaged record is compared with.</summary>
    public static OpenFlock Open { get; } = new(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "flocks", "smallest.yaml")), "smallest.yaml", "2026-08-01");

    public static CaseResult Run(CaseKind kind, byte[] bytes)
    {
        var before = GC.GetAllocatedBytesForCurrentThread();
        var start = Environment.CpuUsage.TotalTime;
        FlockReading? reading = null;
        string? fault = null;
        var taken = false;
        try
        {
            switch (kind)
            {
                case CaseKind.Pdf:
                    EarlierIssue.None.ComparedWith(Open.Plan, new EarlierFile("smallest.pdf", bytes));
                    taken = true;
                    break;
                case CaseKind.List:
                    var list = ScreenPaste.Open(bytes, "list.csv")["text"]!.GetValue<string>();
                    taken = ScreenPaste.Read(Open.Text, Open.Name, list, -1, -1)["text"] is not null;
                    break;
                default:
                    reading = Read(kind, bytes);
                    taken = reading.Flock is not null;
                    break;
            }
        }
        catch (PackRequestException)
        {
            // A sentence for the keeper: that is how such files are refused.
        }
#pragma warning disable CA1031 // Any exception at all is what is looked for.
        catch (Exception thrown)
#pragma warning restore CA1031
        {
            fault = thrown.ToString();
        }

        var took = Environment.CpuUsage.TotalTime - start;
        var allocated = GC.GetAllocatedBytesForCurrentThread() - before;
        fault ??= took > Longest ? $"took {took.TotalSeconds:0.00} s" : reading is null ? null : Wrong(kind, reading);
        return new CaseResult(took, allocated, taken, fault);
    }

    private static FlockReading Read(CaseKind kind, byte[] bytes)
    {
        // A valid flock may be of any year, and has no day of its own.
        var reading = FlockReader.Read("flock.yaml", bytes, kind == CaseKind.Valid ? null : _ => Today);
        reading = reading with { Diagnostics = [.. reading.Diagnostics, .. reading.MissingCharacters((text, _) => text.Length > 0 ? text[^1..] : null)] };
        DiagnosticRenderer.Render(reading.Source, reading.Diagnostics);
        return reading;
    }

    private static string? Wrong(CaseKind kind, FlockReading reading)
    {
        var errors = reading.Diagnostics.Count(d => d.Severity == Severity.Error);
        if ((reading.Flock is null) != (errors > 0))
        {
            return reading.Flock is null ? "no flock, and no error to say why" : "a flock in spite of an error";
        }

        if (kind == CaseKind.Valid && errors > 0)
        {
            return $"a valid flock refused: {reading.Diagnostics.First(d => d.Severity == Severity.Error).Message}";
        }

        var astray = reading.Diagnostics.FirstOrDefault(d => !IsInside(d.Span, reading.Source));
        return astray is null ? null : $"{astray.Code} stands outside the file, at {astray.Span}";
    }

    /// <summary>The place after the last character counts: something missing is missing there.</summary>
    private static bool IsInside(SourceSpan span, SourceText source) =>
        span.IsWholeFile
        || (span.Line <= source.LineCount && span.Column >= 1 && span.Length >= 1 && span.Column <= source.Line(span.Line).Length + 1);
}
