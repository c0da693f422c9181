namespace PaperFlock.Sheets.Tests.PaperRules;

/// <summary>What control lines and the like say as far as it does not depend on numbers and days.</summary>
internal sealed class MarkWords()
{
    public string Front { get; } = "front";

    public string Back { get; } = "back";

    public string Issue { get; } = "issue ";

    public string CardIssue { get; } = "issue ";

    public string NotAfter { get; } = "not after ";

    public string Replaces { get; } = "replaces issue ";

    public string ReplacesNone { get; } = "replaces none";

    public string CheckBar { get; } = "must measure 100 mm; if not, print again at actual size";

    public string Leaves { get; } = "leaves";
}
