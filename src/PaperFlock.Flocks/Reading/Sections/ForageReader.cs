namespace PaperFlock.Flocks.Reading.Sections;

/// <summary>Forage, with a usual analysis for each kind where the keeper has none of her own. Hay alone runs from 6 to 9.7 MJ/kg between sources.</summary>
internal static class ForageReader
{
    /// <param name="mostDryMatter">A ewe may eat of everything, of her weight.</param>
    public static Forage Read(Section forage, decimal mostDryMatter)
    {
        var kind = forage.Find("kind")?.AsChoice<ForageKind>() ?? ForageKind.Hay;
        var usual = Usual(kind);
        if (kind == ForageKind.Grass)
        {
            forage.RefuseGiven("for grass", "take it out, or write `kind: hay`", "bale");
        }

        var intake = forage.Find("intake")?.AsQuantity();
        forage.Bag.Add(intake > mostDryMatter ? FlockMessages.IntakeOverMost(forage.Find("intake")!.Span, intake.Value, mostDryMatter) : null);
        var likely = Likely(kind);
        return new Forage(
            kind,
            Within(forage.Find("energy"), kind, likely.Energy, 1, " MJ/kg") ?? usual.Energy,
            Within(forage.Find("protein"), kind, likely.Protein, 1, " g/kg") ?? usual.Protein,
            Within(forage.Find("dry-matter"), kind, likely.DryMatter, 100, " %") ?? usual.DryMatter,
            forage.Find("bale")?.AsMass() ?? usual.Bale,
            forage.Find("ad-lib")?.AsFlag() ?? true,
            intake,
            // Published worked examples hold forage intake fixed: Hybu Cig Cymru; Vet Times, 27 November 2017.
            forage.Find("substitution")?.AsNumber() ?? 0);
    }

    /// <param name="scale">From what is kept to what is written.</param>
    private static decimal? Within(Field? field, ForageKind kind, (decimal Least, decimal Most) likely, int scale, string unit)
    {
        var value = field?.AsQuantity();
        field?.Bag.Add(value < likely.Least || value > likely.Most
            ? FlockMessages.FeedUnlikely(field, kind.ToString().ToLowerInvariant(), $"{NumberValues.Format(likely.Least * scale)} to {NumberValues.Format(likely.Most * scale)}{unit}")
            : null);
        return value;
    }

    /// <summary>
    /// Wide of every analysis of its kind, grass from the lushest to what stands dead in a drought: what lies outside is of another kind, or a slip.
    /// Common knowledge of the trade, no source.
    /// </summary>
    private static ((decimal Least, decimal Most) Energy, (decimal Least, decimal Most) Protein, (decimal Least, decimal Most) DryMatter) Likely(ForageKind kind) => kind switch
    {
        ForageKind.Hay => ((5, 12), (30, 250), (0.7m, 1)),
        ForageKind.Haylage => ((6, 12.5m), (40, 250), (0.35m, 0.85m)),
        ForageKind.Silage => ((6, 13), (40, 260), (0.12m, 0.6m)),
        ForageKind.Straw => ((4, 9.5m), (15, 130), (0.7m, 1)),
        _ => ((4, 14), (20, 350), (0.08m, 1)),
    };

    /// <summary>Bales other than of hay differ too much in size for a usual weight: those forages are given in kilograms until the file says.</summary>
    private static (decimal Energy, decimal Protein, decimal DryMatter, Mass? Bale) Usual(ForageKind kind) => kind switch
    {
        // The format's own figures; near the average UK grass hay of MAFF, UK Tables of Nutritive Value, 1990 (8.8 MJ, 100 to 110 g, from memory).
        ForageKind.Hay => (8.8m, 90, 0.85m, new Mass(20)),
        // Trial feeds of PMC8697880 (Animals 2021), table 2.
        ForageKind.Haylage => (9.7m, 111, 0.627m, null),
        // Average UK grass silage, 140 to 170 g of protein; from memory: MAFF 1990.
        ForageKind.Silage => (10.9m, 155, 0.25m, null),
        // UK barley straw; from memory: MAFF 1990.
        ForageKind.Straw => (6.5m, 40, 0.86m, null),
        // Average fresh UK grass; from memory: MAFF 1990.
        ForageKind.Grass => (11.2m, 156, 0.20m, null),
        _ => throw new ArgumentOutOfRangeException(nameof(kind)),
    };
}
