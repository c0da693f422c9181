namespace PaperFlock.Flocks;

/// <summary>A job the keeper wrote in. Exactly one of <see cref="On"/> and <see cref="Window"/> is given.</summary>
/// <param name="On">The one day it stands on, whatever the keeper's week.</param>
/// <param name="MinutesPerEwe">Null when the file gives none.</param>
/// <param name="Handled">Ewes must be gathered for it: as the file says, else true when minutes per ewe are given.</param>
/// <param name="Closed">A day on which nothing can be ordered or fetched: said by <c>closed: true</c> or by a title with the word "closed".</param>
public sealed record OwnJob(
    string Title,
    LocalDate? On,
    OwnJobWindow? Window,
    decimal? MinutesPerEwe,
    bool Handled,
    bool Closed,
    SourceSpan Span)
{
    public string Title { get; init; } = Require.Text(Title);

    public OwnJobWindow? Window { get; init; } = On is null == Window is null
        ? throw new ArgumentException("A job stands on a day or in a window: one of the two.", nameof(Window))
        : Window;

    public decimal? MinutesPerEwe { get; init; } = Require.WithinIfGiven(MinutesPerEwe, 0, 24 * 60);
}

/// <param name="FirstDay">Days from the anchor, negative before it; never after <paramref name="LastDay"/>. <c>before: housing, days: [21, 14]</c> is -21 to -14.</param>
public sealed record OwnJobWindow(JobAnchor Anchor, int FirstDay, int LastDay)
{
    public int LastDay { get; init; } = Require.NotBefore(LastDay, FirstDay);
}

/// <summary>What a window hangs on: each group's own day of that name.</summary>
public enum JobAnchor
{
    TupIn,
    TupOut,
    Scan,
    Feeding,
    Housing,
    FirstDue,
    LastDue,
}
