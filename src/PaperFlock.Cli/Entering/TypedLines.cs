namespace PaperFlock.Cli.Entering;

/// <summary>An answer a line, from a pipe or from a terminal that does not give single keys.</summary>
internal sealed class TypedLines(Host host) : ITyping
{
    public bool CanAskAgain => host.InIsTerminal;

    public int Count { get; private set; }

    public string? Read(Func<string, bool> isWhole)
    {
        Count++;
        return host.ReadLine()?.Trim();
    }
}
