using NodaTime;
using PaperFlock.Flocks;

namespace PaperFlock.Planning.Places;

/// <summary>What moves a ewe before she lambs.</summary>
/// <param name="Sorted">The day she is sorted by the lambs she carries; null where she is not.</param>
/// <param name="SortedField">The field she is sorted into; null where the file names none for her kind.</param>
/// <param name="Housed">The day she goes in; null when she stays out.</param>
/// <param name="Pen">The pen she goes into; null where the file names none.</param>
internal sealed record EweMoves(Func<Ewe, LocalDate?> Sorted, Func<Ewe, string?> SortedField, Func<Ewe, LocalDate?> Housed, Func<Ewe, string?> Pen);
