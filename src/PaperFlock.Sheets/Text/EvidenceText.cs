namespace PaperFlock.Sheets;

/// <summary>How it is known when a ewe, or a group, is due.</summary>
public static class EvidenceText
{
    /// <summary>As printed beside her dates, such as "marked Fri 14 Aug".</summary>
    public static string Of(MatingEvidence evidence)
    {
        var day = Day(evidence.FirstDay);
        var words = evidence.Kind switch
        {
            Evidence.Mating => $"mated {day}",
            Evidence.Mark => evidence.MarkedAgain ? $"marked again {day}" : $"marked {day}",
            Evidence.Scan => "no mark",
            _ => $"no mark seen; tup in {day} to {Day(evidence.LastDay)}",
        };
        return evidence.Stage is { } stage ? $"{words}; scanner said {Stage(stage)}" : words;
    }

    /// <summary>How her days are counted from the evidence, in sentences.</summary>
    public static string Counted(DueWindow due, Ewe ewe, Practice practice)
    {
        var (evidence, first, last) = (due.Evidence, Day(due.FirstPossible), Day(due.LastPossible));
        var counted = evidence.IsOneDay
            ? $"{due.Carries} days from {Day(evidence.FirstDay)} is {first}."
            : $"Any day from {Day(evidence.FirstDay)} to {Day(evidence.LastDay)} may be the one; {due.Carries} days on from those is {first} to {last}.";
        if (due.Mean != due.Carries)
        {
            var days = English.CountLoose(Math.Abs(due.Mean - due.Carries), "day", "days");
            counted += $" With {English.CountLoose(ewe.Scan ?? 0, "lamb", "lambs")} she is planned at {due.Mean} days, {days} {(due.Mean > due.Carries ? "more" : "less")}.";
        }

        return practice.GestationSpreadDays != 0 && evidence.IsOneDay
            ? $"{counted} Two ewes in three lamb within {practice.GestationSpreadDays:0.##} days of that, before or after."
            : counted;
    }

    /// <summary>How the first day a group is due is known, in a sentence without its full stop.</summary>
    public static string First(GroupDueDay due) => Known(due, "first", "goes in");

    /// <summary>The same of the last.</summary>
    public static string Last(GroupDueDay due) => Known(due, "last", "comes out");

    public static string Stage(ScanStage stage) => stage == ScanStage.Early ? "early" : "late";

    private static string Known(GroupDueDay due, string place, string tup) => due is { Ewe: { } ewe, Evidence: { } evidence }
        ? $"the {place} of its ewes is {ewe.CallName}, {Of(evidence)}, and {due.Carries} days on from there; the day is known for every ewe of the group"
        : $"the tup {tup} on {Day(due.From)}, and {due.Carries} days on from there; of {English.CountLoose(due.Ewes, "ewe", "ewes")} {due.Unsure} "
            + $"{English.Plural(due.Unsure, "has", "have")} no mark and no day of mating, so any day with the tup may be the one";

    private static string Day(LocalDate day) => DateText.Loose(day);
}
