namespace PaperFlock.Cli.Entering;

/// <summary>An answer a line, from a pipe or from a terminal that does not give single keys.</summary>
internal sealed class TypedLines(Host host) : ITyping
{
    /// <summary>What a terminal sends for an arrow where nobody takes it as a key (ECMA-48, CUU and CUD).</summary>
    private const string Up = "\u001b[A";
    private const string Down = "\u001b[B";

    public bool CanAskAgain => host.InIsTerminal;

    public int Count { get; private set; }

    public Typed? Read()
    {
        if (host.ReadLine()?.Trim() is not { } line)
        {
            return null;
        }

        Count++;
        return line.EndsWith(Up, StringComparison.Ordinal) ? new Typed(line[..^Up.Length].Trim(), Ending.Up)
            : line.EndsWith(Down, StringComparison.Ordinal) ? new Typed(line[..^Down.Length].Trim(), Ending.Down)
            : new Typed(line, Ending.Enter);
    }
}
