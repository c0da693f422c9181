using NodaTime;
using PaperFlock.Flocks;
using PaperFlock.Planning.Dates;

namespace PaperFlock.Planning.Tests.Dates;

public class GroupDueDateTests
{
    [Fact]
    public void Until_every_ewe_is_marked_the_tups_stay_sets_first_and_last_due()
    {
        var flock = Sample.Flock(Sample.Ewe(marks: "2026-08-20"), Sample.Ewe("Fern"));

        Assert.Equal(Dates("2027-01-04", "2027-02-15"), Of(flock));
    }

    [Fact]
    public void Once_every_ewe_is_marked_the_marks_that_held_do()
    {
        var flock = Sample.Flock(Sample.Ewe(marks: "2026-08-14 2026-08-31"), Sample.Ewe("Fern", marks: "2026-08-20"));

        Assert.Equal(Dates("2027-01-14", "2027-01-25"), Of(flock));
    }

    [Fact]
    public void Ewes_empty_or_left_out_do_not_count()
    {
        var flock = Sample.Flock(
            Sample.Ewe(marks: "2026-08-20"),
            Sample.Ewe("Fern", scan: 0),
            Sample.Ewe("Sedge", marks: "2026-08-11") with { ToTup = false });

        Assert.Equal(Dates("2027-01-14", "2027-01-14"), Of(flock));
    }

    [Fact]
    public void A_ewe_that_has_lambed_still_holds_the_jobs_in_their_place()
    {
        var flock = Sample.Flock(
            Sample.Ewe(marks: "2026-08-11") with { Lambed = new LocalDate(2027, 1, 3) },
            Sample.Ewe("Fern", marks: "2026-08-20"));

        Assert.Equal(Dates("2027-01-05", "2027-01-14"), Of(flock));
    }

    [Fact]
    public void Breeds_with_their_own_gestation_widen_the_dates()
    {
        var flock = Sample.Flock(Sample.Ewe() with { Breed = "Finn" }, Sample.Ewe("Fern") with { Breed = "Merino" }) with
        {
            Breeds = [new Breed("Finn", 144, null), new Breed("Merino", 150, null)],
        };

        Assert.Equal(Dates("2027-01-01", "2027-02-18"), Of(flock));
    }

    [Fact]
    public void A_group_mated_on_one_day_is_due_on_one_day()
    {
        var flock = Sample.Flock(
            [Sample.OneDay("P", new LocalDate(2026, 8, 14))], Sample.Ewe(group: "P"), Sample.Ewe("Fern", group: "P"));

        Assert.Equal(Dates("2027-01-08", "2027-01-08"), Of(flock));
    }

    [Fact]
    public void Nothing_is_due_where_no_ewe_can_be_in_lamb()
    {
        Assert.Null(GroupOf(Sample.Flock(Sample.Ewe(scan: 0))));
        Assert.Null(GroupOf(Sample.Flock()));
    }

    [Fact]
    public void The_ewe_who_sets_a_day_is_known_where_every_mating_is()
    {
        var flock = Sample.Flock(Sample.Ewe(marks: "2026-08-14 2026-08-31"), Sample.Ewe("Fern", marks: "2026-08-20"));
        var due = GroupOf(flock)!;

        Assert.Equal(new GroupDueDay(Sample.Day("2026-08-20"), 147, flock.Ewes[1], new(Evidence.Mark, Sample.Day("2026-08-20"), Sample.Day("2026-08-20")), 2, 0), due.First);
        Assert.Equal(flock.Ewes[0], due.Last.Ewe);
        Assert.True(due.Last.Evidence!.MarkedAgain);
    }

    [Fact]
    public void Ewes_of_whom_no_day_is_known_are_counted()
    {
        var due = GroupOf(Sample.Flock(Sample.Ewe(marks: "2026-08-20"), Sample.Ewe("Fern"), Sample.Ewe("Sedge")))!;

        Assert.Equal(new GroupDueDay(Sample.TupIn, 147, null, null, Ewes: 3, Unsure: 2), due.First);
        Assert.Equal(new GroupDueDay(Sample.TupOut, 147, null, null, Ewes: 3, Unsure: 2), due.Last);
    }

    private static GroupDueDates? GroupOf(Flock flock) => GroupDueDates.Of(flock, flock.Groups[0], EwePlans.Of(flock));

    private static (LocalDate First, LocalDate Last) Of(Flock flock) => GroupOf(flock) is { } due ? (due.First.Day, due.Last.Day) : default;

    private static (LocalDate First, LocalDate Last) Dates(string first, string last) => (Sample.Day(first), Sample.Day(last));
}
