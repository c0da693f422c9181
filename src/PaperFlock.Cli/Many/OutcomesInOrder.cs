using System.Collections.Immutable;

namespace PaperFlock.Cli.Many;

/// <summary>How one flock ended, and all it had to say.</summary>
internal sealed record Outcome(int Status, string Out, string Error);

/// <summary>Says what each flock has to say as soon as those before it have had their say. Thread-safe.</summary>
internal sealed class OutcomesInOrder(int flocks, Host host)
{
    private readonly Lock _one = new();
    private readonly Outcome?[] _waiting = new Outcome?[flocks];
    private readonly int[] _statuses = [.. Enumerable.Repeat(ExitStatus.Stopped, flocks)];
    private int _next;

    /// <summary>In the order given; one that was never begun was stopped.</summary>
    public ImmutableArray<int> Statuses => [.. _statuses];

    public void Add(int place, Outcome done)
    {
        lock (_one)
        {
            _statuses[place] = done.Status;
            _waiting[place] = done;
            for (; _next < _waiting.Length && _waiting[_next] is { } next; _next++)
            {
                host.Error.Write(next.Error);
                host.Out.Write(next.Out);
                _waiting[_next] = null;
            }
        }
    }
}
