using PaperFlock.Flocks;
using PaperFlock.Planning;
using PaperFlock.Planning.Tests;

namespace PaperFlock.Sheets.Tests.Text;

/// <summary>Days are counted on a calendar: tup in Mon 10 Aug 2026 for six weeks, 147 days, a keeper with weekends, away from 27 December to 2 January.</summary>
public sealed class JobTextTests
{
    private static readonly Flock Demo = Sample.Flock(Sample.Ewe(), Sample.Ewe("Fern"));

    [Theory]
    [InlineData(JobKind.Scan, "75 days after the tup went in, when lambs can be counted.")]
    [InlineData(JobKind.Booster, "5 weeks before the first is due, so that her first milk carries it to her lambs; handle her standing; moved from Thu 10 Dec to save a gathering; one gathering with Feel the backs of the ewes.")]
    [InlineData(JobKind.AbortionVaccine, "9 weeks before the tup goes in: they must be given at least four weeks before; the nearest free day.")]
    [InlineData(JobKind.House, "1 week before the first is due, so that they are settled before lambs come; the nearest free day, as the keeper is away on Mon 28 Dec; one gathering with Dag the ewes.")]
    [InlineData(JobKind.Shear, "8 weeks before the tup goes in; the nearest free day; one gathering with Check teeth, toes, teats and condition of the ewes.")]
    [InlineData(JobKind.TeethToesTeats, "8 weeks before the tup goes in, so that there is time to mend feet and condition; the nearest free day; one gathering with Shear the ewes.")]
    [InlineData(JobKind.FeedFrom, "FEED-NOT-SCANNED-1 says so.")]
    [InlineData(JobKind.TupIn, "The keeper\u2019s date.")]
    [InlineData(JobKind.LastDue, "Gestation length after the last day any could have been mated.")]
    public void Each_job_says_why_it_is_on_its_day(JobKind kind, string why) => Assert.Equal(why, Why(Plan(Demo), kind));

    [Fact]
    public void Housing_on_the_day_the_first_is_due_is_said_so() => Assert.StartsWith(
        "When the first is due, so that they are settled",
        Why(Plan(Demo with { Practice = Sample.Practice() with { HouseDaysBeforeLambing = 0 } }), JobKind.House),
        StringComparison.Ordinal);

    [Theory]
    [InlineData("yellow orange", "Put in the tup, raddle yellow|Change the raddle on the tup to orange|Change the raddle on the tup to yellow")]
    [InlineData("blue", "Put in the tup, raddle blue|Put fresh blue raddle on the tup|Put fresh blue raddle on the tup")]
    [InlineData("", "Put in the tup")]
    public void A_colour_is_named_when_it_goes_on(string colours, string titles)
    {
        var group = Sample.Group() with { Raddle = [.. colours.Split(' ', StringSplitOptions.RemoveEmptyEntries)] };

        Assert.Equal(titles.Split('|'), Titles(Plan(Demo with { Groups = [group] }), JobKind.TupIn, JobKind.RaddleChange));
    }

    [Theory]
    [InlineData(Mating.Artificial, "Inseminate the ewes")]
    [InlineData(Mating.Hand, "Take the ewes to the tup")]
    public void A_mating_on_one_day_is_called_what_it_is(Mating mating, string title) => Assert.Equal(
        [title], Titles(Plan(Sample.Flock([Sample.OneDay("Paddock", Sample.TupIn, mating, "Damson")], Sample.Ewe(group: "Paddock"))), JobKind.TupIn));

    [Theory]
    [InlineData(LambingPlace.Indoors, Dagging.AtHousing, "Dag the ewes|Get the shed and lambing kit ready")]
    [InlineData(LambingPlace.Indoors, Dagging.BeforeHousing, "Dag the ewes|Get the shed and lambing kit ready")]
    [InlineData(LambingPlace.Outdoors, Dagging.AtHousing, "Dag the ewes|Get the lambing field and kit ready")]
    [InlineData(LambingPlace.Outdoors, Dagging.BeforeHousing, "Dag the ewes|Get the lambing field and kit ready")]
    public void Where_they_lamb_is_in_the_names(LambingPlace place, Dagging dagging, string titles) => Assert.Equal(
        titles.Split('|'),
        Titles(Plan(Demo with { Housing = Sample.Housing(place), Practice = Sample.Practice() with { Dag = dagging } }), JobKind.Dag, JobKind.ShedReady).Order());

