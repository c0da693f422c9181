namespace PaperFlock.Sheets.Issues;

/// <summary>What changes from issue to issue whatever the flock does: control lines, issue numbers, words about the last issue, room for notes.</summary>
internal sealed record NotContent : Subject
{
    public static readonly NotContent Instance = new();

    private NotContent()
    {
    }
}
