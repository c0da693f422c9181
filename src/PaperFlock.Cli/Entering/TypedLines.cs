namespace PaperFlock.Cli.Entering;

/// <summary>An answer a line, from a pipe or from a terminal that does not give single keys.</summary>
internal sealed class TypedLines(Host host) : ITyping
{
    public bool CanAskAgain => host.InIsTerminal;

    public int Count { get; private set; }

    public string? Read(Func<string, bool> isWhole)
    {
        host.Stop.ThrowIfCancellationRequested();
        // Reading cannot be interrupted, but waiting for it can.
        var reading = Task.Run(host.In.ReadLine);
        reading.Wait(host.Stop);
        Count++;
        if (!host.InIsTerminal)
        {
            // A terminal shows what is typed; a pipe's answers would be missing from the record.
            host.Out.WriteLine(reading.Result);
        }

        return reading.Result?.Trim();
    }
}
