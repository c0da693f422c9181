namespace PaperFlock.Cli.Entering;

/// <summary>Where answers come from.</summary>
internal interface ITyping
{
    /// <summary>Whether whoever typed a wrong answer can be asked again. A pipe cannot: its next line is about the next ewe.</summary>
    bool CanAskAgain { get; }

    /// <summary>How many answers have been read.</summary>
    int Count { get; }

    /// <param name="isWhole">Whether what is typed so far can only be the whole answer.</param>
    /// <returns>Without blanks round it; null when there are no more.</returns>
    /// <exception cref="OperationCanceledException">The user wants the program to end.</exception>
    string? Read(Func<string, bool> isWhole);
}
