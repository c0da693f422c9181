using PaperFlock.Cli;

namespace PaperFlock.Packs.Tests.Cli;

/// <summary>By a watch that goes on only when it is told to.</summary>
public sealed class ProgressTests
{
    /// <summary>Steps of a kind, each as long as the first; the bar comes for what is left and not for what has been.</summary>
    [Theory]
    [InlineData(10, 0.5, 1, true)]
    [InlineData(10, 0.2, 1, false)]
    [InlineData(10, 9, 9, false)]
    [InlineData(10, 9, 7, true)]
    [InlineData(2, 60, 0, false)]
    public void A_bar_comes_when_more_than_two_seconds_of_work_are_left(int all, double seconds, int done, bool shown)
    {
        var watch = new Watch();
        Assert.Equal(shown, Show(watch, progress =>
        {
            progress.Begin("laying out", 0, all);
            watch.Now += TimeSpan.FromSeconds(seconds);
            progress.Begin("laying out", done, all);
        }));
    }

    /// <summary>Each kind of work has a pace of its own.</summary>
    [Fact]
    public void What_came_before_does_not_count()
    {
        var watch = new Watch();
        Assert.False(Show(watch, progress =>
        {
            progress.Begin("laying out", 0, 2);
            watch.Now += TimeSpan.FromSeconds(30);
            progress.Begin("printing", 0, 2);
            watch.Now += TimeSpan.FromSeconds(1);
            progress.Begin("printing", 1, 2);
        }));
    }

    private static bool Show(Watch watch, Action<Progress> work)
    {
        // Never closed: the bar's own thread may write once more when the work is done.
        var host = new Host(TextWriter.Null, new StringWriter(), NodaTime.SystemClock.Instance, "", "", false, ErrorIsTerminal: true, CancellationToken.None) { Watch = watch };
        return Progress.Show(host, progress =>
        {
            work(progress);
            return progress.IsShown;
        });
    }

    private sealed class Watch : TimeProvider
    {
        public TimeSpan Now { get; set; }

        public override long TimestampFrequency => TimeSpan.TicksPerSecond;

        public override long GetTimestamp() => Now.Ticks;
    }
}
