using System.Text;
using System.Text.RegularExpressions;
using PaperFlock.Diagnostics;
using PaperFlock.Flocks.Reading;

namespace PaperFlock.Flocks.Tests;

/// <summary>
/// Advice never leads in a circle: where it says in so many letters what to type, typing just that makes the message go away. The files are those
/// of flocks/bad, each of which somebody may have written.
/// </summary>
public partial class AdviceTests
{
    /// <summary>Codes whose advice, in some file at least, is one thing to type.</summary>
    private const string WithOneFix = "FLK005 FLK016 FLK020 FLK022 FLK024 FLK026 FLK027 FLK030 FLK031 FLK033 FLK034 FLK035 FLK036 FLK038 FLK041 FLK042 FLK046 FLK054 FLK056 FLK156 FLK158 FLK161 FLK181 FLK183 FLK184 FLK188 FLK195 FLK196 FLK197 FLK198 FLK200 FLK202 FLK206 FLK207 FLK209";

    [Fact]
    public void What_the_advice_says_to_type_makes_the_message_go_away()
    {
        var tried = new SortedSet<string>(StringComparer.Ordinal);
        var stuck = new List<string>();
        foreach (var name in Samples.Bad)
        {
            var reading = Samples.Read($"bad/{name}");
            foreach (var diagnostic in reading.Diagnostics)
            {
                if (Fixed(reading.Source, diagnostic) is { } text)
                {
                    var again = Samples.Read($"bad/{name}", Encoding.UTF8.GetBytes(text));
                    if (Count(again, diagnostic) >= Count(reading, diagnostic))
                    {
                        stuck.Add($"{name}: {diagnostic.Code} {diagnostic.Message}: {diagnostic.Advice}\n{text.Split('\n').ElementAtOrDefault(diagnostic.Span.Line - 1)}");
                    }

                    tried.Add(diagnostic.Code);
                }
            }
        }

        Assert.Empty(stuck);
        Assert.Equal(WithOneFix, string.Join(' ', tried));
    }

    private static int Count(FlockReading reading, Diagnostic like) => reading.Diagnostics.Count(d => d.Code == like.Code && d.Message == like.Message);

    /// <summary>The text with what the advice says typed in; null where it leaves a choice, or more is to be done than to type.</summary>
    private static string? Fixed(SourceText source, Diagnostic diagnostic)
    {
        if (diagnostic.Span.IsWholeFile)
        {
            return null;
        }

        var lines = source.Text.ReplaceLineEndings("\n").Split('\n');
        var (at, column, length) = (diagnostic.Span.Line - 1, diagnostic.Span.Column - 1, diagnostic.Span.Length);
        var line = lines[at];
        if (ToWrite().Match(diagnostic.Advice) is { Success: true } written)
        {
            var typed = written.Groups[1].Value + written.Groups[2].Value;
            // A key with its value stands for both; anything else for what the caret is under.
            var key = typed.Contains(": ", StringComparison.Ordinal) ? line.LastIndexOf(typed[..(typed.IndexOf(':', StringComparison.Ordinal) + 1)], Math.Min(column + length, line.Length - 1), StringComparison.Ordinal) : -1;
            var from = key >= 0 ? key : column;
            lines[at] = line[..from] + typed + line[Math.Min(line.Length, key >= 0 ? Math.Max(column + length, EndOfValue(line, key)) : column + length)..];
        }
        else if (ToAdd().Match(diagnostic.Advice) is { Success: true, Groups: [_, { Value: var added }, ..] } && line.TrimEnd().EndsWith(':'))
        {
            var indent = line.Length - line.TrimStart().Length;
            lines[at] = $"{line}\n{new string(' ', indent + 2)}{added}";
        }
        else if (diagnostic.Advice.StartsWith("take it out", StringComparison.Ordinal) && line.TrimStart().StartsWith(line[column..Math.Min(line.Length, column + length)], StringComparison.Ordinal))
        {
            lines[at] = "";
        }
        else
        {
            return null;
        }

        return string.Join('\n', lines);
    }

    private static int EndOfValue(string line, int from) => line.AsSpan(from).IndexOf(" #") is >= 0 and var remark ? from + remark : line.Length;

    [GeneratedRegex("^(?:(?:write|write it as|did you mean) `([^`]+)`[^`]*|put [^`]*: `([^`]+)`)$")]
    private static partial Regex ToWrite();

    [GeneratedRegex("^add it, such as `([^`]+)`$")]
    private static partial Regex ToAdd();
}
