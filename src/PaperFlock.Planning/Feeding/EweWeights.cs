namespace PaperFlock.Planning.Feeding;

/// <summary>The live weight a ewe is planned for.</summary>
internal static class EweWeights
{
    /// <summary>Where neither she nor her breed has a weight. 70 kg is the ewe of most published lowland tables.</summary>
    public const decimal Default = 70m;

    /// <returns>kg: her own, else her breed's mature weight, else <see cref="Default"/>.</returns>
    public static decimal Of(Flock flock, Ewe ewe) => (ewe.Weight ?? OfBreed(flock, ewe))?.Kilograms ?? Default;

    /// <summary>Neither she nor her breed has a weight.</summary>
    public static bool IsAssumed(Flock flock, Ewe ewe) => ewe.Weight is null && OfBreed(flock, ewe) is null;

    private static Mass? OfBreed(Flock flock, Ewe ewe) =>
        flock.Breeds.FirstOrDefault(b => b.Name == ewe.Breed)?.MatureWeight;
}
