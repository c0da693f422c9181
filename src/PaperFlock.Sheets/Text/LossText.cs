namespace PaperFlock.Sheets;

/// <summary>What became of a ewe that has left the flock.</summary>
public static class LossText
{
    /// <summary>"died", to stand before or after a day.</summary>
    public static string Why(LossReason why) => why switch
    {
        LossReason.Died => "died",
        LossReason.Sold => "sold",
        LossReason.Culled => "culled",
        LossReason.Missing => "missing",
        _ => throw new ArgumentOutOfRangeException(nameof(why)),
    };
}
