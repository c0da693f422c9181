namespace PaperFlock.Flocks;

/// <summary>What ultrasound through the belly can and cannot see.</summary>
public static class PregnancyScan
{
    /// <summary>Lambs younger than this cannot be counted surely. From memory: AHDB guidance that lambs are countable from 40 to 90 days.</summary>
    public const int EarliestCountableDays = 40;
}
