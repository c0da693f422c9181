namespace PaperFlock.Pdf;

/// <summary>How a printer is asked to print both sides.</summary>
public enum DuplexHint
{
    Simplex,
    LongEdge,
    ShortEdge,
}
