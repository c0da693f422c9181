namespace PaperFlock.Layout.Structure;

/// <summary>The kinds of <see cref="StructureTag"/>, which says what each is for.</summary>
public enum StructureKind
{
    Section,
    Heading,
    Paragraph,
    List,
    ListItem,
    Label,
    Table,
    Row,
    HeaderCell,
    Cell,
    Figure,
    Link,
    Decoration,
    RunningHead,
    RunningFoot,
    PrintersMark,
}
