using PaperFlock.Packs.Screen;

namespace PaperFlock.Packs.Tests.Screen;

/// <summary>A flock begun on a screen: answers as typed, and the file that comes of them.</summary>
public sealed class ScreenStartTests
{
    private const string Today = "2026-11-25";

    [Fact]
    public void Answers_become_a_flock_without_a_mistake()
    {
        var begun = ScreenStart.Begin("""{"name":"Cold Knap","keeper":"Nell Ashworth","place":"NY 480 046","tupIn":"5 Nov 2026","ewes":"12"}""", Today);
        Assert.Equal("cold-knap.yaml", begun["name"]!.GetValue<string>());
        var read = ScreenFlock.Read(new OpenFlock(begun["text"]!.GetValue<string>(), "cold-knap.yaml", Today));
        Assert.True(read["ok"]!.GetValue<bool>());
        Assert.Equal(12, read["ewes"]!.GetValue<int>());
        Assert.Equal("Thu 5 Nov 2026", read["days"]!["2026-11-05"]!.GetValue<string>());
        Assert.Equal("NY 480 046", read["values"]!["holding"]!["grid-reference"]!.GetValue<string>());
    }

    /// <summary>What is printed for the emergency services is never made up.</summary>
    [Fact]
    public void No_answer_at_all_makes_a_flock_without_a_place_and_with_tags_to_come()
    {
        var line = ScreenFlock.Describe()["tagLine"]!.GetValue<string>();
        var read = ScreenFlock.Read(new OpenFlock(ScreenStart.Begin("{}", Today)["text"]!.GetValue<string>(), "flock.yaml", Today));
        Assert.Null(read["values"]!["holding"]!["location"]);
        Assert.True(read["ok"]!.GetValue<bool>());
        Assert.All(read["values"]!["ewes"]!.AsArray(), ewe => Assert.StartsWith(line, ewe!["tag"]!.GetValue<string>(), StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("""{"place":"Cumbria"}""", "place", "is no place")]
    [InlineData("""{"tupIn":"31 September"}""", "tupIn", "is no date")]
    [InlineData("""{"lambingFrom":"3/4/27"}""", "lambingFrom", "could be two days")]
    [InlineData("""{"ewes":"many"}""", "ewes", "is no number of ewes")]
    [InlineData("""{"zone":"Nowhere"}""", "zone", "is no time zone")]
    [InlineData("""{"name":"A holding with a name that is far too long for any sheet of paper"}""", "name", "40")]
    public void What_cannot_be_is_said_by_its_field(string answers, string field, string says)
    {
        var wrong = Assert.Single(ScreenStart.Begin(answers, Today)["wrong"]!.AsArray())!;
        Assert.Equal(field, wrong["field"]!.GetValue<string>());
        Assert.Contains(says, wrong["message"]!.GetValue<string>(), StringComparison.Ordinal);
    }

    [Fact]
    public void The_number_of_ewes_can_be_changed_while_no_tag_is_known()
    {
        var begun = ScreenStart.Begin("""{"place":"NY 480 046","ewes":"20"}""", Today)["text"]!.GetValue<string>();
        var changed = ScreenStart.Number(begun, "flock.yaml", " 7 ")["text"]!.GetValue<string>();
        var read = ScreenFlock.Read(new OpenFlock(changed, "flock.yaml", Today));
        Assert.True(read["ok"]!.GetValue<bool>());
        Assert.Equal(7, read["ewes"]!.GetValue<int>());
        Assert.Throws<PackRequestException>(() => ScreenStart.Number(begun, "flock.yaml", "0"));
        Assert.Throws<PackRequestException>(() => ScreenStart.Number(begun, "flock.yaml", "a few"));
    }

    [Theory]
    [InlineData("NY 480 046", "NY 480 046", "Europe/London", "north", "west")]
    [InlineData("-44.7, 169.15", null, "Pacific/Auckland", "south", "east")]
    public void A_place_is_read_and_said_back(string typed, string? grid, string zone, string half, string side)
    {
        var read = ScreenPlace.Read(typed, Today);
        Assert.Equal(grid, read["grid"]?.GetValue<string>());
        Assert.Equal(zone, read["zone"]!.GetValue<string>());
        Assert.Contains(half, read["words"]!.GetValue<string>(), StringComparison.Ordinal);
        Assert.Contains(side, read["words"]!.GetValue<string>(), StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_no_place_is_said() => Assert.Contains("is no place", ScreenPlace.Read("the far field", Today)["wrong"]!.GetValue<string>(), StringComparison.Ordinal);
}
