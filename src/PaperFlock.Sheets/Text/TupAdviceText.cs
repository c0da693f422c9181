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
    public static string Reason(EwePlan ewe) => string.Join("; ", ewe.Advice.Findings.Select(f => Words(f, ewe.Ewe)).Select(w => w.So is null ? w.Name : $"{w.Name}: {w.So}"));

    /// <summary>What keeps her from the tup, such as "lumpy udder"; empty when nothing does.</summary>
    public static string Unfit(EwePlan ewe) => string.Join(", ", ewe.Advice.Unfit.Select(f => Words(f, ewe.Ewe).Name));

    /// <summary>Such as "leave out: lumpy udder: leave her out and ask the vet".</summary>
    public static string Of(EwePlan ewe) =>
        ewe.Advice.Findings.IsEmpty ? Verdict(ewe.Advice.Verdict) : $"{Verdict(ewe.Advice.Verdict)}: {Reason(ewe)}";

    private static (string Name, string? So) Words(TupFinding finding, Ewe ewe) => finding switch
    {
        TupFinding.LostHalfUdder => ("lost half her udder", "she cannot rear twins"),
        TupFinding.BrokenMouth => ("broken mouth", "she will not hold her condition"),
        TupFinding.LumpyUdder => ("lumpy udder", "leave her out and ask the vet"),
        TupFinding.HadCaesarean => ("had a caesarean", "not to the tup again"),
        TupFinding.HadProlapse => ("has prolapsed", "she is likely to again: not to the tup"),
        TupFinding.HadMastitis => ("had mastitis", "leave her out and ask the vet"),
        TupFinding.KeptBack => ("kept back by the keeper", null),
        TupFinding.Lame => ("lame", "have her feet put right and look again"),
        TupFinding.FeetTreated => ("feet treated", "look again, she needs sound feet"),
        TupFinding.WornTeeth => ("worn teeth", "watch her condition"),
        TupFinding.Thin => ($"thin at condition {ewe.Condition:0.##}", null),
        TupFinding.TooFat => ($"too fat at condition {ewe.Condition:0.##}", null),
        _ => throw new ArgumentOutOfRangeException(nameof(finding)),
    };
}
