namespace PaperFlock.Flocks;

/// <param name="Right">From the left of the shed; <paramref name="Down"/> from the top of the plan.</param>
public readonly record struct PenCorner(Length Right, Length Down);

/// <summary>A pen on the plan of the shed, in metres: its length runs to the right, its width down.</summary>
public readonly record struct PenPlace(Pen Pen, decimal Right, decimal Down)
{
    public decimal RightEnd => Right + Pen.Length.Metres;

    public decimal DownEnd => Down + Pen.Width.Metres;

    public bool LiesOver(PenPlace other) => Right < other.RightEnd && other.Right < RightEnd && Down < other.DownEnd && other.Down < DownEnd;

    /// <summary>Pens that are given no place stand side by side in their order, beyond those that are; past a few in further rows, so that the plan is no ribbon.</summary>
    public static ImmutableArray<PenPlace> Of(ImmutableArray<Pen> pens)
    {
        var places = pens.Where(p => p.At is not null).Select(p => new PenPlace(p, p.At!.Value.Right.Metres, p.At.Value.Down.Metres)).ToList();
        var (left, down) = (places.Count == 0 ? 0 : places.Max(p => p.RightEnd), 0m);
        var others = pens.Where(p => p.At is null).ToArray();
        foreach (var row in others.Chunk((int)Math.Ceiling(Math.Sqrt(2 * Math.Max(1, others.Length)))))
        {
            var right = left;
            foreach (var pen in row)
            {
                places.Add(new PenPlace(pen, right, down));
                right += pen.Length.Metres;
            }

            down += row.Max(p => p.Width.Metres);
        }

        return [.. places.OrderBy(p => pens.IndexOf(p.Pen))];
    }
}
