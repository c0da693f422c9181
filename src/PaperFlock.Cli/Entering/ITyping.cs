namespace PaperFlock.Cli.Entering;

/// <summary>Where answers come from.</summary>
internal interface ITyping
{
    /// <summary>Whether whoever typed a wrong answer can be asked again. A pipe cannot: its next line is about the next ewe.</summary>
    bool CanAskAgain { get; }

    /// <summary>How many answers have been read.</summary>
    int Count { get; }

    /// <returns>Null when there are no more.</returns>
    /// <exception cref="OperationCanceledException">The user wants the program to end.</exception>
    Typed? Read();
}

/// <param name="Text">Without blanks round it; empty for an ending key alone.</param>
internal sealed record Typed(string Text, Ending Ending);

/// <summary>The key that ends an answer. An arrow says which way to go, too.</summary>
internal enum Ending
{
    Enter,
    Down,
    Up,
}
