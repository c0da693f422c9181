namespace PaperFlock.Planning.Jobs;

/// <summary>The calendar of late pregnancy, hung on the day the first lambs are due.</summary>
internal static class LambingRules
{
    public static IEnumerable<JobRule> For(Flock flock)
    {
        var practice = flock.Practice;
        var house = new JobWindow(-10, -7, -5).MovedTo(-practice.HouseDaysBeforeLambing);
        return Feeding(practice, flock.Feeds.Buckets is not null)
            .Concat(LookOvers())
            .Append(Work(JobKind.ShedReady, ByHousing(house), JobReason.EarlyLambs) with { Handled = false })
            .Concat(Housing(practice, flock.Housing.Lambing, house))
            .Concat(Lambing(flock));
    }

    private static IEnumerable<JobRule> Feeding(Practice practice, bool buckets)
    {
        if (buckets)
        {
            yield return On(JobKind.BucketsOut, JobAnchor.FirstDue, -7 * practice.FeedWeeksBeforeLambing.Twin, JobReason.WithTheFeeding);
        }

        yield return On(
            JobKind.HeavyRounds, JobAnchor.FirstDue, -7 * practice.ChecksPerDay.HeavyFromWeeksBeforeLambing, JobReason.HeavyEweOnHerBack);
    }

    private static IEnumerable<JobRule> LookOvers() =>
        from weeks in (int[])[8, 4]
        select Work(JobKind.LookOver, new((-7 * weeks) - 4, -7 * weeks, (-7 * weeks) + 4), JobReason.ConditionBeforeLambing, FigureSource.LookOver);

    private static IEnumerable<JobRule> Housing(Practice practice, LambingPlace lambing, JobWindow house)
    {
        var indoors = lambing == LambingPlace.Indoors;
        if (indoors)
        {
            yield return Work(JobKind.FlukeAndWorms, ByHousing(house), JobReason.CleanOfWormsWhenHoused) with { Handled = false };
            yield return Work(JobKind.House, house, JobReason.SettledBeforeLambing);
        }

        // Jobs with one window have one day: ewes dagged or shorn at housing are gathered once.
        switch (practice.Dag)
        {
            case Dagging.AtHousing:
                yield return Work(JobKind.Dag, house, indoors ? JobReason.GatheredOnceWithHousing : JobReason.CleanTeat);
                break;
            case Dagging.BeforeHousing:
                yield return Work(JobKind.Dag, ByHousing(house), indoors ? JobReason.CleanWhenHoused : JobReason.CleanTeat);
                break;
        }

        // Ewes shorn in winter must stay in, so where they lamb outdoors there is no such job: the plan warns of it.
        if (practice.Shear == Shearing.AtHousing && indoors)
        {
            yield return Work(JobKind.Shear, house, JobReason.GatheredOnceWithHousing, FigureSource.WinterShearing);
        }
    }

    private static IEnumerable<JobRule> Lambing(Flock flock)
    {
        yield return On(JobKind.FirstDue, JobAnchor.FirstDue, 0, JobReason.Gestation, FigureSource.FlockFileMatings);
        yield return On(JobKind.RingAndTag, JobAnchor.FirstDue, 1, JobReason.LocalRulesSetTheDay);
        if (flock.Housing.Lambing == LambingPlace.Indoors)
        {
            yield return On(JobKind.Turnout, JobAnchor.FirstDue, flock.Housing.TurnoutDaysAfterLambing, JobReason.LambsFitForGrass);
        }

        yield return On(JobKind.LastDue, JobAnchor.LastDue, 0, JobReason.Gestation, FigureSource.FlockFileMatings);
        if (flock.Practice.Shear == Shearing.AfterLambing)
        {
            yield return Work(JobKind.Shear, new(21, 28, 56), JobReason.LambsOnTheirFeet) with { Anchor = JobAnchor.LastDue };
        }
    }

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
