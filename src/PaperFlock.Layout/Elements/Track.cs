namespace PaperFlock.Layout.Elements;

/// <summary>The width of a column: so many points, or a share of what the fixed ones leave.</summary>
public readonly record struct Track(double Points, double Shares)
{
    public static Track Fixed(double points) => new(points, 0);

    public static Track Share(double shares = 1) => new(0, shares);

    /// <summary>The boundaries between tracks laid side by side, from 0 to the whole width: one more than there are tracks.</summary>
    /// <returns>Without shares the last boundary may lie short of <paramref name="width"/>, or beyond it.</returns>
    internal static double[] Edges(ReadOnlySpan<Track> tracks, double width)
    {
        double points = 0, shares = 0;
        foreach (var track in tracks)
        {
            points += track.Points;
            shares += track.Shares;
        }

        var spare = Math.Max(0, width - points);
        var edges = new double[tracks.Length + 1];
        for (var i = 0; i < tracks.Length; i++)
        {
            edges[i + 1] = edges[i] + tracks[i].Points + (shares > 0 ? spare * tracks[i].Shares / shares : 0);
        }

        return edges;
    }
}
