namespace PaperFlock.Diagnostics;

/// <summary>A <see cref="DiagnosticBag"/> has as many as it was made for; what was found is still in it.</summary>
public sealed class BagFullException : Exception
{
    public BagFullException()
    {
    }

    public BagFullException(string message)
        : base(message)
    {
    }

    public BagFullException(string message, Exception inner)
        : base(message, inner)
    {
    }
}
