namespace PaperFlock.Layout;

/// <summary>What one run of layout shares: the measurer, and the lines already broken.</summary>
public sealed class LayoutContext(ITextMeasurer measurer)
{
    public ITextMeasurer Measurer { get; } = measurer;
}
