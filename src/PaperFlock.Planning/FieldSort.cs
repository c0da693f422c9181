namespace PaperFlock.Planning;

/// <summary>Ewes that go into a field of their kind, by the lambs they carry.</summary>
/// <param name="Kind">Null for ewes not in lamb.</param>
/// <param name="Ewes">In the order of the flock file.</param>
public sealed record FieldSort(LocalDate Day, string Field, FeedKind? Kind, ImmutableArray<Ewe> Ewes);
