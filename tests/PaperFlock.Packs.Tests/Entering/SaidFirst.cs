namespace PaperFlock.Packs.Tests.Entering;

/// <summary>Does something once, just after the words are written.</summary>
internal sealed class SaidFirst(string words, Action then) : StringWriter
{
    private Action? _then = then;

    public override void Write(string? value)
    {
        base.Write(value);
        if (value == words)
        {
            _then?.Invoke();
            _then = null;
        }
    }
}
