namespace PaperFlock.Sheets.EweCards;

/// <summary>Front of a card: her name and the day she is due are the largest things on it.</summary>
internal static class CardFront
{
    /// <summary>Characters of a note that the largest type there is leaves no room for.</summary>
    private static readonly int[] ShorterNotes = [160, 100, 60, 30];

    private static readonly TextStyle Small = TypeScale.Label with { Size = 9.5 };
    private static readonly TextStyle SmallBold = TypeScale.LabelBold with { Size = 9.5 };
    private static readonly Edges SmallPadding = Edges.Of(3, 3);

    // Widths of the columns of what was found, and of its value.
    private static readonly double[] CaptionShares = [0.8, 0.72, 0.72];
    private static readonly double[] ValueShares = [1.15, 1, 1];

    public static Element Of(SheetContext context, CardFormat format, EwePlan ewe, string code)
    {
        // What the feed chart says too gives way before what only her card says, and a long note last of all.
        var note = string.Join(". ", new[] { RemarkText.Of(ewe.Ewe), RemarkText.Was(ewe.Ewe) }.Where(said => !string.IsNullOrEmpty(said)));
        IEnumerable<(bool Ration, Text Note)> shorter =
        [
            (true, Block.Text(note, TypeScale.BodyBold)),
            (true, Block.Text(note, TypeScale.LabelBold)),
            (false, Block.Text(note, TypeScale.BodyBold)),
            (false, Block.Text(note, TypeScale.LabelBold)),
            .. ShorterNotes.Where(n => n < note.Length).Select(n => (false, Shortened(note, n))),
        ];
        return new FirstThatFits(shorter.Select(s => Card(context, format, ewe, code, s.Ration, s.Note)));
    }

    /// <summary>As many whole words as the length holds, and where to read on.</summary>
    private static Text Shortened(string note, int length)
    {
        var end = note.LastIndexOf(' ', length);
        return Block.Text($"{note[..(end > 0 ? end : length)]} \u2026 (the rest of her note is in the flock file)", TypeScale.LabelBold);
    }

    private static Element Card(SheetContext context, CardFormat format, EwePlan ewe, string code, bool ration, Text note)
    {
        var width = format.Content.Width;
        ImmutableArray<Element?> parts =
        [
            Title(context, ewe, width),
            Block.Largest(ewe.Ewe.Tag, context.Measurer, width, TextAlign.Left, TypeScale.Tag with { Size = 17 }, TypeScale.Tag with { Size = 14 }, TypeScale.Tag),
            Identity(context, ewe),
            Headline(ewe, context),
            Checks(context, ewe, width),
            ration ? CardRation.Of(context, ewe) : null,
            note,
            new LogLines(context.WriteIn.BarnRow, AtLeast: 0),
        ];
        var body = new Column([.. parts.OfType<Element>()], 5);
        return CardFrame.Of(context, format, body, code, "front", $"card of {ewe.Ewe.CallName}");
    }

    private static Row Title(SheetContext context, EwePlan ewe, double width)
    {
        var right = LitterWord(ewe);
        var rightStyle = ewe.IsCarrying && ewe.IsScanned ? Dots.Beside(TypeScale.Cap(Face.TextBold, 6)) : TypeScale.Cap(Face.TextBold, 4.2);
        var rightWidth = context.Measurer.WidthOf(right, rightStyle) + 2;
        var name = Block.Largest(
            ewe.Ewe.Name ?? "no name", context.Measurer, width - rightWidth - 8, TextAlign.Left,
            TypeScale.Cap(Face.TextBold, 6), TypeScale.Cap(Face.TextBold, 4.8), TypeScale.Cap(Face.TextBold, 3.8));
        return Block.Ends(name with { Tag = StructureTag.Heading(1) }, Block.Text(right, rightStyle, TextAlign.Right, 1.1), rightWidth, 8);
    }

    private static string LitterWord(EwePlan ewe) => (ewe.Standing, ewe.IsScanned, ewe.Litter) switch
    {
        (Standing.Empty, _, _) => "EMPTY",
        (Standing.LeftOut, _, _) => "LEFT OUT",
        (Standing.Lambed, _, _) => "LAMBED",
        (Standing.LostLambs, _, _) => "LOST LAMBS",
        (_, false, _) => "not scanned",
        var (_, _, n) => Dots.Of(n),
    };

