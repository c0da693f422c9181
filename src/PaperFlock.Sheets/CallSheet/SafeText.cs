namespace PaperFlock.Sheets.CallSheet;

/// <summary>What can hurt people and sheep, and who decides. No doses and no limits: labels, vets and local rules have those.</summary>
internal static class SafeText
{
    /// <summary>
    /// Pregnancy: advice of the Scottish Government and the UK Health Protection Agency for pregnant women at lambing. Copper: P. Rogers, Grange,
    /// and In Practice 1997, 19:503. Records: UK rules in general terms. The rest is common practice, no source.
    /// </summary>
    private static (string Title, string Words)[] Parts() =>
    [
        ("Pregnant, or may be, or weak in health?",
            "Keep away from lambing ewes, new lambs, afterbirth, soiled bedding, and the boots and clothes of those who were with them: infections of sheep can cost an unborn child its life. Fever after being with sheep: ring a doctor and say so."),
        ("Everyone:",
            "gloves for every lambing and afterbirth; cover cuts; wash hands before you eat, drink, smoke or touch your face. A sore that will not heal may be orf: show a doctor. A ewe that aborts: keep her apart and all of it for the vet, gloves on."),
        ("Lifting:",
            "never a ewe alone, and never sit one heavy in lamb on her rump. One on her back is rolled onto her feet at once, alone if you must. Never turn your back on a tup."),
        ("Medicines:",
            "only as the vet or the label says. Write down what, how much, which ewe, batch, day, and when her meat or milk may be used again; keep it as long as your law says. Needles into a sharps bin. Injected yourself? Hospital at once, with the label."),
        ("Feed:",
            "sheep die of copper. No feed, minerals or buckets for cattle, pigs or poultry. Change feed over days, not at once. Loose ewes must not get at the feed store."),
        ("Only the vet decides",
            "what is wrong with her, what to give her, if she needs a caesarean, when it is kinder to stop. You need nobody\u2019s leave to ring."),
        ("Local rules come first.",
            "Where this pack and the law, the vet or a label differ, the pack is wrong. It does not see the sheep. You do."),
    ];

    public static Column Of() => Block.Column(
        5,
        Block.Heading("SAFE: how not to be hurt, how not to harm"),
        Block.Column(5, [.. Parts().Select(p => (Element)Block.BoldThen(p.Title, p.Words, TypeScale.Body))]));
}
