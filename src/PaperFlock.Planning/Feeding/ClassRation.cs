namespace PaperFlock.Planning.Feeding;

/// <summary>Week by week what ewes of one kind, due about together, should have by the keeper's method.</summary>
internal sealed class ClassRation
{
    /// <summary>Nothing is fed for a lamb under this, kg a day; common practice, no source.</summary>
    public const decimal LeastPerLamb = 0.1m;

    /// <summary>A single's energy sum may go over the keeper's figure up to this, kg a day: a figure made for twins must not starve her.</summary>
    public const decimal MostOverFigure = 0.6m;

    private readonly Feeds _feeds;
    private readonly Mob _mob;
    private readonly LocalDate _anchor;
    private readonly decimal _most;
    private readonly decimal _least;

    /// <param name="ewes">Never empty.</param>
    /// <param name="anchor">Weeks are counted back from it.</param>
    /// <param name="most">The most the caps leave, kg a day.</param>
    /// <param name="joined">Ewes of another class fed with them, who may have to begin sooner.</param>
    public ClassRation(
        Flock flock, FeedKind kind, ImmutableArray<FedEwe> ewes, LocalDate anchor, decimal most, params ImmutableArray<FedEwe> joined)
    {
        (_feeds, _anchor, _most, Kind, Heads) = (flock.Feeds, anchor, most, kind, ewes.Length);
        Lambs = ewes.Average(e => e.Lambs);
        _mob = new Mob(flock.Feeds, [.. ewes.Select(e => new MobMember(NeedOf(e, (double)e.Lambs), e.Housed))]);
        Start = StartOf(flock, kind, ewes.AddRange(joined), anchor);
        _least = kind == FeedKind.NotScanned ? TwinsFirst(flock, ewes, anchor) : 0;
    }

    public FeedKind Kind { get; }

    public int Heads { get; }

    /// <summary>What one ewe is fed for, on average.</summary>
    public decimal Lambs { get; }

    /// <summary>The change day on or before the first of them should begin.</summary>
    public LocalDate Start { get; }

    /// <param name="begin">First day of a week.</param>
    public RationTarget In(LocalDate begin)
    {
        var middle = begin.PlusDays(NodaConstants.DaysPerWeek / 2);
        var day = DayOfPregnancy(_anchor, middle);
        var (need, diet) = _mob.Balance(day, middle);
        var plainSum = Decimal(diet.FreshConcentrate(_feeds.Concentrate));
        var sum = FeedCaps.Nearest(plainSum);
        var perLamb = Lambs * (_feeds.PerLamb ?? Feeds.UsualPerLamb).Kilograms;
        return new(Held(sum, perLamb, FeedCaps.Down), Held(plainSum, perLamb, kilograms => kilograms), sum, perLamb, Printed(need, _mob.Protein(day)));
    }

    /// <summary>What forage at its usual share and a ration give one of them.</summary>
    public Nutrients Supply(decimal ration, LocalDate begin)
    {
        var (energy, protein) = _mob.Supply((double)ration, begin.PlusDays(NodaConstants.DaysPerWeek / 2));
        return Printed(energy, protein);
    }

    /// <summary>The day of pregnancy a day is reckoned at, birth on 147; from the anchor on it stays there.</summary>
    /// <remarks>One amount stands for seven days, and is reckoned at their middle: the week's total is right and no day is more than
    /// about 4 % out.</remarks>
    public static double DayOfPregnancy(LocalDate anchor, LocalDate day) =>
        ConceptusGrowth.TermDay - Math.Max(0, Period.DaysBetween(day, anchor));

    private static LocalDate StartOf(Flock flock, FeedKind kind, ImmutableArray<FedEwe> ewes, LocalDate anchor)
    {
        var weeks = flock.Practice.FeedWeeksBeforeLambing;
        var lambs = kind switch { FeedKind.Singles => 1, FeedKind.Triplets => 3, _ => 2 };
        var first = ewes.Select(e => e.Anchor.PlusWeeks(-weeks.For(e.Carries, e.IsThin))).Append(anchor.PlusWeeks(-weeks.For(lambs, thin: false))).Min();
        return Dates.KeeperWeek.FirstDay(first, flock.ChangeDay);
    }

    /// <summary>What the same ewes with twins would have in their first week.</summary>
    private static decimal TwinsFirst(Flock flock, ImmutableArray<FedEwe> ewes, LocalDate anchor)
    {
        var twins = new Mob(flock.Feeds, [.. ewes.Select(e => new MobMember(NeedOf(e, 2), e.Housed))]);
        var middle = anchor.PlusWeeks(-flock.Practice.FeedWeeksBeforeLambing.Twin).PlusDays(NodaConstants.DaysPerWeek / 2);
        var (_, diet) = twins.Balance(DayOfPregnancy(anchor, middle), middle);
        return Math.Max(2 * LeastPerLamb, FeedCaps.Nearest(Decimal(diet.FreshConcentrate(flock.Feeds.Concentrate))));
    }

    /// <summary>A thin ewe fed with the class above has her more that way, and not twice.</summary>
    private static EweNeed NeedOf(FedEwe ewe, double lambs) =>
        new((double)ewe.Weight, lambs, ewe.Lambs > ewe.Carries && ewe.Plan.IsScanned ? null : ewe.Plan.Ewe.Condition);

    private decimal Held(decimal sum, decimal perLamb, Func<decimal, decimal> rounded)
    {
        if (_feeds.ForageOnly)
        {
            return 0;
        }

        var ration = _feeds.Method switch
        {
            FeedMethod.PerLamb => perLamb,
            FeedMethod.EnergyBalance => sum,
            _ => Math.Min(Math.Max(sum, rounded((LeastPerLamb * Lambs) + (FeedCaps.Grain / 2))), Ceiling(sum, perLamb)),
        };
        ration = Math.Max(ration, _least);
        return ration <= _most ? ration : rounded(_most);
    }

    private decimal Ceiling(decimal sum, decimal perLamb) => _feeds.PerLamb is null
        ? decimal.MaxValue
        : Kind == FeedKind.Singles ? Math.Max(perLamb, Math.Min(sum, MostOverFigure)) : perLamb;

    // Rounded well below what anyone prints: the last digits of a power may differ between computers, and must not show.
    private static decimal Decimal(double value) => Math.Round((decimal)Math.Min(value, 1000), 6);

    private static Nutrients Printed(double energy, double protein) => new(Math.Round((decimal)energy, 2), Math.Round((decimal)protein, 1));
}
