namespace PaperFlock.Sheets.WhatItLooksLike;

/// <param name="Drawing">Its file, without the ending.</param>
/// <param name="Verdict">Whom to ring, or that all is well.</param>
/// <param name="Line">What to look for, and what to do.</param>
/// <param name="Shows">What somebody sees in the drawing.</param>
internal sealed record LookPanel(string Drawing, string Verdict, string Line, string Shows)
{
    /// <summary>
    /// Off her feed at one feed, the keeper within the hour: hours matter, in the work on low calcium and twin lamb disease; the hour itself is common practice, no source.
    /// The water bag: C. V. Bagley, Utah State University 1997, examine after half an hour to an hour. A lamb sucks within 2 hours: Vet Times 2018. Prolapse and what
    /// lies wrong, the vet at once: NADIS; Ohio State University 2021. The rest, and what dull looks like, is common practice, no source.
    /// </summary>
    public static ImmutableArray<LookPanel> All { get; } =
    [
        new("on-her-back", "TURN HER", "Left on her back she dies. Ring the KEEPER once she is up.",
            "A ewe on her back, belly up, her four legs kicking in the air."),
        new("turn-her", "KEEPER", "Hold her till she stands steady, then ring. Down again: VET\u00a0NOW.",
            "Three steps. 1: you kneel at her back while she lies belly up. 2: she is on her side, and you roll her on. 3: she stands, and you hold her with both hands."),
        new("at-rest", "NORMAL", "At rest: legs under her, head up. She gets up when you come.",
            "Somebody walks up to a ewe lying on her brisket, legs folded under her, head up. An arrow leads to the same ewe on her feet, ticked."),
        new("down", "VET NOW", "On her side or head up: she does not get up when you come.",
            "Somebody claps beside a ewe flat on her side, legs stretched out. An arrow leads to the same ewe on her feet, crossed out. A telephone rings."),
        new("propped", "VET NOW", "Down: ring, and prop her up on her chest between straw bales, out of the wind.",
            "Two steps. 1: a ewe flat on her side. 2: the same ewe upright on her brisket between two straw bales, one of which somebody pushes against her. A telephone rings."),
        new("apart", "KEEPER", "By herself, not feeding: ring within the hour. Dull (head low, ears down, takes no notice of you): VET\u00a0NOW.",
            "Three ewes eat at a trough with a gap between them; another stands away from it, her back to them."),
        new("water-bag", "NORMAL", "Water bag, a clear bubble. Note the time. No lamb in 30\u00a0minutes: VET\u00a0NOW.",
            "A ewe from the side: a clear, shining drop hangs by a thin stalk under her raised tail and drips into a puddle. A clock says 30 minutes, and an arrow leads to a lamb on its feet, ticked."),
        new("coming-right", "NORMAL", "Inside her: two front feet, nose on top.",
            "A ewe drawn open from the side: a lamb comes with two front feet, soles down, and its nose above them. Ticked."),
        new("coming-wrong", "VET NOW", "Anything but two feet and a nose. Never pull.",
            "Four ewes drawn open, each crossed out. A lamb comes with its head and no feet; with its head and one foot; with two feet, its head turned back; with its tail."),
        new("lamb-full-and-empty", "VET NOW", "Hunched and empty, or not sucked in 2\u00a0hours.",
            "Left, ticked: a lamb sucks under the ewe, its tail wagging. Right, crossed out: a lamb stands hunched, hollow, head down. A telephone rings."),
        new("prolapse", "VET NOW", "A red mass under her tail, drawn black here. Do not push it in.",
            "A ewe from behind and from the side: a solid, lumpy mass, black, bulges out under her raised tail. A hand is crossed out. A telephone rings."),
        new("condition", "KEEPER", "Feel her loin, behind the last rib. Tell the keeper of any as thin as 2 or as fat as 4.",
            "A hand lies across a ewe's loin behind the last rib. Loins cut across: 2, thin, sharp bones, little flesh; 3, right, rounded; 4, fat, the bones buried."),
    ];

    private LineDrawing? _read;

    /// <summary>Read once for the process: it is the same in every pack.</summary>
    public LineDrawing Read() => _read ??= ReadFile();

    private LineDrawing ReadFile()
    {
        using var file = typeof(LookPanel).Assembly.GetManifestResourceStream(Drawing + ".svg") ?? throw new InvalidOperationException($"there is no drawing {Drawing}");
        using var text = new StreamReader(file);
        return LineDrawing.Read(text);
    }
}
