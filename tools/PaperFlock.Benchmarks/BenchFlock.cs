using System.Globalization;
using System.Text;
using NodaTime;
using PaperFlock.Flocks;
using PaperFlock.Flocks.Reading;

namespace PaperFlock.Benchmarks;

/// <summary>Flocks of any size, the same for the same number: three groups, every ewe with a name, a weight, a mark and a scan.</summary>
internal static class BenchFlock
{
    public static readonly LocalDate AsOf = new(2026, 11, 25);

    /// <summary>The flock file as it would lie on the disk.</summary>
    public static byte[] File(int ewes)
    {
        var text = new StringBuilder(
            """
            paperflock: 1
            holding: {name: Hollin Bank, keeper: Nell Ashworth, location: {latitude: 54.46, longitude: -2.74}, time-zone: Europe/London}
            season: {tup-in: 2026-10-12}
            groups:
              - {name: A, tup: Oak}
              - {name: B, tup: Ash}
              - {name: C, tup: Elm}
            keeper-days: {free: [saturday, sunday], away: [{from: 2027-02-20, to: 2027-02-27, sitter: Jo Finch}]}
            ewes:

            """.ReplaceLineEndings("\n"));
        for (var i = 0; i < ewes; i++)
        {
            // Strides without a common factor with their ranges: neighbours differ, and the whole flock is spread evenly.
            var marked = new LocalDate(2026, 10, 13).PlusDays(i * 17 % 41);
            text.Append(
                CultureInfo.InvariantCulture,
                $"  - {{tag: ZZ 0123456 {i:00000}, name: Ewe {i}, group: {"ABC"[i % 3]}, weight: {58 + (i * 7 % 27)} kg, marks: [{marked:uuuu-MM-dd}], scan: {i * 5 % 4}}}\n");
        }

        return Encoding.UTF8.GetBytes(text.ToString());
    }

    public static Flock Read(byte[] file) =>
        FlockReader.Read("bench.yaml", file).Flock ?? throw new InvalidOperationException("the flock for benchmarks has something wrong with it");
}
