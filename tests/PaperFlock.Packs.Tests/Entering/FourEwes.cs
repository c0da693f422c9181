using PaperFlock.Diagnostics;
using PaperFlock.Flocks;
using PaperFlock.Flocks.Reading;

namespace PaperFlock.Packs.Tests.Entering;

/// <summary>A flock with two tups and a keeper who comments, and what the program makes of answers about it.</summary>
internal static class FourEwes
{
    public const string File = "flock.yaml";

    public const string Text =
        """
        # our flock
        paperflock: 1
        holding: {name: Hollin Bank, location: {latitude: 54.46, longitude: -2.74}, time-zone: Europe/London}
        season: {tup-in: 2026-08-10}
        groups:
          - {name: Orchard, tup-out: 2026-09-21, raddle: [yellow, orange, blue]}
          - {name: Paddock, tup-in: 2026-08-24, tup-out: 2026-09-10, raddle: [red]}
        ewes:
          - tag: ZZ 0123456 00103
            group: Orchard
            name: Sorrel      # the bold one

          # bought in
          - {tag: ZZ 0123456 00101, name: Bracken, group: Paddock}
          - tag: ZZ 0123456 00102
            name: Campion
            group: Orchard
            marks: [2026-08-12]
            note: Quiet
          - tag: ZZ 0123456 00104
            group: Orchard
        """;

    /// <summary>What is left of a changed text when the lines of the first are taken out of it, and the other way round: "- gone" and "+ come".</summary>
    public static string Difference(string before, string after)
    {
        var (a, b) = (before.Split('\n').ToList(), after.Split('\n').ToList());
        return string.Join('\n', Without(a, b).Select(l => $"- {l.Trim()}").Concat(Without(b, a).Select(l => $"+ {l.Trim()}")));
    }

    public static string After(Workbench bench) => System.IO.File.ReadAllText(bench.PathOf(File));

    public static Flock Read(Workbench bench)
    {
        var reading = FlockReader.Read(File, System.IO.File.ReadAllBytes(bench.PathOf(File)));
        Assert.Equal("", DiagnosticRenderer.Render(reading.Source, [.. reading.Diagnostics.Where(d => d.Severity == Severity.Error)]));
        return reading.Flock!;
    }

    private static List<string> Without(List<string> lines, List<string> others)
    {
        var left = lines.ToList();
        foreach (var other in others)
        {
            left.Remove(other);
        }

        return left;
    }
}
