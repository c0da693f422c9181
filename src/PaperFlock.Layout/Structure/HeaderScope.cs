namespace PaperFlock.Layout.Structure;

/// <summary>The cells that a header cell is the header of: those below it, or those beside it.</summary>
public enum HeaderScope
{
    Column,
    Row,
}
