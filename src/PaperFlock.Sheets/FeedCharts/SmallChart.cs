namespace PaperFlock.Sheets.FeedCharts;

/// <summary>A chart that may share a side with another.</summary>
/// <param name="Half">As it stands beside another.</param>
/// <param name="Fits">Whether there is the height for that.</param>
/// <param name="Alone">The same with a side to itself.</param>
internal sealed record SmallChart(string Code, string Title, Element Half, bool Fits, Func<Sheet> Alone);
