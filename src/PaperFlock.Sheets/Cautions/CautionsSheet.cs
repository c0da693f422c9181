namespace PaperFlock.Sheets.Cautions;

/// <summary>What can hurt people and sheep, and who decides. No doses and no limits: labels, vets and local rules have those.</summary>
internal static class CautionsSheet
{
    public static readonly SheetDefinition Definition = new("cautions", "SAFE", SheetUse.Binder)
    {
        Lives = "binder",
        Purpose = "what can hurt people and sheep, and what only the vet decides",
        IsForSitter = true,
        Make = Make,
    };

    /// <summary>
    /// Pregnancy: advice of the Scottish Government and the UK Health Protection Agency for pregnant women at lambing. Copper: P. Rogers, Grange,
    /// and In Practice 1997, 19:503. Records: UK rules in general terms. The rest is common practice, no source.
    /// </summary>
    private static (string Title, string[] Words)[] Parts() =>
    [
        ("Anyone who is pregnant, may be, or has a weak immune system",
        [
            "Keep away from lambing ewes, new lambs, afterbirth, birth fluid, soiled bedding and aborted lambs, and from the boots and clothes of those who have been with them. Infections of sheep can cost an unborn child its life; ewes may look well.",
            "Fever or flu-like signs after being with sheep: ring a doctor, and say that you have been with lambing sheep. Some vaccines for sheep are a danger in pregnancy too: read the label.",
        ]),
        ("Everyone",
        [
            "Wash hands before eating, drinking, smoking or touching your face. Gloves for every lambing and every afterbirth. Cover cuts. Sores on a sheep\u2019s mouth or feet can be orf, which people catch: gloves, and show a doctor a sore that will not heal.",
            "A ewe that aborts: isolate her, keep everything for the vet, bare hands on nothing, tell the keeper.",
        ]),
        ("Lifting and casting",
        [
            "Do not lift a ewe alone. Do not turn over a ewe heavy in lamb; if a job says it must be done, two people, gently, for as short as can be. Tups are strong and come from behind: never turn your back on one.",
        ]),
        ("Medicines",
        [
            "Only what the vet has prescribed or the label allows, as the label says. Write down what, how much, which ewe, the batch, the day, and when her meat or milk may be used again. Keep the records as long as the law of your country says; five years satisfies most.",
            "Needles into a sharps bin. Anyone who injects himself goes to hospital at once, with the label.",
        ]),
        ("Copper and feed",
        [
            "Sheep die of copper that other stock need. Never feed them cattle, pig or poultry feed, minerals or buckets; no copper of any kind unless the vet has found they lack it.",
            "Change feed over days, not at once. Loose ewes must not get at the feed store.",
        ]),
        ("Only the vet decides",
        [
            "What is wrong with her; what to give her; when a lamb must be cut out; when it is kinder to stop. A sitter never waits for leave to ring.",
        ]),
        ("Local rules come first",
        [
            "Where this pack and the law, the vet, a label or a movement rule differ, this pack is wrong. It is a planning aid: it does not see the sheep. You do.",
        ]),
    ];

    private static ImmutableArray<Sheet> Make(SheetContext context)
    {
        var body = new Column(
            [
                .. Parts().Select(p => (Element)new KeepTogether(new Column(
                    [Block.Heading(p.Title), .. p.Words.Select(w => (Element)Block.Text(w, TypeScale.Body, leading: 1.3))], 3))),
            ],
            10);
        return [Binder.Upright(context, Definition, "Cautions", "Read once before you begin, and again before you are tired.", body)];
    }
}
