namespace PaperFlock.Sheets.CallSheet;

/// <summary>What is seen, what to do at once, whom to ring, how soon: worst first. No medical limits: those are the vet's to write in.</summary>
internal static class SignTable
{
    private static (string See, string Do, string Ring, bool Now, string Soon)[] Signs() =>
    [
        ("Bag out early, or bleeding", "Keep her quiet and alone. Do not pull.", "Vet", true, "NOW"),
        ("Something hanging from her that is not a lamb", "Pen her, keep it clean and her quiet.", "Vet", true, "NOW"),
        ("Straining, and nothing comes", "Note the time. Look every 10 minutes, do not crowd her.", "Vet, then keeper", true, "NOW, past the vet\u2019s limit below"),
        ("Down, and will not rise", "Prop her on her brisket, out of the wind. Nothing by mouth.", "Vet", true, "NOW"),
        ("On her back", "Roll her up, hold her till she stands, watch her walk off.", "Keeper", false, "once she is up; vet if she goes down again"),
        ("A cold, limp lamb", "Out of the wind, dry it. Ring before you feed it.", "Vet or keeper", true, "NOW"),
        ("Off her feed, dull, standing apart", "Pen her with water and hay. Take her name.", "Vet", false, "within the hour"),
        ("Very thin", "Write down who. Do not change the feed yourself.", "Keeper", false, "today"),
        ("Anything else that worries you", "Write down what you see and when.", "Keeper", false, "today; vet if it gets worse"),
    ];

    private static readonly TextStyle Plain = new(Face.Text, 13);
    private static readonly TextStyle Bold = new(Face.TextBold, 13);

    public static Element Of() => Block.Column(
        4,
        Block.Heading("If you see this"),
        new Table(
            [Track.Share(1.05), Track.Share(1.4), Track.Fixed(Mm(24)), Track.Share(0.85)],
            [new TableRow([Block.Cell("see", TypeScale.Label), Block.Cell("do now", TypeScale.Label), Block.Cell("ring", TypeScale.Label), Block.Cell("how soon", TypeScale.Label)])],
            [
                .. Signs().Select(s => new TableRow(
                    [Block.Cell(s.See, Bold), Block.Cell(s.Do, Plain), Block.Cell(s.Ring, Bold), Block.Cell(s.Soon, s.Now ? Bold : Plain)],
                    Layout.Units.Mm(16))),
            ])
        { Name = "signs", RowHeaders = true });
}
