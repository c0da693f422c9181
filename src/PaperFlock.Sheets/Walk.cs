namespace PaperFlock.Sheets;

/// <summary>In which order the places are walked, on every sheet: the pens, then the fields, both as the flock file names them first, so that a ewe who moves does
/// not change it.</summary>
internal sealed class Walk(Flock flock)
{
    private readonly List<string?> _names =
    [
        .. flock.Housing.Pens.Select(p => p.Name),
        .. flock.Groups.Select(g => g.Field),
        flock.Fields.Singles, flock.Fields.Twins, flock.Fields.Triplets, flock.Fields.NotInLamb, flock.Fields.WithLambs,
    ];

    /// <summary>Ewes with lambs come last; places the file does not name, behind those of their kind that it does.</summary>
    public (int Kind, int Number) Order(Place place) =>
        (place.Kind switch { PlaceKind.Pen => 0, PlaceKind.Field => 1, _ => (int)place.Kind }, _names.IndexOf(place.Name) is var at and >= 0 ? at : _names.Count);
}
