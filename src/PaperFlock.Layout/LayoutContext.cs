namespace PaperFlock.Layout;

/// <summary>What every element is placed with.</summary>
public sealed class LayoutContext(ITextMeasurer measurer)
{
    public ITextMeasurer Measurer { get; } = measurer;
}
