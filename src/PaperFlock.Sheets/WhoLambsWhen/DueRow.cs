namespace PaperFlock.Sheets.WhoLambsWhen;

/// <param name="Number">Of her row among all of the flock's, from 1.</param>
/// <param name="Window">Of a ewe that has lambed, what it was.</param>
internal sealed record DueRow(int Number, EwePlan Ewe, DueWindow Window)
{
    public LocalDate LastChance => Window.Chances.First.PlusDays(Window.Chances.Chances.Length - 1);
}
