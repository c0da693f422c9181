namespace PaperFlock.Sheets.CallSheet;

/// <summary>What is seen, what to do at once, whom to ring, how soon: worst first. The usual limits are there for the vet to strike out.</summary>
internal static class SignTable
{
    private static readonly TextStyle Bold = TypeScale.BodyBold;
    private static readonly TextStyle Small = TypeScale.Label;

    /// <summary>The shorter figure where sources differ.</summary>
    private static (string See, string Do, string Vet, string Keeper, string Limit)[] Signs() =>
    [
        // Calcium kills in hours (Peel vet clinic, Vet111), and a layman cannot tell it from twin lamb disease (Synergy Farm Health).
        ("Down suddenly, or cannot rise", "Prop her up on her chest, out of the wind. Nothing by mouth.", "Vet NOW; say \u201ccalcium or energy\u201d", "", ""),
        // NADIS; Ohio State 2021.
        ("A red mass behind her", "Pen her, keep it clean. A lamb bag is clear or bluish.", "Vet NOW", "", ""),
        // VetHelpDirect 2021.
        ("Lambs before her time, or bleeds", "Gloves. Pen her apart, with her lambs. Nobody pregnant near.", "Vet NOW", ", then keeper", ""),
        // Bagley, Utah State 1997: examine after half an hour to an hour.
        ("Straining, and nothing comes", "Note the time. Look every 10 minutes, do not crowd her.", "Vet NOW at the limit", "", "30 min"),
        // Bagley, as above; between lambs that were scanned: Gascoigne.
        ("Water bag but no lamb, or no second lamb", "Note the time. Do not pull.", "Vet NOW at the limit", "", "30 min"),
        // Under 37 \u00b0C: NADIS 2006; no milk to a lamb too weak to suck: Irish Farmers Journal 677574.
        ("A cold, limp lamb", "Out of the wind, dry it. Too weak to suck: no milk, no tube.", "Vet NOW", ", then keeper", "under 37\u00a0\u00b0C"),
        // First colostrum by two hours: Vet Times 2018.
        ("A lamb that has not sucked", "Ewe and lamb in a pen. Note when it was born.", "Vet NOW at the limit", "", "2 h"),
        // Common practice, no source.
        ("On her back", "Roll her onto her feet, hold her till she stands, watch her.", "Vet NOW if down again", "; else keeper", ""),
        // Within the hour: common practice, no source.
        ("Off one feed, stands apart", "Pen her with water and hay. Dull: head low, no notice of you.", "Vet NOW if dull", "; else keeper in the hour", "1 feed"),
        // Gone by 6 h, retained at 12 h: MSD manual; not to be pulled: Louisa Vet.
        ("Cleansing still hanging", "Never pull. Note when she lambed.", "Vet NOW if she is ill or it smells", "; else keeper", "12 h"),
        ("Thin, lame, anything else", "Note which ewe, what you see and when. Feed as before.", "Vet if it gets worse", "; keeper today", ""),
    ];

    public static Column Of(SheetContext context) => Block.Column(
        3,
        Block.Heading("If you see this"),
        new Table(
            [Track.Share(), Track.Share(1.62), Track.Share(1.2), Track.Fixed(Mm(21))],
            [Block.Heads("see", "do now", "ring", "usual limit")],
            [.. Signs().Select(s => new TableRow([Cell(s.See, Bold), Cell(s.Do, TypeScale.Body), Cell(context.OnlyDays is not null ? s.Vet + s.Keeper : s.Vet, Bold), Cell(s.Limit, Small)], context.WriteIn.TableRow))])
        { Name = "signs", RowHeaders = true },
        Block.Text("Vet: strike out a limit that is not right for these ewes, write yours beside it. Signed, day ____________________", Small));

    private static TableCell Cell(string words, TextStyle style) => new(Block.Text(words, style, leading: 1.1), Padding: Edges.Of(3, 1.5));
}
