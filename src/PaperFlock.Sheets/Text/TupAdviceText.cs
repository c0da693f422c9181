using PaperFlock.Flocks;
using PaperFlock.Planning;

namespace PaperFlock.Sheets;

/// <summary>What to do about a ewe before the tup, and why.</summary>
public static class TupAdviceText
{
    public static string Verdict(TupVerdict verdict) => verdict switch
    {
        TupVerdict.ToTheTup => "to the tup",
        TupVerdict.TreatFirst => "treat first and look again",
        TupVerdict.LeaveOut => "leave out",
        TupVerdict.Cull => "cull",
        _ => throw new ArgumentOutOfRangeException(nameof(verdict)),
    };

    /// <summary>All that speaks against her, gravest first; empty when nothing does.</summary>
    public static string Reason(EwePlan ewe) => string.Join("; ", ewe.Advice.Findings.Select(f => Name(f, ewe.Ewe) + Consequence(f)));

    /// <summary>What keeps her from the tup, such as "lumpy udder"; empty when nothing does.</summary>
    public static string Unfit(EwePlan ewe) => string.Join(", ", ewe.Advice.Unfit.Select(f => Name(f, ewe.Ewe)));

    /// <summary>Such as "leave out: lumpy udder: leave her out and ask the vet".</summary>
    public static string Of(EwePlan ewe) =>
        ewe.Advice.Findings.IsEmpty ? Verdict(ewe.Advice.Verdict) : $"{Verdict(ewe.Advice.Verdict)}: {Reason(ewe)}";

    private static string Name(TupFinding finding, Ewe ewe) => finding switch
    {
        TupFinding.LostHalfUdder => "lost half her udder",
        TupFinding.BrokenMouth => "broken mouth",
        TupFinding.LumpyUdder => "lumpy udder",
        TupFinding.KeptBack => "kept back by the keeper",
        TupFinding.Lame => "lame",
        TupFinding.FeetTreated => "feet treated",
        TupFinding.WornTeeth => "worn teeth",
        TupFinding.Thin => $"thin at condition {ewe.Condition:0.##}",
        TupFinding.TooFat => $"too fat at condition {ewe.Condition:0.##}",
        _ => throw new ArgumentOutOfRangeException(nameof(finding)),
    };

    private static string Consequence(TupFinding finding) => finding switch
    {
        TupFinding.LostHalfUdder => ": she cannot rear twins",
        TupFinding.BrokenMouth => ": she will not hold her condition",
        TupFinding.LumpyUdder => ": leave her out and ask the vet",
        TupFinding.Lame => ": have her feet put right and look again",
        TupFinding.FeetTreated => ": look again, she needs sound feet",
        TupFinding.WornTeeth => ": watch her condition",
        _ => "",
    };
}
