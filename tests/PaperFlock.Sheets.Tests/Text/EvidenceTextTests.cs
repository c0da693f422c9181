using PaperFlock.Flocks;
using PaperFlock.Planning;
using PaperFlock.Planning.Tests;

namespace PaperFlock.Sheets.Tests.Text;

public sealed class EvidenceTextTests
{
    [Theory]
    [InlineData("", null, "no mark seen; tup in Mon 10 Aug to Mon 21 Sep")]
    [InlineData("", ScanStage.Early, "no mark; scanner said early")]
    [InlineData("", ScanStage.Late, "no mark; scanner said late")]
    [InlineData("2026-08-14", null, "marked Fri 14 Aug")]
    [InlineData("2026-08-14", ScanStage.Late, "marked Fri 14 Aug")]
    [InlineData("2026-08-14 2026-08-31", null, "marked again Mon 31 Aug")]
    [InlineData("2026-08-14 2026-08-31", ScanStage.Early, "marked Fri 14 Aug; scanner said early")]
    [InlineData("2026-08-14 2026-08-31", ScanStage.Late, "marked again Mon 31 Aug; scanner said late")]
    public void The_evidence_is_said_in_a_shepherds_words(string marks, ScanStage? stage, string words) =>
        Assert.Equal(words, EvidenceText.Of(Plan(Sample.Flock(Sample.Ewe(marks: marks, scan: 2, stage: stage))).Ewes[0].Due!.Evidence));

    [Fact]
    public void A_day_of_mating_is_its_own_evidence() => Assert.Equal(
        "mated Fri 14 Aug", EvidenceText.Of(Plan(Sample.Flock([Sample.OneDay("P", Sample.Day("2026-08-14"))], Sample.Ewe(group: "P"))).Ewes[0].Due!.Evidence));

    [Theory]
    [InlineData("2026-08-14", 2, 2.5, "147 days from Fri 14 Aug is Fri 8 Jan. Two ewes in three lamb within 2.5 days of that, before or after.")]
    [InlineData("2026-08-12", 1, 0, "147 days from Wed 12 Aug is Wed 6 Jan. With 1 lamb she is planned at 148 days, 1 day more.")]
    [InlineData("2026-08-14", 3, 2.5, "147 days from Fri 14 Aug is Fri 8 Jan. With 3 lambs she is planned at 146 days, 1 day less. Two ewes in three lamb within 2.5 days of that, before or after.")]
    [InlineData("2026-08-14", 2, 0, "147 days from Fri 14 Aug is Fri 8 Jan.")]
    // Nobody knows which day, so how far off it she may lamb is not worth saying.
    [InlineData("", 2, 2.5, "Any day from Mon 10 Aug to Mon 21 Sep may be the one; 147 days on from those is Mon 4 Jan to Mon 15 Feb.")]
    public void A_due_window_says_how_it_was_counted(string marks, int scan, double spread, string words)
    {
        var practice = Sample.Practice() with { GestationSpreadDays = (decimal)spread };
        var ewe = Plan(Sample.Flock(Sample.Ewe(marks: marks, scan: scan)) with { Practice = practice }).Ewes[0];

        Assert.Equal(words, EvidenceText.Counted(ewe.Due!, ewe.Ewe, practice));
    }

    [Fact]
    public void A_groups_days_name_the_ewe_who_sets_them_where_every_day_is_known()
    {
        var due = Plan(Sample.Flock(Sample.Ewe("Bracken", marks: "2026-08-14"), Sample.Ewe("Sorrel", marks: "2026-08-12"))).Groups[0].Due!;

        Assert.Equal("the first of its ewes is Sorrel, marked Wed 12 Aug, and 147 days on from there; the day is known for every ewe of the group", EvidenceText.First(due.First));
        Assert.Equal("the last of its ewes is Bracken, marked Fri 14 Aug, and 147 days on from there; the day is known for every ewe of the group", EvidenceText.Last(due.Last));
    }

    [Theory]
    [InlineData(1, "of 2 ewes 1 has no mark and no day of mating, so any day with the tup may be the one")]
    [InlineData(2, "of 3 ewes 2 have no mark and no day of mating, so any day with the tup may be the one")]
    public void A_groups_days_name_the_tups_stay_and_how_many_ewes_are_not_known(int unsure, string words)
    {
        var ewes = Enumerable.Range(1, unsure).Select(i => Sample.Ewe($"Fern {i}")).Append(Sample.Ewe(marks: "2026-08-14"));
        var due = Plan(Sample.Flock([.. ewes])).Groups[0].Due!;

        Assert.Equal($"the tup goes in on Mon 10 Aug, and 147 days on from there; {words}", EvidenceText.First(due.First));
        Assert.Equal($"the tup comes out on Mon 21 Sep, and 147 days on from there; {words}", EvidenceText.Last(due.Last));
    }

    private static SeasonPlan Plan(Flock flock) => SeasonPlanner.Plan(flock, Sample.Day("2026-11-01"));
}
