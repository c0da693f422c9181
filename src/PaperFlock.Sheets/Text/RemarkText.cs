namespace PaperFlock.Sheets;

/// <summary>What a stranger must know of a ewe before anything happens to her.</summary>
public static class RemarkText
{
    /// <summary>Her earlier troubles and the keeper's note, such as "Had a caesarean. Needs a quiet corner"; empty when there is neither.</summary>
    public static string Of(Ewe ewe) => string.Join(". ", ewe.History.Select(Past).Append(ewe.LostLambs is null ? null : "Lost her lambs: keep her apart").Append(ewe.Note).OfType<string>());

    /// <summary>"Last season scanned 2, 1 born alive"; null where nothing is known of it.</summary>
    public static string? Was(Ewe ewe) => ewe.Was is not { } was ? null : $"Last season {string.Join(", ", new[]
    {
        was.Scan is { } scan ? $"scanned {(scan == 0 ? "empty" : scan.ToString(CultureInfo.InvariantCulture))}" : null,
        was.LambsAlive is { } alive ? $"{(alive == 0 ? "none" : alive.ToString(CultureInfo.InvariantCulture))} born alive" : null,
    }.OfType<string>())}";

    private static string Past(PastTrouble trouble) => trouble switch
    {
        PastTrouble.Caesarean => "Had a caesarean",
        PastTrouble.Prolapse => "Has prolapsed",
        _ => "Had mastitis",
    };
}
