using System.Collections.Concurrent;
using NodaTime;
using PaperFlock.Diagnostics;
using PaperFlock.Flocks.Reading;
using PaperFlock.Pdf;
using PaperFlock.Planning;
using PaperFlock.Sheets.Tests.PaperRules;

namespace PaperFlock.Sheets.Tests;

/// <summary>A flock file taken all the way to pages, with the fonts the printer embeds.</summary>
internal sealed record Composed(SeasonPlan Plan, ComposedPack Pack)
{
    private static readonly ConcurrentDictionary<(string, LocalDate), Lazy<Composed>> Made = new();

    public static readonly LocalDate HollinBankDay = new(2026, 11, 25);
    public static readonly LocalDate KanukaFlatDay = new(2027, 6, 20);

    public static Composed HollinBank => Sample("hollin-bank", HollinBankDay);

    public static Composed KanukaFlat => Sample("kanuka-flat", KanukaFlatDay);

    public static Composed Sample(string name, LocalDate asOf) => Of(SampleText(name), asOf);

    public static string SampleText(string name) => File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "flocks", name + ".yaml"));

    /// <summary>With the ink its pages say is on them.</summary>
    public PackInHand InHand => PackInHand.Of(Plan, Pack, (_, side) => PageInk.AsPrinted(side.Page));

    public static implicit operator PackInHand(Composed composed) => composed.InHand;

    /// <summary>The same text and day are composed once for all tests.</summary>
    public static Composed Of(string yaml, LocalDate asOf) =>
        Made.GetOrAdd((yaml, asOf), key => new Lazy<Composed>(() => Fresh(key.Item1, key.Item2))).Value;

    /// <summary>Composed anew and not kept.</summary>
    public static Composed Fresh(string yaml, LocalDate asOf)
    {
        var plan = PlanOf(yaml, asOf);
        return new Composed(plan, PackComposer.Compose(plan, FontLibrary.Measurer, PackRequest.Everything));
    }

    public static SeasonPlan PlanOf(string yaml, LocalDate asOf)
    {
        var reading = FlockReader.Read(new SourceText("flock.yaml", yaml));
        var errors = reading.Diagnostics.Where(d => d.Severity == Severity.Error).Select(d => d.ToString()).ToArray();
        Assert.True(reading.Flock is not null, string.Join("\n", errors));
        return SeasonPlanner.Plan(reading.Flock!, asOf);
    }
}
