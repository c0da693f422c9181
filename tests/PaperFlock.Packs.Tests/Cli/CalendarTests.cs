using System.Text;
using Ical.Net;
using Ical.Net.CalendarComponents;
using NodaTime;
using PaperFlock.Cli;
using PaperFlock.Flocks.Reading;
using PaperFlock.Packs.Calendar;
using PaperFlock.Planning;
using PaperFlock.Sheets;

namespace PaperFlock.Packs.Tests.Cli;

/// <summary>Read back with Ical.Net, which shares no code with the writer; the lines themselves are held to RFC 5545.</summary>
public sealed class CalendarTests
{
    /// <summary>Away over all of the scan's window, 24 to 29 October, and a title with everything that must be escaped.</summary>
    private const string Awkward = Samples.TwoEwes +
        """


        keeper-days:
          away: [{from: 2026-10-20, to: 2026-11-02, sitter: Tom Birkett, phone: 01632 960 303}]
        jobs:
          - {title: 'Drench, as vet advised; see C:\notes', on: 2026-12-05}
          - {title: 'Ŵyna: ŵyŷ ŷŵŵŷ ŵŷâô ŷŵôû ŵŷîê ŷŵŵŷ ŵŷâô ŷŵôû ŵŷîê ŷŵŵŷ ŵŷ', on: 2026-12-06}
        """;

    [Theory]
    [InlineData("hollin-bank", "2026-11-25")]
    [InlineData("kanuka-flat", "2027-06-20")]
    public void Every_job_is_an_event_that_lasts_its_day(string sample, string asOf)
    {
        var plan = Plan(File.ReadAllText(Path.Combine(Samples.Root, "flocks", sample + ".yaml")), Day(asOf));
        var events = Read(JobCalendar.Of(plan)).Events;
        Assert.Equal(plan.Jobs.Length, events.Count);
        foreach (var (job, read) in plan.Jobs.Zip(events))
        {
            Assert.Equal(CalendarText.Summary(plan, job), read.Summary);
            Assert.Equal(CalendarText.Description(plan, job), read.Description);
            Assert.Contains(JobText.Why(job, plan), read.Description, StringComparison.Ordinal);
            Assert.True(read.IsAllDay);
            Assert.Equal(job.ShownOn.ToDateOnly(), read.Start!.Date);
            // RFC 5545, section 3.6.1: the end is not included.
            Assert.Equal(job.ShownOn.PlusDays(1).ToDateOnly(), read.End!.Date);
        }
    }

    [Fact]
    public void No_two_events_share_a_uid()
    {
        var events = Read(JobCalendar.Of(Plan(File.ReadAllText(Samples.HollinBank), new(2026, 11, 25)))).Events;
        Assert.Equal(events.Count, events.Select(e => e.Uid).Distinct(StringComparer.Ordinal).Count());
    }

    /// <summary>The tup goes in a week later, the keeper is away over the scan, and a ewe is marked: all days move, no job becomes another.</summary>
    [Fact]
    public void A_changed_flock_moves_its_jobs_and_doubles_none()
    {
        var before = Plan(Awkward, new(2026, 8, 1));
        var after = Plan(Awkward.Replace("tup-in: 2026-08-10", "tup-in: 2026-08-12", StringComparison.Ordinal).Replace("to: 2026-11-02", "to: 2026-10-25", StringComparison.Ordinal), new(2026, 8, 20));
        var old = Read(JobCalendar.Of(before)).Events.ToDictionary(e => e.Uid!, StringComparer.Ordinal);
        var now = Read(JobCalendar.Of(after)).Events.ToDictionary(e => e.Uid!, StringComparer.Ordinal);
        Assert.Equal(old.Keys.Order(StringComparer.Ordinal), now.Keys.Order(StringComparer.Ordinal));
        Assert.All(now, e => Assert.Equal(Bare(old[e.Key]), Bare(e.Value)));
        Assert.Contains(now, e => old[e.Key].Start!.Date != e.Value.Start!.Date);
        // RFC 5545, section 3.8.7.4: the later revision has the higher number.
        Assert.All(now, e => Assert.True(e.Value.Sequence > old[e.Key].Sequence));
    }

    [Fact]
    public void Another_season_or_holding_has_other_uids()
    {
        var uids = JobIdentities.Of(Plan(Samples.TwoEwes, new(2026, 8, 1)));
        var nextYear = JobIdentities.Of(Plan(Samples.TwoEwes.Replace("2026", "2027", StringComparison.Ordinal), new(2026, 8, 1)));
        var elsewhere = JobIdentities.Of(Plan(Samples.TwoEwes.Replace("Hollin Bank", "Far Bank", StringComparison.Ordinal), new(2026, 8, 1)));
        Assert.Empty(uids.Intersect(nextYear));
        Assert.Empty(uids.Intersect(elsewhere));
    }

