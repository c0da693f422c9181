using System.Text;
using NodaTime;
using PaperFlock.Diagnostics;

namespace PaperFlock.Flocks.Tests;

public class SampleFlockTests
{
    public static TheoryData<string> Names => [.. Samples.Good];

    [Theory]
    [MemberData(nameof(Names))]
    public void The_samples_are_read_without_a_word(string name)
    {
        var reading = Samples.Read(name);
        Assert.Equal("", DiagnosticRenderer.Render(reading.Source, reading.Diagnostics));
        Assert.NotNull(reading.Flock);
    }

    /// <summary>On the days the sample packs are made.</summary>
    [Theory]
    [InlineData("hollin-bank", "2026-11-25")]
    [InlineData("kanuka-flat", "2027-06-20")]
    [InlineData("smallest", "2026-11-25")]
    public void Nor_is_there_a_word_of_what_has_been_seen_by_its_day(string name, string asOf) =>
        Assert.Empty(Samples.Codes(Encoding.UTF8.GetString(Samples.Bytes(name)), asOf));

    [Fact]
    public void Hollin_Bank_is_what_it_is_meant_to_show()
    {
        var flock = Samples.Read("hollin-bank").Flock!;
        Assert.Equal(24, flock.Ewes.Length);
        Assert.Equal(new LocalDate(2027, 1, 4), flock.Season.TupIn.PlusDays(flock.Season.GestationDays));
        Assert.Equal(["Bramley", "Damson"], flock.Groups.Select(g => g.Tup));
        Assert.Equal([2, 7, 11, 2], new[] { 0, 1, 2, 3 }.Select(lambs => flock.Ewes.Count(e => e.Scan == lambs)));
        Assert.Equal([16, 17], flock.Ewes.Where(e => e.Marks.Length == 2).Select(e => Period.DaysBetween(e.Marks[0], e.Marks[1])).Order());
        Assert.Single(flock.Ewes, e => e.Scan is not null && e.Marks.IsEmpty);
        Assert.Equal(Toes.Lame, Assert.Single(flock.Ewes, e => e.Toes == Toes.Lame && e.Scan is null).Toes);
        Assert.Equal(Teats.Lumpy, Assert.Single(flock.Ewes, e => e.Teats == Teats.Lumpy && e.Scan is null).Teats);
        Assert.Equal("Tom Birkett", flock.KeeperDays.AbsenceOn(new LocalDate(2027, 1, 1))?.Sitter);
        Assert.All(flock.Ewes, e => Assert.InRange(e.Weight!.Value.Kilograms, 62, 84));
        // Bedded floor for a 70 kg ewe, 1.2 square metres: Teagasc, "Sheep housing space requirements". The 22 that went to the tup have room.
        Assert.True(flock.Housing.Pens.Sum(p => p.Length.Metres * p.Width.Metres) >= 22 * 1.2m);
    }

    [Fact]
    public void Kanuka_Flat_is_the_other_half_of_the_world()
    {
        var flock = Samples.Read("kanuka-flat").Flock!;
        Assert.Equal(30, flock.Ewes.Length);
        Assert.True(flock.Holding.IsSouthern);
        Assert.Equal(new LocalDate(2027, 3, 31), flock.Season.TupIn);
        Assert.Equal(LambingPlace.Outdoors, flock.Housing.Lambing);
        Assert.Equal((Paper.Letter, PlannerPaper.Tabloid, UnitSystem.Imperial, Binding.ThreeHole), (flock.Print.Paper, flock.Print.Planner, flock.Print.Units, flock.Print.Binding));
        Assert.Contains(flock.Ewes, e => e.Scan is null);
        Assert.Contains(flock.Ewes, e => e.Scan is not null);
        Assert.Null(flock.Feeds.Forage.Bale);
    }

    [Fact]
    public void Nobody_in_the_samples_is_real()
    {
        foreach (var name in new[] { "hollin-bank", "kanuka-flat", "smallest" })
        {
            var flock = Samples.Read(name).Flock!;
            Assert.All(flock.Ewes, e => Assert.StartsWith("ZZ", e.Tag, StringComparison.Ordinal));
            // Ranges kept for drama: Ofcom, "Telephone numbers for use in TV and radio drama programmes"; 555-0100 to 555-0199, NANPA.
            var phones = flock.Holding.Contacts.Select(c => c.Phone).Concat(flock.KeeperDays.Away.Select(a => a.Phone)).OfType<string>();
            Assert.All(phones, p => Assert.Matches("^(01632 960 [0-9]{3}|555-01[0-9]{2})$", p));
        }
    }
}
