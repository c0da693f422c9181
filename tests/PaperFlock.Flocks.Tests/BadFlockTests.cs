using System.Text;
using System.Text.RegularExpressions;
using PaperFlock.Diagnostics;

namespace PaperFlock.Flocks.Tests;

/// <summary>
/// Each file in flocks/bad names what is wrong with it in its first lines: <c># expect: 12:7 error FLK012</c>, or <c>file</c> for the
/// place. A line after them may say the day it is read: <c># as of 2026-11-25</c>.
/// </summary>
public class BadFlockTests
{
    private const string Mark = "# expect: ";

    public static TheoryData<string> Names => [.. Samples.Bad];

    [Theory]
    [MemberData(nameof(Names))]
    public void A_bad_flock_gives_exactly_what_it_expects(string name)
    {
        var reading = Samples.Read($"bad/{name}");
        Assert.Equal(Expected(name), reading.Diagnostics.Select(Shown));
        Assert.Equal(reading.Diagnostics.Any(d => d.Severity == Severity.Error), reading.Flock is null);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_message_is_one_sentence_with_one_line_of_advice(string name)
    {
        foreach (var diagnostic in Samples.Read($"bad/{name}").Diagnostics)
        {
            Assert.Matches(@"^[^\n\r]{10,}[^.\s]$", diagnostic.Message);
            Assert.Matches(@"^[^\n\r]{5,}[^.\s]$", diagnostic.Advice);
            Assert.False(char.IsUpper(diagnostic.Message[0]), diagnostic.Message);
        }
    }

    [Fact]
    public void Every_code_has_a_bad_flock()
    {
        var codes = Directory.EnumerateFiles(Path.Combine(AppContext.BaseDirectory, "messages"))
            .SelectMany(file => Regex.Matches(File.ReadAllText(file), "\"(FLK[0-9]{3})\"").Select(m => m.Groups[1].Value))
            .Distinct();

        // Samples of megabytes would be in every clone for good, and what is no text has no first lines: those are made in FlockBytesTests and LimitTests; which characters a face has the reader does not know, and CharacterTests tells it.
        string[] made = ["FLK001", "FLK019", "FLK018", "FLK028", "FLK120"];
        var exercised = Samples.Bad.SelectMany(Expected).Select(line => line[^6..]).Concat(made).ToHashSet();
        Assert.Equal(codes.Order(StringComparer.Ordinal), exercised.Order(StringComparer.Ordinal));
    }

    private static IEnumerable<string> Expected(string name)
    {
        var bytes = Samples.Bytes($"bad/{name}");
        var text = bytes is [0xFF, 0xFE, ..] ? Encoding.Unicode.GetString(bytes) : Encoding.UTF8.GetString(bytes);
        return text.TrimStart('\uFEFF').Split(['\r', '\n'], StringSplitOptions.RemoveEmptyEntries)
            .TakeWhile(line => line.StartsWith(Mark, StringComparison.Ordinal))
            .Select(line => line[Mark.Length..]);
    }

    private static string Shown(Diagnostic diagnostic)
    {
        var place = diagnostic.Span.IsWholeFile ? "file" : $"{diagnostic.Span.Line}:{diagnostic.Span.Column}";
        return $"{place} {(diagnostic.Severity == Severity.Error ? "error" : "warning")} {diagnostic.Code}";
    }
}
