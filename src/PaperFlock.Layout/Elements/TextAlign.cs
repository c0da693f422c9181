namespace PaperFlock.Layout.Elements;

public enum TextAlign
{
    Left,
    Centre,
    Right,
}
