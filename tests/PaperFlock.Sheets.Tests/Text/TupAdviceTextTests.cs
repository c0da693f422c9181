using PaperFlock.Flocks;
using PaperFlock.Planning;
using PaperFlock.Planning.Tests;

namespace PaperFlock.Sheets.Tests.Text;

public sealed class TupAdviceTextTests
{
    [Theory]
    [InlineData(Teeth.Sound, Toes.Sound, Teats.Sound, 3, "to the tup")]
    [InlineData(Teeth.Worn, Toes.Sound, Teats.Sound, 1.5, "to the tup: worn teeth: watch her condition; thin at condition 1.5")]
    [InlineData(Teeth.Sound, Toes.Treated, Teats.Sound, 4.5, "treat first and look again: feet treated: look again, she needs sound feet; too fat at condition 4.5")]
    [InlineData(Teeth.Sound, Toes.Lame, Teats.Lumpy, 3, "leave out: lumpy udder: leave her out and ask the vet; lame: have her feet put right and look again")]
    [InlineData(Teeth.Broken, Toes.Sound, Teats.LostHalf, 3, "cull: lost half her udder: she cannot rear twins; broken mouth: she will not hold her condition")]
    public void Every_finding_is_named_the_gravest_first(Teeth teeth, Toes toes, Teats teats, double condition, string words) =>
        Assert.Equal(words, TupAdviceText.Of(Plan(Sample.Ewe() with { Teeth = teeth, Toes = toes, Teats = teats, Condition = (decimal)condition })));

    [Fact]
    public void A_ewe_the_keeper_keeps_back_says_so() => Assert.Equal("kept back by the keeper", TupAdviceText.Reason(Plan(Sample.Ewe() with { ToTup = false })));

    private static EwePlan Plan(Ewe ewe) => SeasonPlanner.Plan(Sample.Flock(ewe), Sample.Day("2026-07-01")).Ewes[0];
}
