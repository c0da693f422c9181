namespace PaperFlock.Diagnostics;

/// <summary>A diagnostic drawn for a person: plain lines, so that a terminal may colour each as it likes.</summary>
/// <param name="Heading"><c>flock.yaml:41:12: error FLK012: message</c>.</param>
/// <param name="SourceLine">The line of the file, or a window of a long one; null where the whole file is meant.</param>
/// <param name="CaretLine">Carets under the word, for the same margin as <paramref name="SourceLine"/>; null with it.</param>
/// <param name="Advice">What to do about it.</param>
public sealed record DiagnosticPicture(string Heading, string? SourceLine, string? CaretLine, string Advice);
