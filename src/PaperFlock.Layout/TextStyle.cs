namespace PaperFlock.Layout;

/// <param name="Size">Em size in points.</param>
public readonly record struct TextStyle(Face Face, double Size);

/// <summary>The four faces there are: a font file each.</summary>
public enum Face
{
    Text,
    TextBold,
    Mono,
    MonoBold,
}
