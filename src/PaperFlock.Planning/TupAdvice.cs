namespace PaperFlock.Planning;

/// <summary>What to do about a ewe before the tup.</summary>
/// <param name="Findings">All that speaks against her, gravest first; empty when nothing does.</param>
public sealed record TupAdvice(ImmutableArray<TupFinding> Findings)
{
    /// <summary>The gravest finding gives it.</summary>
    public TupVerdict Verdict => Findings.IsEmpty ? TupVerdict.ToTheTup : Findings[0] switch
    {
        TupFinding.LostHalfUdder or TupFinding.BrokenMouth => TupVerdict.Cull,
        TupFinding.LumpyUdder or TupFinding.HadCaesarean or TupFinding.HadProlapse or TupFinding.HadMastitis or TupFinding.KeptBack => TupVerdict.LeaveOut,
        TupFinding.Lame or TupFinding.FeetTreated => TupVerdict.TreatFirst,
        _ => TupVerdict.ToTheTup,
    };

    /// <summary>What speaks against sending her at all, or before she is put right.</summary>
    public ImmutableArray<TupFinding> Unfit =>
        [.. Findings.Where(f => f is <= TupFinding.HadMastitis or TupFinding.Lame)];
}

/// <summary>Gravest first.</summary>
public enum TupFinding
{
    LostHalfUdder,
    BrokenMouth,
    LumpyUdder,
    HadCaesarean,
    HadProlapse,
    HadMastitis,
    KeptBack,
    Lame,
    FeetTreated,
    WornTeeth,
    Thin,
    TooFat,
}

public enum TupVerdict
{
    ToTheTup,
    TreatFirst,
    LeaveOut,
    Cull,
}
