namespace PaperFlock.Cli.Entering;

/// <summary>Which ewes were given an answer, a different answer, or none. Each counts once, as what came of her last.</summary>
internal sealed class Tally
{
    private readonly Dictionary<string, Answered> _outcomes = new(StringComparer.Ordinal);

    private enum Answered
    {
        Left,
        Changed,
        Entered,
    }

    public int Entered => Count(Answered.Entered);

    public int Changed => Count(Answered.Changed);

    public int Left => Count(Answered.Left);

    public void Leave(string tag) => _outcomes.TryAdd(tag, Answered.Left);

    /// <param name="hadAnswer">Something was written down before.</param>
    public void Enter(string tag, bool hadAnswer)
    {
        // One entered a moment ago and put right is still one entered.
        if (_outcomes.GetValueOrDefault(tag) != Answered.Entered)
        {
            _outcomes[tag] = hadAnswer ? Answered.Changed : Answered.Entered;
        }
    }

    private int Count(Answered answered) => _outcomes.Values.Count(o => o == answered);
}
