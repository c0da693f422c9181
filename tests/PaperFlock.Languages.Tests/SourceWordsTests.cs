using System.Runtime.CompilerServices;
using PaperFlock.Words;

namespace PaperFlock.Languages.Tests;

/// <summary>The list of all words that are printed, against the sources that print them.</summary>
public sealed class SourceWordsTests
{
    [Fact]
    public void The_template_has_every_word_of_the_sources()
    {
        var root = Root();
        var words = SourceWords.In(root);
        Assert.Empty(words.Problems);
        Assert.True(words.Said.Length > 500, $"only {words.Said.Length} texts were found");
        var committed = File.ReadAllText(Path.Combine(root, "words", "paperflock.pot"));
        Assert.True(committed == PoText.Template(words.Said), "run: dotnet run --project tools/PaperFlock.Words -- template");
    }

    [Fact]
    public void The_template_says_what_a_speaker_must_check()
    {
        var pot = File.ReadAllText(Path.Combine(Root(), "words", "paperflock.pot"));
        var entry = pot.Split("\n\n").Single(e => e.Contains("msgid \"Keep away from lambing ewes", StringComparison.Ordinal));
        Assert.Contains("#. A speaker who knows the work must check this", entry, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("l.Say(\"Ewes\")", "Ewes")]
    [InlineData("l.Say($\"Count all {n} of {ewes.Length}\\u00a0ewes\")", "Count all {0} of {1}\u00a0ewes")]
    [InlineData("l.Say($\"{x:0.0} {{braced}}\")", "{0} {{braced}}")]
    [InlineData("l.SayAs(\"round\", \"late\")", "round/late")]
    [InlineData("l.Count(n, \"ewe\", \"ewes\")", "{0}\u00a0ewe|{0}\u00a0ewes")]
    [InlineData("l.Plural(n, $\"{n} goes\", $\"{n} go\")", "{0} goes|{0} go")]
    [InlineData("ewes.Count(e => e.IsCarrying)", "")]
    public void Words_are_found_in_calls(string call, string expected)
    {
        var words = Of(call);
        Assert.Empty(words.Problems);
        Assert.Equal(expected, string.Join(";", words.Said.Select(w => (w.Context is { } c ? c + "/" : "") + w.One + (w.Many is { } m ? "|" + m : ""))));
    }

    [Theory]
    [InlineData("l.Say(words)")]
    [InlineData("l.Say(\"a\" + \"b\")")]
    [InlineData("l.SayAs(context, \"late\")")]
    [InlineData("l.Count(n, noun, noun + \"s\")")]
    [InlineData("l.Plural(n, $\"{n} of {m}\", $\"{m} of {n}\")")]
    public void Words_that_nobody_could_translate_are_complained_of_with_their_line(string call) =>
        Assert.StartsWith("File.cs:3: ", Assert.Single(Of(call).Problems), StringComparison.Ordinal);

    private static SourceWords Of(string call) => SourceWords.Of([("File.cs", $"class C\n{{\n    object M() => {call};\n}}\n")]);

    private static string Root([CallerFilePath] string here = "") => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", ".."));
}