    private static Text Identity(SheetContext context, EwePlan ewe)
    {
        var group = context.Flock.GroupOf(ewe.Ewe);
        var words = new[]
        {
            ewe.Ewe.Breed,
            ewe.Ewe.Born is { } born ? $"born\u00a0{born}" : null,
            group.Name.Length > 0 ? group.Name : null,
            SireText.Of(ewe) is { Length: > 0 } sire ? $"tup {sire}".Replace(' ', '\u00a0') : null,
        };
        var pen = ewe.Pen is { } name ? $"\npen\u00a0{name.Replace(' ', '\u00a0')}" : "";
        return Block.Text(string.Join(" · ", words.OfType<string>().DefaultIfEmpty("no breed or group given")) + pen, TypeScale.Label, leading: 1.25);
    }

    /// <summary>When she is due, or why she is not.</summary>
    private static Box Headline(EwePlan ewe, SheetContext context)
    {
        if (ewe.Due is { } due)
        {
            return Framed(
                Block.Behind(
                    Block.Text("due", TypeScale.Body),
                    Block.Text(DateText.Short(due.Likely), TypeScale.Cap(Face.TextBold, 5.4), leading: 1.05),
                    Math.Max(30, context.Measurer.WidthOf("due", TypeScale.Body) + 2),
                    at: VerticalAlign.Bottom),
                Block.Text($"9 in 10 between {DateText.Short(due.Earliest)} and {DateText.Short(due.Latest)}", TypeScale.Label),
                Block.Text(EvidenceText.Of(due.Evidence), TypeScale.LabelBold));
        }

        var (bold, plain) = ewe.Standing switch
        {
            Standing.Lambed => ($"Lambed {DateText.Short(ewe.Ewe.Lambed!.Value)}", "Her card is closed."),
            Standing.LeftOut => ("Left out of the tup", TupAdviceText.Reason(ewe)),
            Standing.LostLambs => ($"Lost her lambs {DateText.Short(ewe.Ewe.LostLambs!.Value)}", SafeLossText.Short),
            _ => ("Scanned empty", "No lambs: feed and house her apart from those in lamb."),
        };
        return Framed(Block.Text(bold, TypeScale.Cap(Face.TextBold, 4.2), leading: 1.1), Block.Text(plain, TypeScale.Label));

        static Box Framed(params ImmutableArray<Element> lines) => new(Block.Column(2, lines), Edges.Of(7, 5), Lines.Section);
    }

    private static Table Checks(SheetContext context, EwePlan ewe, double width)
    {
        var e = ewe.Ewe;
        (string Caption, string Value)[] checks =
        [
            ("teeth", CheckText.Of(e.Teeth) ?? ""),
            ("toes", CheckText.Of(e.Toes) ?? ""),
            ("teats", CheckText.Of(e.Teats) ?? ""),
            ("weight", e.Weight is { } w ? context.Amounts.Weight(w.Kilograms) : ""),
            ("score", e.Condition is { } c ? Amounts.Figure(c, "0.0") : ""),
            ("now", ""),
        ];
        var captions = CaptionShares.Select((share, i) => (Share: share, Words: checks.Where((_, n) => n % 3 == i).Select(p => p.Caption)));
        var shares = CaptionShares.Sum() + ValueShares.Sum();
        var apart = captions.All(p => context.Columns.Widest(Small, p.Words) + SmallPadding.Horizontal <= p.Share / shares * width);
        return apart
            ? new Table(
                [.. CaptionShares.Zip(ValueShares, (caption, value) => (ImmutableArray<Track>)[Track.Share(caption), Track.Share(value)]).SelectMany(t => t)],
                [],
                [.. checks.Chunk(3).Select(row => new TableRow([.. row.SelectMany(p => new[] { Cell(new Run(p.Caption, Small)) with { Scope = HeaderScope.Row }, Cell(new Run(p.Value, SmallBold)) })]))])
            : new Table(
                [.. Enumerable.Repeat(Track.Share(), 3)],
                [],
                [.. checks.Chunk(3).Select(row => new TableRow([.. row.Select(p => Cell(new Run(p.Caption + " ", Small), new Run(p.Value, SmallBold)))]))]);
    }

    private static TableCell Cell(params ImmutableArray<Run> words) => new(new Text(words, Leading: 1.2), Padding: SmallPadding);
}
