using System.Text.Json.Nodes;
using PaperFlock.Packs.Screen;
using PaperFlock.Planning;

namespace PaperFlock.Packs.Tests.Screen;

/// <summary>Sheets as pictures a browser draws.</summary>
public sealed class ScreenPicturesTests
{
    private static readonly string HollinBank = File.ReadAllText(Samples.HollinBank);

    [Fact]
    public void The_sheet_for_the_shed_names_every_ewe_that_is_to_lamb()
    {
        var pages = Pages(HollinBank, "due");
        var texts = Texts(pages);
        Assert.All(ScreenPlan.Of(Plan(HollinBank))["due"]!.AsArray(), ewe => Assert.Contains(ewe!["called"]!.GetValue<string>(), texts, StringComparison.Ordinal));
        // A4 is 210 by 297 mm, which is 595.28 by 841.89 points, in whole ones.
        Assert.All(pages, p => Assert.Equal([595, 842], new[] { p!["width"]!.GetValue<double>(), p["height"]!.GetValue<double>() }.Order()));
    }

    [Fact]
    public void One_leaf_is_one_picture() => Assert.All(Pages(HollinBank, "CARD-00101"), p => Assert.StartsWith("CARD", p!["label"]!.GetValue<string>(), StringComparison.Ordinal));

    /// <summary>How it went is said when the last has lambed: no sheet is no mistake.</summary>
    [Fact]
    public void A_sheet_with_nothing_to_say_has_no_page() => Assert.Empty(Pages(HollinBank, "year"));

    [Fact]
    public void There_is_no_sheet_of_another_name() => Assert.Throws<PackRequestException>(() => Pages(HollinBank, "shopping"));

    [Fact]
    public void A_name_is_a_text_and_never_a_path()
    {
        var odd = HollinBank.Replace("name: Bracken", "name: \"<b>M0,0</b>\"", StringComparison.Ordinal);
        var pages = Pages(odd, "due");
        Assert.Contains("<b>M0,0</b>", Texts(pages), StringComparison.Ordinal);
        Assert.All(pages.SelectMany(p => p!["drawn"]!.AsArray()).Select(d => d!["d"]?.GetValue<string>()).OfType<string>(), d => Assert.Matches("^[MLCQAHVZmlcqahvz0-9., -]+$", d));
    }

    private static SeasonPlan Plan(string text) => new OpenFlock(text, "flock.yaml", "2026-11-25").Plan;

    private static JsonArray Pages(string text, string sheets) => ScreenPictures.Of(Plan(text), sheets);

    private static string Texts(JsonArray pages) => string.Join(' ', pages.SelectMany(p => p!["drawn"]!.AsArray()).Select(d => d!["text"]?.GetValue<string>()).OfType<string>());
}
