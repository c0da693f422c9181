namespace PaperFlock.Diagnostics;

/// <summary>An error stops the run before anything is written; a warning prints and goes on.</summary>
public enum Severity
{
    Warning,
    Error,
}
