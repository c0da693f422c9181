namespace PaperFlock.Planning.Jobs;

/// <summary>The calendar of late pregnancy, hung on the day the first lambs are due.</summary>
internal static class LambingRules
{
    public static IEnumerable<JobRule> For(Flock flock)
    {
        var (practice, indoors) = (flock.Practice, flock.Housing.Lambing == LambingPlace.Indoors);
        var house = new JobWindow(-10, -7, -5).MovedTo(-practice.HouseDaysBeforeLambing);
        var byHousing = ByHousing(house);
        JobRule?[] rules =
        [
            flock.Feeds.Buckets is null ? null : On(JobKind.BucketsOut, JobAnchor.FirstDue, -7 * practice.FeedWeeksBeforeLambing.Twin, JobReason.WithTheFeeding),
            On(JobKind.HeavyRounds, JobAnchor.FirstDue, -7 * practice.ChecksPerDay.HeavyFromWeeksBeforeLambing, JobReason.HeavyEweOnHerBack),
            LookOver(8),
            LookOver(4),
            Work(JobKind.ShedReady, byHousing, JobReason.EarlyLambs) with { Handled = false },
            indoors ? Work(JobKind.FlukeAndWorms, byHousing, JobReason.CleanOfWormsWhenHoused) with { Handled = false } : null,
            indoors ? Work(JobKind.House, house, JobReason.SettledBeforeLambing) : null,

            // Jobs with one window have one day: ewes dagged or shorn at housing are gathered once.
            practice.Dag switch
            {
                Dagging.AtHousing => Work(JobKind.Dag, house, indoors ? JobReason.GatheredOnceWithHousing : JobReason.CleanTeat),
                Dagging.BeforeHousing => Work(JobKind.Dag, byHousing, indoors ? JobReason.CleanWhenHoused : JobReason.CleanTeat),
                _ => null,
            },

            // Ewes shorn in winter must stay in, so where they lamb outdoors there is no such job: the plan warns of it.
            indoors && practice.Shear == Shearing.AtHousing ? Work(JobKind.Shear, house, JobReason.GatheredOnceWithHousing, FigureSource.WinterShearing) : null,
            On(JobKind.FirstDue, JobAnchor.FirstDue, 0, JobReason.Gestation, FigureSource.FlockFileMatings),
            On(JobKind.RingAndTag, JobAnchor.FirstDue, 1, JobReason.LocalRulesSetTheDay),
            indoors ? On(JobKind.Turnout, JobAnchor.FirstDue, flock.Housing.TurnoutDaysAfterLambing, JobReason.LambsFitForGrass) : null,
            On(JobKind.LastDue, JobAnchor.LastDue, 0, JobReason.Gestation, FigureSource.FlockFileMatings),
            practice.Shear == Shearing.AfterLambing ? Work(JobKind.Shear, new(21, 28, 56), JobReason.LambsOnTheirFeet) with { Anchor = JobAnchor.LastDue } : null,
        ];
        return rules.OfType<JobRule>();
    }

    private static JobRule LookOver(int weeks) =>
        Work(JobKind.LookOver, new((-7 * weeks) - 4, -7 * weeks, (-7 * weeks) + 4), JobReason.ConditionBeforeLambing, FigureSource.LookOver);

    /// <summary>Over by the first day they may come in, so it gives way when housing is set earlier than usual.</summary>
    private static JobWindow ByHousing(JobWindow house)
    {
        var latest = Math.Min(-10, house.Earliest);
        var best = Math.Min(-14, latest);
        return new(best - 7, best, latest);
    }

    /// <summary>Ewes are gathered for it, on a day that suits.</summary>
    private static JobRule Work(JobKind kind, JobWindow window, JobReason reason, FigureSource source = FigureSource.CommonPractice) =>
        new(kind, JobAnchor.FirstDue, window, Handled: true, reason, source);

    /// <summary>It stands on its day and nobody is gathered for it.</summary>
    private static JobRule On(JobKind kind, JobAnchor anchor, int day, JobReason reason, FigureSource source = FigureSource.CommonPractice) =>
        new(kind, anchor, JobWindow.Day(day), Handled: false, reason, source) { IsFixed = true };
}
