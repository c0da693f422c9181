namespace PaperFlock.Faults;

/// <summary>How many faults of each kind were injected, and what was lost.</summary>
internal sealed class Tally
{
    private readonly SortedDictionary<string, int> _counts = new(StringComparer.Ordinal);

    public int Lost { get; private set; }

    public int All => _counts.Values.Sum();

    public void Count(string kind) => _counts[kind] = _counts.GetValueOrDefault(kind) + 1;

    public void Lose(string what)
    {
        Lost++;
        Console.WriteLine($"LOST  {what}");
    }

    public void Write()
    {
        foreach (var (kind, count) in _counts)
        {
            Console.WriteLine($"{count,6}  {kind}");
        }
    }
}
