namespace PaperFlock.Cli.Entering;

/// <summary>An answer a line, from a pipe or from a terminal that does not give single keys.</summary>
internal sealed class TypedLines(Surroundings surroundings) : ITyping
{
    public bool CanAskAgain => surroundings.InIsTerminal;

    public int Count { get; private set; }

    public string? Read(Func<string, bool> isWhole)
    {
        surroundings.Stop.ThrowIfCancellationRequested();
        // Reading cannot be interrupted, but waiting for it can.
        var reading = Task.Run(surroundings.In.ReadLine);
        reading.Wait(surroundings.Stop);
        Count++;
        if (!surroundings.InIsTerminal)
        {
            // A terminal shows what is typed; a pipe's answers would be missing from the record.
            surroundings.Out.WriteLine(reading.Result);
        }

        return reading.Result?.Trim();
    }
}
