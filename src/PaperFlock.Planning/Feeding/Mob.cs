namespace PaperFlock.Planning.Feeding;

/// <summary>The ewes at one trough. Nobody can share a trough out by weight, so they are fed as their average: the mean
/// of what each needs, not the need of a mean ewe.</summary>
/// <param name="members">Never empty.</param>
internal sealed class Mob(Feeds feeds, ImmutableArray<MobMember> members)
{
    private const int MostRounds = 60;

    /// <summary>Forage one ewe would eat with no concentrate, kg dry matter a day.</summary>
    public double Capacity { get; } = members.Average(m => ForageIntake.Capacity(feeds.Forage, m.Need.Weight));

    /// <summary>The diet by energy balance, with the need it meets.</summary>
    /// <remarks>How well she uses energy for maintenance depends on the whole diet, so on the concentrate being worked
    /// out. The two are solved together; each round shrinks the error at least tenfold for any feed a sheep eats.</remarks>
    /// <param name="day">Day of pregnancy, birth on 147.</param>
    /// <param name="date">Decides who is in and who is out.</param>
    public (double Need, Diet Diet) Balance(double day, LocalDate date)
    {
        var qm = AfrcEnergy.Metabolisability((double)feeds.Forage.Energy);
        var need = 0.0;
        var diet = default(Diet);
        for (var round = 0; round < MostRounds; round++)
        {
            need = Energy(day, date, qm);
            diet = RationBalance.Meeting(need, Capacity, feeds.Forage, feeds.Concentrate);
            var next = AfrcEnergy.Metabolisability(diet.EnergyDensity(feeds.Forage, feeds.Concentrate));
            if (Math.Abs(next - qm) < 1e-12)
            {
                break;
            }

            qm = next;
        }

        return (need, diet);
    }

    /// <summary>What a diet with this much concentrate gives.</summary>
    /// <param name="fresh">Concentrate out of the bag, kg a ewe a day.</param>
    /// <param name="date">Decides who is in and who is out.</param>
    public (double Energy, double Protein) Supply(double fresh, LocalDate date)
    {
        var diet = RationBalance.With(fresh, Capacity, feeds.Forage, feeds.Concentrate);
        var qm = AfrcEnergy.Metabolisability(diet.EnergyDensity(feeds.Forage, feeds.Concentrate));
        var maintenance = members.Average(m => AfrcEnergy.Maintenance(m.Need.Weight, Where(m, date), qm));
        return (diet.Energy(feeds.Forage, feeds.Concentrate), AfrcProtein.Supply(diet, feeds.Forage, feeds.Concentrate, maintenance));
    }

    /// <summary>Metabolisable protein one ewe needs, g/day.</summary>
    /// <param name="day">Day of pregnancy, birth on 147.</param>
    public double Protein(double day) => members.Average(m => m.Need.Protein(day));

    private double Energy(double day, LocalDate date, double qm) => members.Average(m => m.Need.Energy(day, Where(m, date), qm));

    private Walking Where(MobMember member, LocalDate date) => member.Housed is { } housed && housed <= date
        ? Walking.Housed
        : feeds.Ground == Ground.Hill ? Walking.HillGrazing : Walking.LowlandGrazing;
}

/// <param name="Housed">The day she goes in; null when she stays out.</param>
internal readonly record struct MobMember(EweNeed Need, LocalDate? Housed);
