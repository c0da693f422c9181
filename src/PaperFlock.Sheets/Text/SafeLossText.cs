namespace PaperFlock.Sheets;

/// <summary>What a ewe that lost her lambs calls for: what makes one lose them often takes others, and people. Common advice; the vet decides.</summary>
public static class SafeLossText
{
    public const string Short = "Ring the vet. Keep her apart from ewes in lamb; gloves; pregnant women keep away.";

    public const string Long = "Ring the vet today: what made her lose them may spread. Keep her apart from ewes in lamb, touch nothing without gloves, and keep women who are or may be pregnant away";
}
