namespace PaperFlock.Cli;

/// <summary>The user asked for something that cannot be had: a file that is not there, a folder that cannot be written to. Ends with status 2.</summary>
/// <param name="message">One sentence for the user, lower case, no full stop.</param>
internal sealed class UsageException(string message, Exception? inner = null) : Exception(message, inner);
