using PaperFlock.Flocks;
using PaperFlock.Planning.Dates;
using PaperFlock.Planning.Text;
using static PaperFlock.Planning.Jobs.JobSources;

namespace PaperFlock.Planning.Jobs;

/// <summary>The calendar of late pregnancy, hung on the day the first lambs are due.</summary>
internal static class LambingRules
{

    private static readonly JobWindow AfterLambing = new(21, 28, 56);

    public static IEnumerable<JobRule> For(Practice practice, LambingPlace lambing, bool buckets)
    {
        var house = new JobWindow(-10, -7, -5).MovedTo(-practice.HouseDaysBeforeLambing);
        return Feeding(practice, buckets)
            .Append(Booster(practice))
            .Append(ShedReady(house, lambing))
            .Concat(Housing(practice, lambing, house))
            .Concat(Lambing(practice));
    }

    private static IEnumerable<JobRule> Feeding(Practice practice, bool buckets)
    {
        var feedFrom = -7 * practice.FeedWeeksBeforeLambing.Twin;
        if (buckets)
        {
            yield return JobRule.Fixed(
                JobIds.BucketsOut, "Buckets out", JobAnchor.FirstDue, feedFrom, handled: false,
                $"{Before(feedFrom)}, with the feeding", CommonPractice());
        }

        var heavy = -7 * practice.ChecksPerDay.HeavyFromWeeksBeforeLambing;
        yield return JobRule.Fixed(
            JobIds.HeavyRounds, English.Plural(practice.ChecksPerDay.Heavy, $"{practice.ChecksPerDay.Heavy} round a day", $"{practice.ChecksPerDay.Heavy} rounds a day"), JobAnchor.FirstDue, heavy, handled: false,
            $"{Before(heavy)}: a heavy ewe on her back cannot right herself", CommonPractice());
    }

    private static JobRule Booster(Practice practice)
    {
        var (first, last) = practice.BoosterWeeksBeforeLambing;
        var middle = (-7 * first) + (7 * (first - last) / 2);
        return new(
            JobIds.Booster, "Booster, as vet advised", JobAnchor.FirstDue, new(-7 * first, middle, -7 * last), Handled: true,
            $"{Before(middle)}, so that her first milk carries it to her lambs; handle her standing",
            "Teagasc, reported by Agriland: 4 to 6 weeks before lambing; the label and the vet come first");
    }

    /// <summary>Ready by the first day they may come in, so it gives way when housing is set earlier than usual.</summary>
    private static JobRule ShedReady(JobWindow house, LambingPlace lambing)
    {
        var window = ByHousing(house);
        return new(
            JobIds.ShedReady, lambing == LambingPlace.Indoors ? "Shed and lambing kit ready" : "Lambing field and kit ready",
            JobAnchor.FirstDue, window, Handled: false, $"{Before(window.Best)}, in case she is early", CommonPractice());
    }

    private static IEnumerable<JobRule> Housing(Practice practice, LambingPlace lambing, JobWindow house)
    {
        var indoors = lambing == LambingPlace.Indoors;
        if (indoors)
        {
            yield return new(
                JobIds.House, "House", JobAnchor.FirstDue, house, Handled: true,
                $"{Before(house.Best)}, so that they are settled before lambs come", CommonPractice());
        }

        switch (practice.Dag)
        {
            case Dagging.AtHousing when indoors:
                yield return new(
                    JobIds.Dag, "Dag", JobAnchor.FirstDue, house, Handled: true,
                    "with housing, so that they are gathered once; handle her standing", CommonPractice(), RidesWith: JobIds.House);
                break;
            case Dagging.AtHousing:
                yield return new(
                    JobIds.Dag, "Dag before lambing", JobAnchor.FirstDue, house, Handled: true,
                    $"{Before(house.Best)}, so that lambs find a clean teat; handle her standing", CommonPractice());
                break;
            case Dagging.BeforeHousing:
                var window = ByHousing(house);
                yield return new(
                    JobIds.Dag, indoors ? "Dag before housing" : "Dag before lambing", JobAnchor.FirstDue, window, Handled: true,
                    $"{Before(window.Best)}, so that they go in clean; handle her standing", CommonPractice());
                break;
        }

        // Ewes shorn in winter must stay in, so where they lamb outdoors there is no such job: the plan warns of it.
        if (practice.Shear == Shearing.AtHousing && indoors)
        {
            yield return new(
                JobIds.Shear, "Shear", JobAnchor.FirstDue, house, Handled: true,
                "with housing, so that they are gathered once; handle her standing",
                "Teagasc, reported by Agriland: shorn ewes stay housed for at least 8 weeks", RidesWith: JobIds.House);
        }
    }

    private static IEnumerable<JobRule> Lambing(Practice practice)
    {
        yield return JobRule.Fixed(
            JobIds.FirstDue, "First lambs due", JobAnchor.FirstDue, 0, handled: false,
            "gestation length after the first day any could have been mated", DueSource());
        yield return JobRule.Fixed(
            JobIds.LastDue, "Last lambs due", JobAnchor.LastDue, 0, handled: false,
            "gestation length after the last day any could have been mated", DueSource());
        if (practice.Shear == Shearing.AfterLambing)
        {
            yield return new(
                JobIds.Shear, "Shear", JobAnchor.LastDue, AfterLambing, Handled: true,
                $"{DateWords.Span(AfterLambing.Best)} after the last is due, with the lambs on their feet", CommonPractice());
        }
    }

    private static JobWindow ByHousing(JobWindow house)
    {
        var latest = Math.Min(-10, house.Earliest);
        var best = Math.Min(-14, latest);
        return new(best - 7, best, latest);
    }

    private static string Before(int days) =>
        days < 0 ? $"{DateWords.Span(-days)} before the first is due" : "when the first is due";

    private static string DueSource() => "gestation length and mating dates of the flock file";
}
