using PaperFlock.Diagnostics;

namespace PaperFlock.Flocks.Tests;

/// <summary>Words of messages that depend on what was found: one or several, one day or days, and advice that mends.</summary>
public class MessageTests
{
    [Fact]
    public void One_is_said_as_one() => Assert.Contains(
        "get 1 round a day, and others 2", Only("FLK158", Samples.Text("practice:\n  checks-per-day: {normal: 2, heavy: 1}\n")).Message, StringComparison.Ordinal);

    [Theory]
    [InlineData("tup-in: 2026-08-19, tup-out: 2026-09-20", "is with `A` too, from Wed 19 Aug 2026 to Fri 21 Aug 2026")]
    [InlineData("mating: hand, date: 2026-08-20", "is with `A` too, on Thu 20 Aug 2026")]
    public void One_day_is_said_as_one(string other, string said) => Assert.Contains(
        said,
        Only("FLK157", Samples.Text(
            $"groups:\n  - {{name: A, tup: Bramley, tup-in: 2026-08-10, tup-out: 2026-08-21}}\n  - {{name: B, tup: Bramley, {other}}}\n",
            ewes: "ewes:\n  - {tag: ZZ 1, group: A}\n  - {tag: ZZ 2, group: B}\n")).Message,
        StringComparison.Ordinal);

    [Fact]
    public void A_tag_that_a_lamb_has_is_said_to_be_a_lambs()
    {
        var wrong = Only("FLK052", Samples.Text(ewes: "ewes:\n  - tag: ZZ 1\n    marks: [2026-08-14]\n    lambed: 2027-01-09\n    lambs: [{sex: ewe, tag: ZZ 2}]\n  - tag: ZZ 2\n"));
        Assert.Contains("`ZZ 2` is already on the lamb on line", wrong.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_clock_that_is_wrong_is_thought_of() => Assert.Contains(
        "the clock of this computer", Only("FLK150", Samples.Text(), "1970-01-01").Advice, StringComparison.Ordinal);

    /// <summary>Typing the longitude without its sign would silence the warning, and be 350 km wrong: it is the zone that is.</summary>
    [Fact]
    public void A_zone_that_is_wrong_is_not_put_down_to_the_sign()
    {
        var moscow = Samples.Text(holding: Samples.Holding.Replace("Europe/London", "Europe/Moscow", StringComparison.Ordinal));
        var wrong = Only("FLK161", moscow);
        Assert.StartsWith("place and time zone do not go together: ", wrong.Message, StringComparison.Ordinal);
        Assert.Contains("`time-zone: Europe/London`", wrong.Advice, StringComparison.Ordinal);
        Assert.DoesNotContain(Samples.ReadText(moscow.Replace("Europe/Moscow", "Europe/London", StringComparison.Ordinal)).Diagnostics, d => d.Code == "FLK161");
    }

    /// <summary>What people write for the clock of one half of the year: the place is right.</summary>
    [Theory]
    [InlineData("GMT", "FLK161", "`time-zone: Europe/London`")]
    [InlineData("UTC", "FLK161", "`time-zone: Europe/London`")]
    [InlineData("Etc/GMT+1", "FLK161", "`time-zone: Europe/London`")]
    [InlineData("BST", "FLK041", "`Europe/London`")]
    public void Greenwich_time_is_put_down_to_the_zone(string zone, string code, string said)
    {
        var wrong = Only(code, Samples.Text(holding: Samples.Holding.Replace("Europe/London", zone, StringComparison.Ordinal)));
        Assert.Contains(said, wrong.Advice, StringComparison.Ordinal);
        Assert.DoesNotContain("sign", wrong.Message, StringComparison.Ordinal);
    }

    /// <summary>Told at each ewe, whoever obeyed would make right weights wrong.</summary>
    [Theory]
    [InlineData(4, "FLK207")]
    [InlineData(3, "FLK183", "FLK183", "FLK183")]
    public void A_breed_of_which_most_ewes_differ_is_wrong_itself(int ewes, params string[] codes) => Assert.Equal(codes, Samples.Codes(Samples.Text(
        "breeds:\n  - {name: Ryeland, mature-weight: 70 lb}\n",
        ewes: $"ewes:\n{string.Concat(Enumerable.Range(1, ewes).Select(n => $"  - {{tag: ZZ {n}, breed: Ryeland, weight: 70 kg}}\n"))}")));

    private static Diagnostic Only(string code, string text, string? asOf = null) => Assert.Single(Samples.ReadText(text, asOf).Diagnostics, d => d.Code == code);
}
