using PaperFlock.Planning;

namespace PaperFlock.Cli.Entering.Sheets;

/// <summary>Scan day: lambs counted, early or late.</summary>
internal sealed class ScanResults() : PencilSheet(
    "scan",
    "Scan day (SCAN)",
    "lambs counted at the scan",
    "there is no scan sheet in this pack: no ewe went to the tup",
    Understood.As("not scanned", AnswerPart.Word("scan-stage", null), AnswerPart.Word("scan", null)))
{
    private static readonly string[][] Counts =
    [
        ["0", "empty", "barren", "dry", "none"], ["1", "single", "singles"], ["2", "twin", "twins"], ["3", "triplet", "triplets"], ["4", "quad", "quads"], ["5", "quins"],
    ];

    public override ImmutableArray<(string Keys, string Meaning)> Keys =>
    [
        ("0 1 2 3 4 5", "lambs counted; 0 is empty"),
        ("e2  l2", "the same, and the scanner said early, or late: e or l first"),
    ];

    public override ImmutableArray<ResultColumn> Columns =>
    [
        new("scan", "lambs", "count", "counted", "scanned", "result", "scan result", "litter", "number of lambs"),
        new("scan-stage", "stage", "early or late", "early/late"),
    ];

    public override ImmutableArray<EwePlan> Ewes(SeasonPlan plan) => PencilLists.ScanDay(plan);

    public override string Known(Asked asked) => asked.Ewe.Scan is { } scan ? Say(scan, asked.Ewe.ScanStage) : "";

    protected override Understood Read(string typed, Asked asked)
    {
        var stage = char.ToLowerInvariant(typed[0]) switch { 'e' when typed.Length > 1 && typed[1] is not 'm' => "early", 'l' => "late", _ => null };
        return Count(stage is null ? typed : typed[1..].Trim()) is { } count
            ? Answer(count, stage, asked)
            : Understood.Not(typed.Length == 2 && char.IsAsciiDigit(typed[0]) && typed[1] is 'e' or 'l'
                ? $"the letter goes first: type `{typed[1]}{typed[0]}`"
                : $"`{typed}` is no count of lambs; type 0 to 5, with e or l before it if the scanner said early or late");
    }

    public override Understood Understand(ImmutableArray<(string Column, string Text)> cells, Asked asked)
    {
        var (scanCell, stageCell) = (At("scan"), At("scan-stage"));
        var (scan, stage) = (scanCell < 0 ? "" : cells[scanCell].Text, stageCell < 0 ? null : cells[stageCell].Text);
        var word = stage?.ToLowerInvariant() switch { null => "", "early" or "e" => "early", "late" or "l" => "late", _ => null };
        return scanCell < 0 ? Understood.Not("a stage is given without a count of lambs", stageCell)
            : Count(scan) is not { } count ? Understood.Not($"`{scan}` is no count of lambs; write 0 to 5", scanCell)
            : word is null ? Understood.Not($"`{stage}` is no stage; write early or late, or nothing", stageCell)
            : Answer(count, word.Length == 0 ? null : word, asked) with { Cell = stageCell };

        int At(string column) => cells.ToList().FindIndex(c => c.Column == column);
    }

    private static Understood Answer(int count, string? stage, Asked asked)
    {
        if (count == 0 && stage is not null)
        {
            return Understood.Not("a ewe scanned empty is neither early nor late; type 0 alone, or the lambs counted");
        }

        // A count without a letter leaves the stage that is there, unless there is nothing left to be early.
        AnswerPart[] parts = [AnswerPart.Word("scan", count.ToString(CultureInfo.InvariantCulture))];
        return Understood.As(
            Say(count, stage switch { "early" => ScanStage.Early, "late" => ScanStage.Late, _ => count == 0 ? null : asked.Ewe.ScanStage }),
            stage is not null ? [.. parts, AnswerPart.Word("scan-stage", stage)] : count == 0 ? [.. parts, AnswerPart.Word("scan-stage", null)] : parts);
    }

    private static int? Count(string text)
    {
        var at = Array.FindIndex(Counts, words => words.Contains(text, StringComparer.OrdinalIgnoreCase));
        return at < 0 ? null : at;
    }

    private static string Say(int scan, ScanStage? stage) =>
        (scan == 0 ? "empty" : ScreenText.Count(scan, "lamb")) + stage switch { ScanStage.Early => ", early", ScanStage.Late => ", late", _ => "" };
}
