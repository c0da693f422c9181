namespace PaperFlock.Layout;

/// <summary>What becomes of an element offered some space: exactly one of four.</summary>
public abstract record Placement
{
    private Placement()
    {
    }

    /// <summary>What stands here; null where nothing does.</summary>
    internal Piece? Here => (this as Fits)?.Piece ?? (this as Splits)?.Piece;

    /// <summary>The same with what stands here, and what is left if anything is, made into something else.</summary>
    internal Placement With(Func<Piece, Piece> dress, Func<Element, Element> carry) => this switch
    {
        Fits fits => new Fits(dress(fits.Piece)),
        Splits splits => new Splits(dress(splits.Piece), splits.Rest is Empty ? splits.Rest : carry(splits.Rest)),
        _ => this,
    };

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
