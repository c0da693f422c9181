namespace PaperFlock.Flocks.Reading.Sections;

/// <summary>
/// A ewe outside these is a slip of the pen. Wide on purpose: the smallest primitive breeds and the largest of the
/// longwools stay inside. Common knowledge of the trade, no source.
/// </summary>
internal static class EweLimits
{
    public const decimal LeastKilograms = 15;

    public const decimal MostKilograms = 200;
}
