namespace PaperFlock.Layout.Structure;

/// <summary>
/// What something on a page is to whoever has the page read out: a heading, a table, a cell of it (ISO 32000-1, 14.8.4). It says nothing of where that stands or how it looks.
/// </summary>
/// <remarks>
/// What is not tagged is transparent: a column in a cell belongs to the cell. Lines and shapes are decoration unless they are in a figure; words must be in something.
/// </remarks>
public sealed record StructureTag
{
    private StructureTag(StructureKind kind) => Kind = kind;

    /// <summary>A sheet, or a part of one, with all that follows its heading.</summary>
    public static StructureTag Section { get; } = new(StructureKind.Section);

    public static StructureTag Paragraph { get; } = new(StructureKind.Paragraph);

    /// <summary>Holds list items and nothing else.</summary>
    public static StructureTag List { get; } = new(StructureKind.List);

    public static StructureTag ListItem { get; } = new(StructureKind.ListItem);

    /// <summary>The number or mark before a list item, within it.</summary>
    public static StructureTag Label { get; } = new(StructureKind.Label);

    /// <summary>Holds rows and nothing else.</summary>
    public static StructureTag Table { get; } = new(StructureKind.Table);

    /// <summary>Holds cells and nothing else.</summary>
    public static StructureTag Row { get; } = new(StructureKind.Row);

    public static StructureTag Link { get; } = new(StructureKind.Link);

    /// <summary>Not to be read out: a rule, a frame, what is there for the eye alone.</summary>
    public static StructureTag Decoration { get; } = new(StructureKind.Decoration);

    /// <summary>Not to be read out: what stands at the head of a page because it stood on the one before.</summary>
    public static StructureTag RunningHead { get; } = new(StructureKind.RunningHead);

    /// <summary>Not to be read out: control lines and page numbers at the foot of a page.</summary>
    public static StructureTag RunningFoot { get; } = new(StructureKind.RunningFoot);

    /// <summary>Not to be read out: what is there for whoever cuts, punches or checks the paper.</summary>
    public static StructureTag PrintersMark { get; } = new(StructureKind.PrintersMark);

    private static StructureTag OneCell { get; } = new(StructureKind.Cell);

    public StructureKind Kind { get; }

    /// <summary>1 for the heading of a sheet, 2 for a part of it, and so on; 0 for what is no heading.</summary>
    public int Level { get; private init; }

    /// <summary>What a header cell is the header of; null for any other tag.</summary>
    public HeaderScope? Scope { get; private init; }

    /// <summary>Columns that a cell covers.</summary>
    public int Columns { get; private init; } = 1;

    /// <summary>What somebody sees in a figure; null for any other tag.</summary>
    public string? Says { get; private init; }

    public bool IsCell => Kind is StructureKind.Cell or StructureKind.HeaderCell;

    /// <summary>Whether it is passed over by whoever reads the page out, with all that is in it.</summary>
    public bool IsArtifact => Kind is StructureKind.Decoration or StructureKind.RunningHead or StructureKind.RunningFoot or StructureKind.PrintersMark;

    /// <param name="level">1 to 6. A heading is at most one level deeper than the one before it.</param>
    public static StructureTag Heading(int level)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(level, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(level, 6);
        return new StructureTag(StructureKind.Heading) { Level = level };
    }

    public static StructureTag HeaderCell(HeaderScope scope, int columns = 1) => new(StructureKind.HeaderCell) { Scope = scope, Columns = columns };

    public static StructureTag Cell(int columns = 1) => columns == 1 ? OneCell : new(StructureKind.Cell) { Columns = columns };

    /// <summary>A drawing with all that is in it, its words as well.</summary>
    /// <param name="says">What somebody sees in it, in words that take its place.</param>
    public static StructureTag Figure(string says) => new(StructureKind.Figure) { Says = says };
}
