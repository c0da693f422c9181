using PaperFlock.Flocks;

namespace PaperFlock.Planning.Dates;

/// <summary>
/// What the check of teeth, toes and teats says about putting a ewe to the tup. Broken mouths, bad udders and lasting
/// lameness are the culls that Raising Sheep (page 282) and Teagasc name; the wording of each finding is common practice.
/// </summary>
internal static class TupAdvisor
{
    /// <summary>Under this she is thin for the tup, over <see cref="FatAbove"/> too fat: common practice, no source.</summary>
    private const decimal ThinBelow = 2;

    private const decimal FatAbove = 4;

    /// <summary>The gravest finding gives the verdict; the reason names them all, gravest first.</summary>
    public static TupAdvice Advise(Ewe ewe)
    {
        var findings = Findings(ewe).OrderByDescending(f => f.Verdict).ToList();
        return findings.Count == 0
            ? new TupAdvice(TupVerdict.ToTheTup, "")
            : new TupAdvice(findings[0].Verdict, string.Join("; ", findings.Select(f => f.Words)));
    }

    /// <summary>What speaks against sending her at all, or before she is put right, in English; empty when nothing does.</summary>
    public static string UnfitBecause(Ewe ewe) =>
        string.Join(", ", Findings(ewe).Where(f => f.Unfit).Select(f => f.Name));

    private static IEnumerable<Finding> Findings(Ewe ewe)
    {
        switch (ewe.Teats)
        {
            case Teats.LostHalf:
                yield return new(TupVerdict.Cull, "lost half her udder", "lost half her udder: she cannot rear twins", Unfit: true);
                break;
            case Teats.Lumpy:
                yield return new(TupVerdict.LeaveOut, "lumpy udder", "lumpy udder: leave her out and ask the vet", Unfit: true);
                break;
        }

        switch (ewe.Teeth)
        {
            case Teeth.Broken:
                yield return new(TupVerdict.Cull, "broken mouth", "broken mouth: she will not hold her condition", Unfit: true);
                break;
            case Teeth.Worn:
                yield return new(TupVerdict.ToTheTup, "worn teeth", "worn teeth: watch her condition", Unfit: false);
                break;
        }

        switch (ewe.Toes)
        {
            case Toes.Lame:
                yield return new(TupVerdict.TreatFirst, "lame", "lame: have her feet put right and look again", Unfit: true);
                break;
            case Toes.Treated:
                yield return new(TupVerdict.TreatFirst, "feet treated", "feet treated: look again, she needs sound feet", Unfit: false);
                break;
        }

        if (ewe.ToTup == false)
        {
            yield return new(TupVerdict.LeaveOut, "kept back", "kept back by the keeper", Unfit: false);
        }

        if (ewe.Condition < ThinBelow)
        {
            yield return new(TupVerdict.ToTheTup, "thin", $"thin at condition {ewe.Condition:0.##}", Unfit: false);
        }
        else if (ewe.Condition > FatAbove)
        {
            yield return new(TupVerdict.ToTheTup, "fat", $"too fat at condition {ewe.Condition:0.##}", Unfit: false);
        }
    }

    /// <param name="Name">For warnings, which are in English.</param>
    private sealed record Finding(TupVerdict Verdict, string Name, string Words, bool Unfit);
}
