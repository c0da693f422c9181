namespace PaperFlock.Cli.Entering;

/// <summary>Which ewes were given an answer, a different answer, or none. Each counts once, as what came of her last.</summary>
internal sealed class Tally
{
    private readonly Dictionary<string, Outcome> _outcomes = new(StringComparer.Ordinal);

    private enum Outcome
    {
        Left,
        Changed,
        Entered,
    }

    public int Entered => Count(Outcome.Entered);

    public int Changed => Count(Outcome.Changed);

    public int Left => Count(Outcome.Left);

    public void Leave(string tag) => _outcomes.TryAdd(tag, Outcome.Left);

    /// <param name="hadAnswer">Something was written down before.</param>
    public void Enter(string tag, bool hadAnswer)
    {
        // One entered a moment ago and put right is still one entered.
        if (_outcomes.GetValueOrDefault(tag) != Outcome.Entered)
        {
            _outcomes[tag] = hadAnswer ? Outcome.Changed : Outcome.Entered;
        }
    }

    private int Count(Outcome outcome) => _outcomes.Values.Count(o => o == outcome);
}
