namespace PaperFlock.Planning.Places;

internal static class LambsAtFoot
{
    /// <summary>Lambs a ewe that has lambed rears: those born alive; where nobody wrote that down, those listed, else those scanned, else two.</summary>
    public static int Of(EwePlan ewe) => ewe.Ewe.BornAlive ?? (ewe.Ewe.Scan is { } scan and > 0 ? scan : 2);
}
