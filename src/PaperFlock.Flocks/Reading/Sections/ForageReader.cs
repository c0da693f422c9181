using PaperFlock.Flocks.Reading.Values;

namespace PaperFlock.Flocks.Reading.Sections;

/// <summary>Forage, with a usual analysis for each kind where the keeper has none of her own. Hay alone runs from 6 to 9.7 MJ/kg between sources.</summary>
internal static class ForageReader
{
    public static Forage Read(Section forage)
    {
        var kind = forage.Find("kind")?.AsChoice<ForageKind>() ?? ForageKind.Hay;
        var usual = Usual(kind);
        if (kind == ForageKind.Grass && forage.Find("bale") is { } bale)
        {
            forage.Bag.Add(FlockMessages.DoesNotApply(bale.KeySpan, "bale", "for grass", "take it out, or write `kind: hay`"));
        }

        return new Forage(
            kind,
            forage.Find("energy")?.AsQuantity() ?? usual.Energy,
            forage.Find("protein")?.AsQuantity() ?? usual.Protein,
            forage.Find("dry-matter")?.AsQuantity() ?? usual.DryMatter,
            forage.Find("bale")?.AsMass() ?? usual.Bale,
            forage.Find("ad-lib")?.AsFlag() ?? true,
            forage.Find("intake")?.AsQuantity(),
            // Published worked examples hold forage intake fixed: Hybu Cig Cymru; Vet Times, 27 November 2017.
            forage.Find("substitution")?.AsNumber() ?? 0);
    }

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
