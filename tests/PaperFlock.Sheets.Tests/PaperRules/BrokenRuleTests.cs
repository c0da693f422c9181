namespace PaperFlock.Sheets.Tests.PaperRules;

/// <summary>A rule that never complains proves nothing: each is broken on purpose on a page of a good pack.</summary>
public sealed class BrokenRuleTests
{
    private static readonly PackInHand Good = Composed.HollinBank.InHand;

    public static TheoryData<int> SideCases => [.. Enumerable.Range(0, Spoils.Sides.Length)];

    [Theory]
    [MemberData(nameof(SideCases))]
    public void A_spoiled_page_is_caught(int index)
    {
        var (name, code, spoil) = Spoils.Sides[index];
        var rule = Rules.OfASide.Single(r => r.Name.StartsWith(name, StringComparison.Ordinal));
        var good = Good.Sides.First(s => s.Sheet.Code == code);
        var bad = good.Inked(PageInk.AsPrinted(spoil(good.Side.Page)));

        Assert.Empty(rule.Broken(good));
        Assert.NotEmpty(rule.Broken(bad));
    }

    public static TheoryData<int> PackCases => [.. Enumerable.Range(0, Spoils.Packs.Length)];

    [Theory]
    [MemberData(nameof(PackCases))]
    public void A_spoiled_pack_is_caught(int index)
    {
        var (name, spoil) = Spoils.Packs[index];
        var rule = Rules.OfAPack.Single(r => r.Name.StartsWith(name, StringComparison.Ordinal));

        Assert.Empty(rule.Broken(Good));
        Assert.NotEmpty(rule.Broken((Composed.HollinBank with { Pack = spoil(Good.Pack) }).InHand));
    }

    [Fact]
    public void Every_rule_is_broken_by_some_case()
    {
        var tried = Spoils.Sides.Select(s => s.Rule).Concat(Spoils.Packs.Select(p => p.Rule)).ToArray();
        var rules = Rules.OfASide.Select(r => r.Name).Concat(Rules.OfAPack.Select(r => r.Name));
        Assert.DoesNotContain(rules, r => !tried.Any(t => r.StartsWith(t, StringComparison.Ordinal)));
    }

    [Fact]
    public void Every_rule_names_its_source() =>
        Assert.All(Rules.OfASide.Select(r => r.Source).Concat(Rules.OfAPack.Select(r => r.Source)), Assert.NotEmpty);
}