    [Fact]
    public void A_job_without_a_day_is_kept_and_marked()
    {
        var plan = Plan(Awkward, new(2026, 8, 1));
        var scan = Read(JobCalendar.Of(plan)).Events.Single(e => e.Summary!.EndsWith("Scan the ewes", StringComparison.Ordinal));
        Assert.Equal("NO DAY YET: Scan the ewes", scan.Summary);
        Assert.Equal(EventStatus.Tentative, scan.Status);
        // 75 days after 10 August, by the calendar.
        Assert.Equal(new DateOnly(2026, 10, 24), scan.Start!.Date);
        Assert.Contains("the nearest day that would do is", scan.Description, StringComparison.Ordinal);
    }

    [Fact]
    public void Dates_of_revision_are_the_as_of_day_and_never_the_clock()
    {
        var read = Read(JobCalendar.Of(Plan(Samples.TwoEwes, new(2026, 11, 25)))).Events;
        Assert.All(read, e => Assert.Equal(new DateTime(2026, 11, 25, 0, 0, 0, DateTimeKind.Utc), e.DtStamp!.AsUtc));
        Assert.All(read, e => Assert.Equal(new DateTime(2026, 11, 25, 0, 0, 0, DateTimeKind.Utc), e.LastModified!.AsUtc));
    }

    /// <summary>RFC 5545, section 3.1: CRLF, at most 75 octets without it, no character cut in two.</summary>
    [Fact]
    public void Lines_are_folded_at_75_octets_between_characters()
    {
        var bytes = JobCalendar.Of(Plan(Awkward, new(2026, 8, 1)));
        var text = new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(bytes);
        Assert.EndsWith("END:VCALENDAR\r\n", text, StringComparison.Ordinal);
        var lines = text.Split("\r\n");
        Assert.All(lines, l => Assert.DoesNotContain('\n', l));
        Assert.All(lines, l => Assert.True(Encoding.UTF8.GetByteCount(l) <= 75, l));
        Assert.Contains(lines, l => Encoding.UTF8.GetByteCount(l) >= 74 && l.Any(c => c > 0x7F));
        Assert.DoesNotContain('\uFFFD', text);
    }

    [Fact]
    public void What_must_be_escaped_comes_back_as_it_was()
    {
        var summaries = Read(JobCalendar.Of(Plan(Awkward, new(2026, 8, 1)))).Events.Select(e => e.Summary).ToList();
        Assert.Contains(@"Drench, as vet advised; see C:\notes", summaries);
        Assert.Contains("Ŵyna: ŵyŷ ŷŵŵŷ ŵŷâô ŷŵôû ŵŷîê ŷŵŵŷ ŵŷâô ŷŵôû ŵŷîê ŷŵŵŷ ŵŷ", summaries);
    }

    [Fact]
    public void Nobodys_name_or_number_is_in_it()
    {
        var text = Encoding.UTF8.GetString(JobCalendar.Of(Plan(Awkward, new(2026, 8, 1))));
        Assert.DoesNotContain("Birkett", text, StringComparison.Ordinal);
        Assert.DoesNotContain("01632", text, StringComparison.Ordinal);
    }

    [Fact]
    public void The_command_writes_it_where_it_is_told_and_the_same_bytes_each_time()
    {
        using var bench = new Workbench();
        var flock = bench.Write("flock.yaml", Awkward);
        var outcome = bench.Run("calendar", flock, "--as-of", "2026-10-01", "--out", "one");
        Assert.Equal(ExitStatus.Clean, outcome.Status);
        Assert.Matches("^wrote one.flock\\.ics: [0-9]+ jobs, 1 of them without a day: marked, and put where they would best be done\nNext: open it with your calendar[^\n]*\n$", outcome.Out);
        bench.Now += Duration.FromDays(3);
        bench.Run("calendar", flock, "--as-of", "2026-10-01", "--out", "two");
        Assert.Equal(File.ReadAllBytes(bench.PathOf("one/flock.ics")), File.ReadAllBytes(bench.PathOf("two/flock.ics")));
    }

    [Fact]
    public void A_flock_file_called_like_its_calendar_is_not_written_over()
    {
        using var bench = new Workbench();
        var outcome = bench.Run("calendar", bench.Write("flock.ics", Samples.TwoEwes));
        Assert.Equal(ExitStatus.WrongUse, outcome.Status);
        Assert.Contains("that is your flock file", outcome.Error, StringComparison.Ordinal);
        Assert.Equal(Samples.TwoEwes, File.ReadAllText(bench.PathOf("flock.ics")));
    }

    private static string Bare(CalendarEvent read) => read.Summary!.Replace("NO DAY YET: ", string.Empty, StringComparison.Ordinal);

    private static Ical.Net.Calendar Read(byte[] bytes) => Ical.Net.Calendar.Load(Encoding.UTF8.GetString(bytes))!;

    private static SeasonPlan Plan(string flock, LocalDate asOf)
    {
        var reading = FlockReader.Read("flock.yaml", Encoding.UTF8.GetBytes(flock));
        return SeasonPlanner.Plan(reading.Flock ?? throw new InvalidOperationException(string.Join('\n', reading.Diagnostics)), asOf);
    }

    private static LocalDate Day(string text) => NodaTime.Text.LocalDatePattern.Iso.Parse(text).Value;
}