    [Fact]
    public void Several_tups_are_told_apart_and_an_only_one_need_not_be()
    {
        var two = Plan(Sample.Flock(
            [Sample.Group("Orchard", tup: "Bramley"), Sample.Group("Paddock", tup: "Damson")], Sample.Ewe(group: "Orchard"), Sample.Ewe("Fern", "Paddock")));
        Assert.Equal(["Put in tup Bramley, raddle yellow", "Put in tup Damson, raddle yellow"], Titles(two, JobKind.TupIn));
        Assert.Equal(["Take out tup Bramley", "Take out tup Damson"], Titles(two, JobKind.TupOut));
        Assert.Equal("Scan Bramley\u2019s ewes", JobText.Title(two.Jobs.First(j => j.Kind == JobKind.Scan), two.Flock));
        Assert.EndsWith(", Give Damson\u2019s ewes their booster, as vet advised.", Why(two, JobKind.Booster), StringComparison.Ordinal);

        var one = Plan(Sample.Flock([Sample.Group("Orchard", tup: "Bramley")], Sample.Ewe(group: "Orchard")));
        Assert.Equal(["Check the tup", "Put in the tup, raddle yellow", "Take out the tup"], Titles(one, JobKind.TupCheck, JobKind.TupIn, JobKind.TupOut));
    }

    [Theory]
    [InlineData(1, "Go round once a day")]
    [InlineData(5, "Go round 5 times a day")]
    public void Heavy_rounds_are_counted(int heavy, string title) => Assert.Equal(
        [title], Titles(Plan(Demo with { Practice = Sample.Practice() with { ChecksPerDay = new ChecksPerDay(1, heavy, 6) } }), JobKind.HeavyRounds));

    [Theory]
    [InlineData(JobAnchor.TupIn, "the tup goes in")]
    [InlineData(JobAnchor.TupOut, "the tup comes out")]
    [InlineData(JobAnchor.Scan, "scanning")]
    [InlineData(JobAnchor.Feeding, "feeding starts")]
    [InlineData(JobAnchor.Housing, "housing")]
    [InlineData(JobAnchor.FirstDue, "the first is due")]
    [InlineData(JobAnchor.LastDue, "the last is due")]
    public void A_window_of_the_keepers_is_counted_from_its_anchor(JobAnchor anchor, string words) => Assert.StartsWith(
        $"The flock file asks for it 1 to 5 days after {words}", Own(Sample.Own("Footbath", anchor, 1, 5, handled: false)), StringComparison.Ordinal);

    [Theory]
    [InlineData(-21, -14, "21 to 14 days before scanning")]
    [InlineData(-7, -7, "7 days before scanning")]
    [InlineData(0, 0, "on the same day as scanning")]
    [InlineData(-3, 0, "3 to 0 days before scanning")]
    [InlineData(0, 5, "0 to 5 days after scanning")]
    [InlineData(-3, 1, "from 3 days before to 1 day after scanning")]
    public void A_window_of_the_keepers_is_said_in_words(int first, int last, string words) => Assert.StartsWith(
        $"The flock file asks for it {words}", Own(Sample.Own("Footbath", JobAnchor.Scan, first, last, handled: false)), StringComparison.Ordinal);

    [Theory]
    [InlineData(-50, -30, "kept out of the last six weeks, when no ewe is turned over")]
    [InlineData(-42, -30, "it falls in the last six weeks, so handle her standing")]
    [InlineData(-50, -43, null)]
    public void The_last_six_weeks_are_spoken_of_where_they_matter(int first, int last, string? words)
    {
        var why = Own(Sample.Own("Trim feet", JobAnchor.FirstDue, first, last));

        Assert.Equal(words is not null, why.Contains("six weeks", StringComparison.Ordinal));
        Assert.Contains(words ?? "", why, StringComparison.Ordinal);
    }

    [Fact]
    public void An_odd_day_is_explained()
    {
        // Wed 10 to Fri 12 June, a keeper with weekends; New Year's Eve, when he is away.
        Assert.Contains("nobody is free on any day of its window, so it is on one that is not", Own(Sample.Own("Drench", JobAnchor.TupIn, -61, -59)), StringComparison.Ordinal);
        Assert.Equal("The keeper\u2019s date; the keeper is away that day.", Own(Sample.OwnOn("Closed", "2026-12-31", handled: false)));
        var plan = Plan(Demo with { OwnJobs = [Sample.OwnOn("Visit", "2026-06-13")] });
        Assert.Contains("; moved from Mon 15 Jun to save a gathering; one gathering with Shear the ewes, Visit.", Why(plan, JobKind.TeethToesTeats), StringComparison.Ordinal);
        Assert.Equal("to save a gathering", JobText.Moved(plan.Jobs.Single(j => j.Kind == JobKind.TeethToesTeats)));
    }

    [Theory]
    [InlineData("A B C D E", "one gathering with B, C, D and 1 more.")]
    [InlineData("A B C D", "one gathering with B, C, D.")]
    public void A_gathering_for_many_jobs_names_three_others_and_counts_the_rest(string titles, string words) => Assert.EndsWith(
        words, Own([.. titles.Split(' ').Select(t => Sample.OwnOn(t, "2026-07-01"))]), StringComparison.Ordinal);

