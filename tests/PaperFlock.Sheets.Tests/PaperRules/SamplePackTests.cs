namespace PaperFlock.Sheets.Tests.PaperRules;

public sealed class SamplePackTests
{
    [Fact]
    public void Hollin_Bank_keeps_every_paper_rule() => PaperCheck.Keeps(Composed.HollinBank);

    [Fact]
    public void Kanuka_Flat_keeps_every_paper_rule() => PaperCheck.Keeps(Composed.KanukaFlat);

    [Fact]
    public void The_smallest_flock_keeps_every_paper_rule() => PaperCheck.Keeps(Composed.Sample("smallest", new(2026, 8, 1)));
}
