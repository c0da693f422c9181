namespace PaperFlock.Planning.Places;

/// <summary>What moves a ewe before she lambs.</summary>
/// <param name="Sorted">The day she is sorted by the lambs she carries; null where she is not.</param>
/// <param name="SortedField">The field she is sorted into; null where the file names none for her kind.</param>
/// <param name="Housed">The day she goes in; null when she stays out.</param>
/// <param name="Pen">The pen she goes into; null where the file names none.</param>
internal sealed record EweMoves(Func<Ewe, LocalDate?> Sorted, Func<Ewe, string?> SortedField, Func<Ewe, LocalDate?> Housed, Func<Ewe, string?> Pen)
{
    /// <summary>The same once it is known who is housed where.</summary>
    /// <param name="pens">Pen of each ewe that has one, by tag. A shed with pens that hold no more leaves her out; without pens nobody says where she stands in it.</param>
    public EweMoves Into(IReadOnlyDictionary<string, string>? pens, Func<Ewe, LocalDate?> housed) => this with
    {
        Housed = ewe => pens is null || pens.ContainsKey(ewe.Tag) ? housed(ewe) : null,
        Pen = ewe => pens?.GetValueOrDefault(ewe.Tag),
    };
}