    [Theory]
    [InlineData(-61, -50, "2026-06-05", "2026-06-25", "The keeper is away on every day it may be done, Wed 10 Jun to Sun 21 Jun; the nearest day that would do is Sat 27 Jun.")]
    [InlineData(-61, -61, "2026-06-10", "2026-06-10", "The keeper is away on Wed 10 Jun, the one day it may be done; the nearest day that would do is Sun 7 Jun.")]
    [InlineData(-61, -61, "2024-01-01", "2029-12-31", "The keeper is away on Wed 10 Jun, the one day it may be done; no day within a year would do.")]
    public void A_job_that_fits_no_day_says_what_is_wrong(int first, int last, string from, string to, string words)
    {
        var plan = Plan(Demo with { OwnJobs = [Sample.Own("Drench", JobAnchor.TupIn, first, last)], KeeperDays = Sample.Free(Sample.Weekend, Sample.Away(from, to)) });
        var job = plan.Jobs.Single(j => j.Kind == JobKind.Own);

        Assert.Equal(words, JobText.Trouble(job));
        Assert.Contains("it has no day yet: the keeper is away for the whole of its window", JobText.Why(job, plan), StringComparison.Ordinal);
        Assert.Null(JobText.Trouble(plan.Jobs.First(j => j.IsFixed)));
    }

    [Theory]
    [InlineData(JobAnchor.TupIn, "the day the tup goes in", "the date in the flock file, or worked back from the day it wants lambs")]
    [InlineData(JobAnchor.Scan, "scanning", "75 days after the tup goes in on Mon 10 Aug")]
    [InlineData(JobAnchor.Feeding, "the day feeding starts", "6 weeks before the first is due: the tup goes in on Mon 10 Aug, and 147 days on")]
    [InlineData(JobAnchor.Housing, "housing", "7 days before the first is due: the tup goes in on Mon 10 Aug, and 147 days on")]
    [InlineData(JobAnchor.LastDue, "the day the last is due", "the tup comes out on Mon 21 Sep, and 147 days on")]
    public void What_a_window_is_counted_from_is_said_and_how_it_is_known(JobAnchor anchor, string day, string known)
    {
        var plan = Plan(Demo with { OwnJobs = [Sample.Own("Footbath", anchor, 1, 5)] });
        var job = plan.Jobs.Single(j => j.Kind == JobKind.Own);

        Assert.Equal(day, JobText.CountedFrom(job));
        Assert.StartsWith(known, JobText.KnownBy(job, plan), StringComparison.Ordinal);
    }

    [Fact]
    public void A_mating_on_one_day_is_what_jobs_are_counted_from()
    {
        var plan = Plan(Sample.Flock([Sample.OneDay("Paddock", Sample.TupIn)], Sample.Ewe(group: "Paddock")));

        Assert.Equal("the day of mating", JobText.CountedFrom(plan.Jobs.Single(j => j.Kind == JobKind.Scan)));
    }

    [Fact]
    public void Jobs_of_a_feed_chart_name_it()
    {
        var plan = Plan(Demo);
        Assert.Equal(["Start feeding: FEED-NOT-SCANNED-1", "Feed twice a day: FEED-NOT-SCANNED-1"], Titles(plan, JobKind.FeedFrom, JobKind.TwoFeeds));

        var job = plan.Jobs.Single(j => j.Kind == JobKind.FeedFrom);
        Assert.Equal("the day their weeks are counted back from", JobText.CountedFrom(job));
        Assert.Equal("the first of the ewes fed by FEED-NOT-SCANNED-1", JobText.KnownBy(job, plan));
    }

    [Fact]
    public void Sorting_is_done_by_the_scan()
    {
        var plan = Plan(Demo with { Fields = ClassFields.None with { Twins = "Far Meadow" }, Ewes = [.. Demo.Ewes.Select(e => e with { Scan = 2 })] });
        var job = plan.Jobs.Single(j => j.Kind == JobKind.Sort);

        Assert.Equal(plan.Jobs.Single(j => j.Kind == JobKind.Scan).ShownOn, job.ShownOn);
        Assert.Equal("Sort the ewes by lambs carried", JobText.Title(job, plan.Flock));
        Assert.Equal("The scan says who carries how many.", JobText.Why(job, plan));
        Assert.Equal(("scanning", "the day they are scanned"), (JobText.CountedFrom(job), JobText.KnownBy(job, plan)));
    }

    private static string Own(params OwnJob[] jobs) => Why(Plan(Demo with { OwnJobs = [.. jobs] }), JobKind.Own);

    private static string Why(SeasonPlan plan, JobKind kind) => JobText.Why(plan.Jobs.First(j => j.Kind == kind), plan);

    private static IEnumerable<string> Titles(SeasonPlan plan, params JobKind[] kinds) =>
        plan.Jobs.Where(j => kinds.Contains(j.Kind)).Select(j => JobText.Title(j, plan.Flock));

    private static SeasonPlan Plan(Flock flock) => SeasonPlanner.Plan(flock, Sample.Day("2026-05-01"));
}
