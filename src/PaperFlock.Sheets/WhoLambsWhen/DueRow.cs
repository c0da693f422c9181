namespace PaperFlock.Sheets.WhoLambsWhen;

/// <param name="Window">Of a ewe that has lambed, what it was.</param>
internal sealed record DueRow(EwePlan Ewe, DueWindow Window)
{
    public LocalDate LastChance => Window.Chances.First.PlusDays(Window.Chances.Chances.Length - 1);
}
