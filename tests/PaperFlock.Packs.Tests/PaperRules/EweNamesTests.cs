using System.Text;
using PaperFlock.Flocks.Reading;
using PaperFlock.Planning;
using PaperFlock.Sheets.Handover;

namespace PaperFlock.Packs.Tests.PaperRules;

/// <summary>The dots behind a name on the sitter's leaf.</summary>
public sealed class EweNamesTests
{
    /// <summary>Lambs alive, by their number or by how many are listed; what was scanned only where nobody wrote down either.</summary>
    [Theory]
    [InlineData("", 2)]
    [InlineData("lambed: 2027-01-09", 2)]
    [InlineData("lambed: 2027-01-09, lambs-alive: 1", 1)]
    [InlineData("lambed: 2027-01-09, lambs: [{sex: ewe}]", 1)]
    [InlineData("lambed: 2027-01-09, lambs: [{sex: ewe}, {sex: ram}, {sex: ewe}]", 3)]
    public void A_dot_stands_for_each_lamb(string lambing, int dots)
    {
        var text = Samples.TwoEwes.Replace("    scan: 2\n", $"    scan: 2\n{string.Concat(lambing.Split(", ", 2).Where(l => l.Length > 0).Select(l => $"    {l}\n"))}", StringComparison.Ordinal);
        var flock = FlockReader.Read("flock.yaml", Encoding.UTF8.GetBytes(text)).Flock;
        var said = EweNames.Said(SeasonPlanner.Plan(flock!, new(2027, 1, 12)).Ewes[0]);

        Assert.Equal(new string('\u2022', dots), said.Runs[^1].Words.Trim('\u00a0'));
    }
}
