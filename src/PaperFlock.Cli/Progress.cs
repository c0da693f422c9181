using Spectre.Console;

namespace PaperFlock.Cli;

/// <summary>A bar of what is being done, where somebody is watching and it will go on for more than a moment; between steps the user may stop the work.</summary>
internal sealed class Progress
{
    /// <summary>Less is over before anybody has read what it is.</summary>
    private static readonly TimeSpan Moment = TimeSpan.FromSeconds(2);

    private readonly Host _host;
    private readonly ProgressContext? _bars;
    private ProgressTask? _bar;
    private long _began;

    private Progress(Host host, ProgressContext? bars) => (_host, _bars) = (host, bars);

    /// <summary>From when it comes to the end.</summary>
    public bool IsShown => _bar is not null;

    /// <exception cref="OperationCanceledException">The user stopped it.</exception>
    public static T Show<T>(Host host, Func<Progress, T> work) => !host.ErrorIsTerminal
        ? work(new Progress(host, null))
        : Terminals.ConsoleFor(host.Error).Progress().AutoClear(true).Columns(new TaskDescriptionColumn(), new ProgressBarColumn()).Start(bars => work(new Progress(host, bars)));

    /// <summary>Called as a step begins. Steps of one kind take about as long each, so those that are done tell how long the others will take.</summary>
    /// <param name="step">What is done in it.</param>
    /// <param name="done">Steps of its kind before it; 0 begins another kind.</param>
    /// <param name="all">Steps of its kind, this one among them.</param>
    /// <exception cref="OperationCanceledException">The user stopped it.</exception>
    public void Begin(string step, int done, int all)
    {
        _host.Stop.ThrowIfCancellationRequested();
        if (done == 0)
        {
            _began = _host.Watch.GetTimestamp();
        }

        if (_bar is null && done > 0 && Left(_host.Watch.GetElapsedTime(_began), done, all) > Moment)
        {
            _bar = _bars?.AddTask(Markup.Escape(step));
        }

        if (_bar is { } bar)
        {
            bar.Description = Markup.Escape(step);
            (bar.MaxValue, bar.Value) = (all, done);
        }
    }

    /// <summary>How long the rest will take at the pace of what is done.</summary>
    private static TimeSpan Left(TimeSpan taken, int done, int all) => taken * (all - done) / done;
}
