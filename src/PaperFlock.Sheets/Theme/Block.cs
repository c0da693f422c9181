namespace PaperFlock.Sheets.Theme;

/// <summary>Short ways to say what sheets say most.</summary>
internal static class Block
{
    public static Text Text(string words, TextStyle style, TextAlign align = TextAlign.Left, double leading = 1.2) =>
        new(words, style, align, leading);

    /// <summary>What a part of a sheet is called.</summary>
    public static Text Heading(string words) => Text(words, TypeScale.Heading) with { Tag = StructureTag.Heading(2) };

    /// <summary>Paragraphs numbered from one.</summary>
    public static Column Numbered(double spacing, IEnumerable<Text> items) =>
        List(spacing, items.Select((words, i) => ListItem((i + 1).ToString(CultureInfo.InvariantCulture), words)));

    public static Column List(double spacing, IEnumerable<Element> items) => new([.. items], spacing) { Tag = StructureTag.List };

    /// <summary>Two at the ends of a line: the left one has the width that the right one leaves.</summary>
    /// <param name="wide">Points for the right one; so is the gap between the two.</param>
    public static Row Ends(Element left, Element right, double wide, double gap, VerticalAlign leftAt = VerticalAlign.Bottom, VerticalAlign rightAt = VerticalAlign.Top) =>
        new([new RowCell(Track.Share(), left, leftAt), new RowCell(Track.Fixed(wide), right, rightAt)], gap);

    /// <summary>A mark of a stated width, and what stands behind it.</summary>
    /// <param name="wide">Points for the mark; so is the gap behind it.</param>
    public static Row Behind(Element mark, Element words, double wide, double gap = 0, VerticalAlign at = VerticalAlign.Middle) =>
        new([new RowCell(Track.Fixed(wide), mark, at), new RowCell(Track.Share(), words, at)], gap);

    /// <summary>A paragraph that is one of a list, with its number or mark before it.</summary>
    /// <param name="label">In bold type; the words begin 16 points to the right of where it does.</param>
    public static Row ListItem(string label, Text words) =>
        Behind(Text(label, Bold(words.Runs[0].Style), leading: words.Leading) with { Tag = StructureTag.Label }, words, 16, at: VerticalAlign.Top) with { Tag = StructureTag.ListItem };

    /// <summary>Bold words, then plain ones, in one paragraph.</summary>
    public static Text BoldThen(string bold, string plain, TextStyle plainStyle, double leading = 1.25) =>
        new([new Run(bold, Bold(plainStyle)), new Run(" " + plain, plainStyle)], TextAlign.Left, leading);

    /// <summary>Sentences one after another; empty ones are left out.</summary>
    public static string Sentences(params IEnumerable<string> sentences) => string.Join(' ', sentences.Where(s => s.Length > 0));

    public static Column Column(double spacing, params ImmutableArray<Element> children) => new(children, spacing);

    public static TableCell Cell(string words, TextStyle style, TextAlign align = TextAlign.Left, int span = 1) =>
        new(Text(words, style, align), span);

    public static TableCell Cell(Element? child, int span = 1, VerticalAlign align = VerticalAlign.Middle) => new(child, span, align);

    /// <summary>The head of a table: what its columns are called.</summary>
    public static TableRow Heads(params ImmutableArray<string> words) => Heads(..0, words);

    /// <param name="centred">The columns whose heads stand in the middle.</param>
    public static TableRow Heads(Range centred, params ImmutableArray<string> words)
    {
        var (first, count) = centred.GetOffsetAndLength(words.Length);
        return new TableRow([.. words.Select((w, i) => Cell(w, TypeScale.Label, i >= first && i < first + count ? TextAlign.Centre : TextAlign.Left))]);
    }

    /// <summary>A cell to write in.</summary>
    public static TableCell Blank(int span = 1) => new(null, span);

    /// <summary>An empty square to tick, in the middle of the width offered.</summary>
    /// <param name="side">Outside measure in points.</param>
    public static Element Tick(double side) => new Align(TickBox(side), TextAlign.Centre);

    public static Picture TickBox(double side)
    {
        const double line = Lines.Box;
        return new Picture(new Size(side, side), [new RectItem(line / 2, line / 2, side - line, side - line, line)]);
    }

    /// <summary>Boxes to tick, two abreast.</summary>
    /// <param name="side">Outside measure of a box, in points.</param>
    /// <param name="row">Height of a row.</param>
    public static Grid TickList(double side, double row, IEnumerable<string> words) =>
        new(2, [.. words.Select(w => TickWith(side, Text(w, TypeScale.Body)) with { Tag = StructureTag.ListItem })], row) { Tag = StructureTag.List };

    /// <summary>A tick box with its word to the right of it.</summary>
    public static Row TickWith(double side, Element words) => Behind(TickBox(side), words, side, Math.Max(5, side * 0.35));

    public static Element Gap(double height) => new Picture(new Size(1, height), []);

    /// <summary>A heading and at least <paramref name="least"/> lines to write on below it, to the foot of the page; the two stay together.</summary>
    /// <param name="row">Height of a line, in points.</param>
    public static KeepTogether Ruled(string heading, TextStyle style, double row, int least) =>
        new(Column(3, Text(heading, style) with { Tag = StructureTag.Heading(2) }, new LogLines(row, AtLeast: least)));

    /// <summary>What is left of the page, ruled for notes; nothing where not even a line is left. Whether there is room for them is no news.</summary>
    /// <param name="row">Height of a line, in points.</param>
    public static FirstThatFits Notes(double row) => new([Column(3, Text("notes", TypeScale.Label) with { About = NotContent.Instance }, new LogLines(row, AtLeast: 2)), new LogLines(row, AtLeast: 0)]);

    /// <summary>Sets <paramref name="words"/> in the first of the styles in which they stand on one line; in the last they may take more.</summary>
    public static Element Largest(string words, ITextMeasurer measurer, double width, TextAlign align, params ImmutableArray<TextStyle> styles) =>
        Text(words, styles.FirstOrDefault(style => measurer.WidthOf(words, style) <= width, styles[^1]), align, 1.1);

    public static TextStyle Bold(TextStyle style) => style with
    {
        Face = style.Face is Face.Mono or Face.MonoBold ? Face.MonoBold : Face.TextBold,
    };
}
