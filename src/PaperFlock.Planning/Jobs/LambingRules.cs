using PaperFlock.Flocks;
using PaperFlock.Languages;
using PaperFlock.Planning.Dates;
using static PaperFlock.Planning.Jobs.JobSources;

namespace PaperFlock.Planning.Jobs;

/// <summary>The calendar of late pregnancy, hung on the day the first lambs are due.</summary>
internal static class LambingRules
{

    private static readonly JobWindow AfterLambing = new(21, 28, 56);

    public static IEnumerable<JobRule> For(Practice practice, LambingPlace lambing, bool buckets, Language language)
    {
        var house = new JobWindow(-10, -7, -5).MovedTo(-practice.HouseDaysBeforeLambing);
        return Feeding(practice, buckets, language)
            .Append(Booster(practice, language))
            .Append(ShedReady(house, lambing, language))
            .Concat(Housing(practice, lambing, house, language))
            .Concat(Lambing(practice, language));
    }

    private static IEnumerable<JobRule> Feeding(Practice practice, bool buckets, Language language)
    {
        var feedFrom = -7 * practice.FeedWeeksBeforeLambing;
        yield return JobRule.Fixed(
            JobIds.FeedFrom, language.Say("Start feeding"), JobAnchor.FirstDue, feedFrom, handled: false,
            language.Say($"{Before(feedFrom, language)}, when the lambs begin to do most of their growing"),
            language.Say("common practice; RHET: 6 to 8 weeks before lambing"));
        if (buckets)
        {
            yield return JobRule.Fixed(
                JobIds.BucketsOut, language.Say("Buckets out"), JobAnchor.FirstDue, feedFrom, handled: false,
                language.Say($"{Before(feedFrom, language)}, with the feeding"), CommonPractice(language));
        }

        var twoFeeds = -7 * practice.TwoFeedsWeeksBeforeLambing;
        yield return JobRule.Fixed(
            JobIds.TwoFeeds, language.Say("Two feeds a day"), JobAnchor.FirstDue, twoFeeds, handled: false,
            language.Say($"{Before(twoFeeds, language)}: she has less room, so feed little and often"), CommonPractice(language));

        var heavy = -7 * practice.ChecksPerDay.HeavyFromWeeksBeforeLambing;
        yield return JobRule.Fixed(
            JobIds.HeavyRounds, language.Plural(practice.ChecksPerDay.Heavy, $"{practice.ChecksPerDay.Heavy} round a day", $"{practice.ChecksPerDay.Heavy} rounds a day"), JobAnchor.FirstDue, heavy, handled: false,
            language.Say($"{Before(heavy, language)}: a heavy ewe on her back cannot right herself"), CommonPractice(language));
    }

    private static JobRule Booster(Practice practice, Language language)
    {
        var (first, last) = practice.BoosterWeeksBeforeLambing;
        var middle = (-7 * first) + (7 * (first - last) / 2);
        return new(
            JobIds.Booster, language.Say("Booster, as vet advised"), JobAnchor.FirstDue, new(-7 * first, middle, -7 * last), Handled: true,
            language.Say($"{Before(middle, language)}, so that her first milk carries it to her lambs; handle her standing"),
            language.Say("Teagasc, reported by Agriland: 4 to 6 weeks before lambing; the label and the vet come first"));
    }

    /// <summary>Ready by the first day they may come in, so it gives way when housing is set earlier than usual.</summary>
    private static JobRule ShedReady(JobWindow house, LambingPlace lambing, Language language)
    {
        var window = ByHousing(house);
        return new(
            JobIds.ShedReady, lambing == LambingPlace.Indoors ? language.Say("Shed and lambing kit ready") : language.Say("Lambing field and kit ready"),
            JobAnchor.FirstDue, window, Handled: false, language.Say($"{Before(window.Best, language)}, in case she is early"), CommonPractice(language));
    }

    private static IEnumerable<JobRule> Housing(Practice practice, LambingPlace lambing, JobWindow house, Language language)
    {
        var indoors = lambing == LambingPlace.Indoors;
        if (indoors)
        {
            yield return new(
                JobIds.House, language.Say("House"), JobAnchor.FirstDue, house, Handled: true,
                language.Say($"{Before(house.Best, language)}, so that they are settled before lambs come"), CommonPractice(language));
        }

        switch (practice.Dag)
        {
            case Dagging.AtHousing when indoors:
                yield return new(
                    JobIds.Dag, language.Say("Dag"), JobAnchor.FirstDue, house, Handled: true,
                    language.Say("with housing, so that they are gathered once; handle her standing"), CommonPractice(language), RidesWith: JobIds.House);
                break;
            case Dagging.AtHousing:
                yield return new(
                    JobIds.Dag, language.Say("Dag before lambing"), JobAnchor.FirstDue, house, Handled: true,
                    language.Say($"{Before(house.Best, language)}, so that lambs find a clean teat; handle her standing"), CommonPractice(language));
                break;
            case Dagging.BeforeHousing:
                var window = ByHousing(house);
                yield return new(
                    JobIds.Dag, indoors ? language.Say("Dag before housing") : language.Say("Dag before lambing"), JobAnchor.FirstDue, window, Handled: true,
                    language.Say($"{Before(window.Best, language)}, so that they go in clean; handle her standing"), CommonPractice(language));
                break;
        }

        // Ewes shorn in winter must stay in, so where they lamb outdoors there is no such job: the plan warns of it.
        if (practice.Shear == Shearing.AtHousing && indoors)
        {
            yield return new(
                JobIds.Shear, language.Say("Shear"), JobAnchor.FirstDue, house, Handled: true,
                language.Say("with housing, so that they are gathered once; handle her standing"),
                language.Say("Teagasc, reported by Agriland: shorn ewes stay housed for at least 8 weeks"), RidesWith: JobIds.House);
        }
    }

    private static IEnumerable<JobRule> Lambing(Practice practice, Language language)
    {
        yield return JobRule.Fixed(
            JobIds.FirstDue, language.Say("First lambs due"), JobAnchor.FirstDue, 0, handled: false,
            language.Say("gestation length after the first day any could have been mated"), DueSource(language));
        yield return JobRule.Fixed(
            JobIds.LastDue, language.Say("Last lambs due"), JobAnchor.LastDue, 0, handled: false,
            language.Say("gestation length after the last day any could have been mated"), DueSource(language));
        if (practice.Shear == Shearing.AfterLambing)
        {
            yield return new(
                JobIds.Shear, language.Say("Shear"), JobAnchor.LastDue, AfterLambing, Handled: true,
                language.Say($"{DateWords.Span(AfterLambing.Best, language)} after the last is due, with the lambs on their feet"), CommonPractice(language));
        }
    }

    private static JobWindow ByHousing(JobWindow house)
    {
        var latest = Math.Min(-10, house.Earliest);
        var best = Math.Min(-14, latest);
        return new(best - 7, best, latest);
    }

    private static string Before(int days, Language language) =>
        days < 0 ? language.Say($"{DateWords.Span(-days, language)} before the first is due") : language.Say("when the first is due");

    private static string DueSource(Language language) => language.Say("gestation length and mating dates of the flock file");
}
