namespace PaperFlock.Fuzz;

/// <summary>What came of the cases of one kind.</summary>
internal sealed class Tally
{
    public int Cases { get; private set; }

    public int Accepted { get; private set; }

    public TimeSpan Slowest { get; private set; }

    public int SlowestCase { get; private set; } = -1;

    /// <summary>Bytes.</summary>
    public long Largest { get; private set; }

    public int LargestCase { get; private set; } = -1;

    public void Add(int number, CaseResult result)
    {
        Cases++;
        Accepted += result.Accepted ? 1 : 0;
        (Slowest, SlowestCase) = result.Took > Slowest ? (result.Took, number) : (Slowest, SlowestCase);
        (Largest, LargestCase) = result.Allocated > Largest ? (result.Allocated, number) : (Largest, LargestCase);
    }
}
