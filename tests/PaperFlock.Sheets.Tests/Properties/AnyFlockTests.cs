using CsCheck;
using NodaTime;
using PaperFlock.Sheets.Tests.PaperRules;
using PaperFlock.Sheets.Tests.WorstCases;

namespace PaperFlock.Sheets.Tests.Properties;

public sealed class AnyFlockTests
{
    private static readonly string[] Names = ["Bracken", "Ŵyna", "Old Mother Blackberry of the Upper Field", "W", "Þrúður Ægisdóttir"];

    private static readonly Gen<string> EweKeys = Gen.Select(
        Gen.Int[-1, 5], Gen.Int[0, 120], Gen.Int[0, 4], Gen.Int[0, 240], Gen.Bool,
        (scan, weight, group, note, lambed) => string.Join(", ", new[]
        {
            $"group: G{group}",
            scan >= 0 ? $"scan: {scan}" : null,
            weight >= 40 ? $"weight: {weight} kg" : null,
            note > 120 ? $"note: \"{string.Concat(Enumerable.Repeat("watch her ", 24))[..(note - 121)]}x\"" : null,
            lambed && scan > 0 ? "lambed: 2027-01-20" : null,
        }.OfType<string>()));

    private static readonly Gen<FlockText> Flocks = Gen.Select(
        EweKeys.Array[1, 20], Gen.Int[0, 5], Gen.Int[1, 12], Gen.Int[1, 12], Gen.Bool, Gen.Int[0, 3], Gen.Int[0, 59],
        (ewes, away, normal, heavy, gloves, pens, print) => new FlockText
        {
            Groups = [.. Enumerable.Range(0, 5).Select(i => $"{{name: G{i}, tup-in: 2026-08-{10 + i}, tup-out: 2026-09-21}}")],
            Ewes = ewes.Select((e, i) => FlockText.Ewe(i + 1, e, i % 6 == 5 ? null : Names[i % 5])),
            Away = away == 0 ? [] : [$"{{from: 2026-12-{10 + away}, to: 2026-12-{10 + (2 * away)}}}"],
            Practice = $"checks-per-day: {{normal: {normal}, heavy: {heavy}}}",
            Pens = [.. Enumerable.Range(1, pens).Select(i => $"{{name: Bay {i}, length: {2 + i} m, width: 3 m}}")],
            Print = $"gloves: {(gloves ? "true" : "false")}\npaper: {(print % 2 == 0 ? "A4" : "Letter")}\nplanner: {(print % 3) switch { 0 => "A3", 1 => "A2", _ => "A4" }}\nduplex: {(print % 5) switch { 0 => "short-edge", 1 => "single-sided", _ => "long-edge" }}\nunits: {(print % 4 == 0 ? "both" : "metric")}",
        });

    [Fact]
    public void Any_flock_that_reads_makes_a_pack_with_a_card_for_every_ewe() =>
        Gen.Select(Flocks, Gen.Int[0, 320]).Sample((flock, day) =>
        {
            var composed = flock.On(new LocalDate(2026, 6, 1).PlusDays(day));
            Assert.Empty(Cards.NotOneEach(composed));
            PaperCheck.Keeps(composed);
        }, iter: 25, threads: 2);
}
