namespace PaperFlock.Flocks;

/// <summary>The fields ewes run in by the lambs they carry, once they are scanned; null where the file names none, and they stay
/// in their group's.</summary>
public sealed record ClassFields(string? Singles, string? Twins, string? Triplets, string? NotInLamb, string? WithLambs)
{
    public static ClassFields None { get; } = new(null, null, null, null, null);

    /// <param name="litter">Lambs carried, 1 or more.</param>
    public string? For(int litter) => litter switch { <= 1 => Singles, 2 => Twins, _ => Triplets };
}
