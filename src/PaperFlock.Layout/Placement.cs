namespace PaperFlock.Layout;

/// <summary>What becomes of an element offered some space: exactly one of four.</summary>
public abstract record Placement
{
    private Placement()
    {
    }

    /// <summary>It has nothing to show, and takes neither room nor spacing.</summary>
    public sealed record Nothing : Placement
    {
        public static readonly Nothing Instance = new();
    }

    /// <summary>All of it, here.</summary>
    public sealed record Fits(Piece Piece) : Placement;

    /// <summary>This much here; <paramref name="Rest"/> holds only what is left.</summary>
    public sealed record Splits(Piece Piece, Element Rest) : Placement;

    /// <summary>None of it fits here.</summary>
    /// <param name="Reason">One sentence with both numbers.</param>
    /// <param name="Path">Names of the elements from the outside in, down to the one that would not fit.</param>
    public sealed record Wraps(string Reason, ImmutableArray<string> Path) : Placement;
}
