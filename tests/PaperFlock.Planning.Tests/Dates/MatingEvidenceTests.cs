using NodaTime;
using PaperFlock.Flocks;
using PaperFlock.Planning.Dates;

namespace PaperFlock.Planning.Tests.Dates;

public class MatingEvidenceTests
{
    [Theory]
    [InlineData("", null, Evidence.TupStay, "2026-08-10", "2026-09-21", null, false)]
    [InlineData("", ScanStage.Early, Evidence.Scan, "2026-08-10", "2026-08-31", ScanStage.Early, false)]
    [InlineData("", ScanStage.Late, Evidence.Scan, "2026-08-31", "2026-09-21", ScanStage.Late, false)]
    [InlineData("2026-08-14", null, Evidence.Mark, "2026-08-14", "2026-08-14", null, false)]
    [InlineData("2026-08-14", ScanStage.Late, Evidence.Mark, "2026-08-14", "2026-08-14", null, false)]
    // Two marks in one heat: the last counts, and she has not come back.
    [InlineData("2026-08-14 2026-08-16", null, Evidence.Mark, "2026-08-16", "2026-08-16", null, false)]
    // A cycle later: she did not hold to the first.
    [InlineData("2026-08-14 2026-08-31", null, Evidence.Mark, "2026-08-31", "2026-08-31", null, true)]
    [InlineData("2026-08-14 2026-08-31", ScanStage.Early, Evidence.Mark, "2026-08-14", "2026-08-14", ScanStage.Early, false)]
    [InlineData("2026-08-14 2026-08-31", ScanStage.Late, Evidence.Mark, "2026-08-31", "2026-08-31", ScanStage.Late, true)]
    [InlineData("2026-08-14 2026-08-31 2026-09-17", null, Evidence.Mark, "2026-09-17", "2026-09-17", null, true)]
    public void The_strongest_evidence_dates_her(
        string marks, ScanStage? stage, Evidence kind, string first, string last, ScanStage? chose, bool again)
    {
        var evidence = MatingEvidence.Of(Sample.Ewe(marks: marks, stage: stage), Sample.Group(), Sample.Practice());

        Assert.Equal(new MatingEvidence(kind, Sample.Day(first), Sample.Day(last)) { Stage = chose, MarkedAgain = again }, evidence);
    }

    [Theory]
    [InlineData(Mating.Artificial)]
    [InlineData(Mating.Hand)]
    public void A_mating_on_one_day_beats_marks_and_scanner(Mating mating)
    {
        var day = new LocalDate(2026, 8, 14);
        var ewe = Sample.Ewe(marks: "2026-08-14", stage: ScanStage.Late);

        var evidence = MatingEvidence.Of(ewe, Sample.OneDay("Paddock", day, mating), Sample.Practice());

        Assert.Equal(new MatingEvidence(Evidence.Mating, day, day), evidence);
    }

    [Theory]
    // From the first mark of a heat, half a cycle of 17 days is 8 whole days.
    [InlineData("2026-08-14 2026-08-22", "2026-08-22")]
    [InlineData("2026-08-14 2026-08-23", "2026-08-14 2026-08-23")]
    [InlineData("2026-08-14 2026-08-16 2026-08-30 2026-09-01", "2026-08-16 2026-09-01")]
    [InlineData("", "")]
    public void Marks_a_few_days_apart_are_one_heat(string marks, string heats)
    {
        var found = Heats.Of(Sample.Ewe(marks: marks).Marks, cycleDays: 17);

        Assert.Equal(Sample.Ewe(marks: heats).Marks, found);
    }

    [Theory]
    [InlineData("2026-08-10", "2026-08-10", "2026-08-10", "2026-08-10")]
    [InlineData("2026-08-10", "2026-08-11", "2026-08-10", "2026-08-11")]
    [InlineData("2026-08-10", "2026-08-12", "2026-08-11", "2026-08-11")]
    [InlineData("2026-08-10", "2026-09-21", "2026-08-31", "2026-08-31")]
    public void The_halves_of_a_stay_cover_it_and_share_only_its_middle_day(string tupIn, string tupOut, string firstEnds, string secondStarts)
    {
        var group = Sample.Group(tupIn: Sample.Day(tupIn), tupOut: Sample.Day(tupOut));

        Assert.Equal(Sample.Day(firstEnds), TupStay.EndOfFirstHalf(group));
        Assert.Equal(Sample.Day(secondStarts), TupStay.StartOfSecondHalf(group));
    }
}
