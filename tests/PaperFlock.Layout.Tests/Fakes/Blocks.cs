using PaperFlock.Layout.Elements;
using PaperFlock.Layout.Pieces;

namespace PaperFlock.Layout.Tests.Fakes;

/// <summary>Fits at its size or wraps. Counts how often it is placed.</summary>
internal sealed record SolidBlock(double Width, double Height) : Element
{
    private readonly Counter _placed = new();

    public int Placed => _placed.Count;

    public override Placement Place(Space space, ITextMeasurer measurer)
    {
        _placed.Add();
        if (Width > space.Width + Space.Epsilon)
        {
            return Wrap($"solid {Width} wide in {space.Width}");
        }

        return Height > space.Height + Space.Epsilon ? Wrap($"solid {Height} high in {space.Height}") : Fit(new Size(Width, Height), []);
    }
}

/// <summary>Splits at any height there is.</summary>
internal sealed record FlowBlock(double Width, double Height) : Element
{
    public override Placement Place(Space space, ITextMeasurer measurer)
    {
        if (Width > space.Width + Space.Epsilon || space.Height <= Space.Epsilon)
        {
            return Wrap($"flow {Width} by {Height} in {space.Width} by {space.Height}");
        }

        return Height <= space.Height + Space.Epsilon
            ? Fit(new Size(Width, Height), [])
            : new Placement.Splits(new Piece(new Size(Width, space.Height), [], Name), this with { Height = Height - space.Height });
    }
}

/// <summary>Answers whatever it is told to.</summary>
internal sealed record ScriptedBlock(Func<Space, ScriptedBlock, Placement> Script) : Element
{
    public override Placement Place(Space space, ITextMeasurer measurer) => Script(space, this);

    public Placement.Wraps Refuse(string reason) => Wrap(reason);
}

/// <summary>Has nothing to show.</summary>
internal sealed record NoBlock : Element
{
    public override Placement Place(Space space, ITextMeasurer measurer) => Placement.Nothing.Instance;
}

internal sealed class Counter
{
    private int _count;

    public int Count => _count;

    public void Add() => Interlocked.Increment(ref _count);
}
