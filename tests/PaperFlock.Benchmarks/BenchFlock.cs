using System.Text;
using NodaTime;
using PaperFlock.Flocks;
using PaperFlock.Flocks.Reading;

namespace PaperFlock.Benchmarks;

/// <summary>Flocks of any size, the same for the same numbers: every ewe with a name, a weight, a mark and a scan.</summary>
internal static class BenchFlock
{
    public static readonly LocalDate AsOf = new(2026, 11, 25);

    private static readonly string[] Trees = ["Oak", "Ash", "Elm"];

    /// <summary>The flock file as it would lie on the disk.</summary>
    /// <param name="groups">At least 1.</param>
    /// <param name="jobs">The keeper's own, each on a day.</param>
    public static byte[] File(int ewes, int groups = 3, int jobs = 0)
    {
        var text = new StringBuilder(
            """
            paperflock: 1
            holding: {name: Hollin Bank, keeper: Nell Ashworth, location: {latitude: 54.46, longitude: -2.74}, time-zone: Europe/London}
            season: {tup-in: 2026-08-24}
            groups:

            """.ReplaceLineEndings("\n"));
        for (var i = 0; i < groups; i++)
        {
            Line($"  - {{name: {GroupName(i)}, tup: {(i < Trees.Length ? Trees[i] : $"Tup {i + 1}")}}}");
        }

        Line($"keeper-days: {{free: [saturday, sunday], away: [{{from: 2027-01-02, to: 2027-01-09, sitter: Jo Finch}}]}}");
        for (var i = 0; i < jobs; i++)
        {
            Line($"{(i == 0 ? "jobs:\n" : "")}  - {{title: Own job {i + 1}, on: {AsOf.PlusDays(1 + (i * 17 % 89)):uuuu-MM-dd}}}");
        }

        Line($"ewes:");
        for (var i = 0; i < ewes; i++)
        {
            // Strides without a common factor with their ranges: neighbours differ, and the whole flock is spread evenly.
            var marked = new LocalDate(2026, 8, 25).PlusDays(i * 17 % 41);
            Line($"  - {{tag: ZZ 0123456 {i:00000}, name: Ewe {i}, group: {GroupName(i % groups)}, weight: {58 + (i * 7 % 27)} kg, marks: [{marked:uuuu-MM-dd}], scan: {i * 5 % 4}}}");
        }

        return Encoding.UTF8.GetBytes(text.ToString());

        void Line(FormattableString line) => text.Append(line.ToString(CultureInfo.InvariantCulture)).Append('\n');
    }

    /// <summary>A to Z, then AA to ZZ.</summary>
    private static string GroupName(int index) => new((char)('A' + (index % 26)), 1 + (index / 26));

    public static Flock Read(byte[] file) =>
        FlockReader.Read("bench.yaml", file).Flock ?? throw new InvalidOperationException("the flock for benchmarks has something wrong with it");
}
