namespace PaperFlock.Sheets.Issues;

/// <summary>What rows can be about. Records hold these names: none is ever renamed.</summary>
public enum RowKind
{
    /// <summary>Nothing that could be named: a paragraph is known by where it stands.</summary>
    Paragraph,

    /// <summary>What a record of an earlier format says it is about, which is a name alone.</summary>
    Earlier,

    Ewe,
    Tup,
    Day,
    Week,
    Round,
    Job,
    Store,
    Pen,
    Contact,
    Ration,
}
