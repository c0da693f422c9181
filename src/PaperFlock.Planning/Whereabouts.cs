namespace PaperFlock.Planning;

/// <summary>Where every ewe is and what she is, day by day. Feeding, rounds, handover, housing and stores ask it, and nothing else
/// decides it.</summary>
/// <param name="From">First day known, included.</param>
/// <param name="To">Last day known, included.</param>
/// <param name="Ewes">In the order of the flock file.</param>
public sealed record Whereabouts(LocalDate From, LocalDate To, ImmutableArray<EweStays> Ewes)
{
    private readonly Dictionary<string, EweStays> _byTag = Ewes.ToDictionary(e => e.Ewe.Tag, StringComparer.Ordinal);

    /// <summary>Without gap or overlap from <see cref="From"/> to <see cref="To"/>, in date order.</summary>
    public ImmutableArray<Stay> Of(Ewe ewe) => _byTag[ewe.Tag].Stays;

    /// <returns>Null on a day that is not known.</returns>
    public Stay? On(Ewe ewe, LocalDate day) => _byTag[ewe.Tag].On(day);

    /// <summary>Who is where on a day: places in the order the first of their ewes has in the file, ewes in the file's order.</summary>
    public ImmutableArray<(Place Place, ImmutableArray<Ewe> Ewes)> On(LocalDate day) =>
    [
        .. Ewes.Select(e => (e.Ewe, Stay: e.On(day)))
            .Where(e => e.Stay is not null)
            .GroupBy(e => e.Stay!.Place, e => e.Ewe)
            .Select(g => (g.Key, g.ToImmutableArray())),
    ];
}

/// <param name="Stays">In date order.</param>
public sealed record EweStays(Ewe Ewe, ImmutableArray<Stay> Stays)
{
    /// <returns>Null on a day that is not known.</returns>
    public Stay? On(LocalDate day)
    {
        foreach (var stay in Stays)
        {
            if (stay.From <= day && day <= stay.To)
            {
                return stay;
            }
        }

        return null;
    }
}
