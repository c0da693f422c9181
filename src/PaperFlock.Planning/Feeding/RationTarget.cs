namespace PaperFlock.Planning.Feeding;

/// <summary>What a ewe should have in one week, before she is brought on to it.</summary>
/// <param name="Ration">kg a day, inside the caps.</param>
/// <param name="Plain">The same before it is rounded.</param>
/// <param name="EnergyBalance">By the energy sum alone.</param>
/// <param name="PerLamb">By so much a lamb alone.</param>
internal readonly record struct RationTarget(decimal Ration, decimal Plain, decimal EnergyBalance, decimal PerLamb, Nutrients Need);
