namespace PaperFlock.Diagnostics;

/// <summary>One thing wrong, or worth a second look, in one file.</summary>
/// <param name="Code">Stable code, <c>FLK001</c> upwards for the flock file; never reused for another meaning.</param>
/// <param name="Message">One sentence, lower case, no full stop, that stands alone without the source line.</param>
/// <param name="Advice">What to do about it: one line, seldom two.</param>
public sealed record Diagnostic(Severity Severity, string Code, SourceSpan Span, string Message, string Advice)
{
    public static Diagnostic Error(string code, SourceSpan at, string message, string advice) => new(Severity.Error, code, at, message, advice);

    public static Diagnostic Warning(string code, SourceSpan at, string message, string advice) => new(Severity.Warning, code, at, message, advice);
}
