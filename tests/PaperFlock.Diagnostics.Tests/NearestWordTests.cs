using CsCheck;

namespace PaperFlock.Diagnostics.Tests;

public class NearestWordTests
{
    private static readonly string[] Keys = ["tup-in", "tup-out", "lambing-from", "gestation-days", "tag", "teeth", "teats"];

    [Theory]
    [InlineData("tpu-in", "tup-in")]
    [InlineData("tup_in", "tup-in")]
    [InlineData("Tup In", "tup-in")]
    [InlineData("tupout", "tup-out")]
    [InlineData("lambing-form", "lambing-from")]
    [InlineData("gestaton-dyas", "gestation-days")]
    [InlineData("tga", "tag")]
    [InlineData("teats", "teats")]
    [InlineData("teath", "teeth")] // one letter off teeth; teats is two off
    [InlineData("weight", null)]
    [InlineData("x", null)]
    [InlineData("", null)]
    public void A_slip_finds_its_word_and_no_other(string typed, string? meant) =>
        Assert.Equal(meant, NearestWord.Find(typed, Keys));

    // "ca" to "abc" is 3 by optimal string alignment and 2 by the unrestricted distance:
    // the standard pair that tells the two apart (Boytsov, "Indexing methods for approximate dictionary searching", 2011; from memory).
    [Theory]
    [InlineData("ca", "abc", 3)]
    [InlineData("kitten", "sitting", 3)]
    [InlineData("ab", "ba", 1)]
    [InlineData("", "abc", 3)]
    public void Distances_are_those_of_optimal_string_alignment(string from, string to, int distance) =>
        Assert.Equal(distance, NearestWord.Distance(from, to));

    [Fact]
    public void Distance_agrees_with_the_definition_worked_without_a_table() =>
        Gen.Select(Gen.String[Gen.Char["abc"], 0, 6], Gen.String[Gen.Char["abc"], 0, 6])
            .Sample((a, b) => NearestWord.Distance(a, b) == Defined(a, b) && NearestWord.Distance(b, a) == Defined(a, b));

    private static int Defined(string a, string b)
    {
        if (a.Length == 0 || b.Length == 0)
        {
            return a.Length + b.Length;
        }

        var best = Math.Min(Defined(a[..^1], b[..^1]) + (a[^1] == b[^1] ? 0 : 1), 1 + Math.Min(Defined(a[..^1], b), Defined(a, b[..^1])));
        return a.Length > 1 && b.Length > 1 && a[^1] == b[^2] && a[^2] == b[^1]
            ? Math.Min(best, 1 + Defined(a[..^2], b[..^2]))
            : best;
    }
}
