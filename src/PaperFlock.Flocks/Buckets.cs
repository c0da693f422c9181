namespace PaperFlock.Flocks;

/// <param name="Days">How long one bucket lasts its ewes.</param>
public sealed record Buckets(string Name, Mass Weight, int EwesPerBucket, int Days)
{
    public string Name { get; init; } = Require.Text(Name);

    public Mass Weight { get; init; } = Require.Some(Weight);

    public int EwesPerBucket { get; init; } = Require.Within(EwesPerBucket, 1, int.MaxValue);

    public int Days { get; init; } = Require.Within(Days, 1, int.MaxValue);
}
