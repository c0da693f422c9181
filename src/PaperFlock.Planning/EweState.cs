namespace PaperFlock.Planning;

/// <summary>What a ewe is on a day, as far as the flock file says: an expected lambing changes nothing.</summary>
public enum EweState
{
    WithTup,
    InLamb,
    Lambed,

    /// <summary>Scanned empty, or the tup has not been with her yet.</summary>
    NotInLamb,

    /// <summary>Kept from the tup.</summary>
    LeftOut,
    Gone,
}
