using PaperFlock.Layout.Pieces;
using PaperFlock.Sheets.WhatItLooksLike;

namespace PaperFlock.Sheets.Tests.Parts;

public sealed class LookPanelTests
{
    [Fact]
    public void Each_drawing_lies_inside_its_view_box_with_its_strokes() => Assert.All(LookPanel.All, panel =>
    {
        var drawing = panel.Read();
        Assert.NotEmpty(drawing.Outlines);
        Assert.All(drawing.Outlines, o => Assert.All(o.Points, p =>
        {
            Assert.InRange(p.X, o.Thickness / 2, drawing.Size.Width - (o.Thickness / 2));
            Assert.InRange(p.Y, o.Thickness / 2, drawing.Size.Height - (o.Thickness / 2));
        }));
    });

    [Fact]
    public void Every_drawing_there_is_has_its_panel_and_its_words()
    {
        var files = typeof(LookPanel).Assembly.GetManifestResourceNames().Where(f => f.EndsWith(".svg", StringComparison.Ordinal));
        Assert.Equal(LookPanel.All.Select(p => p.Drawing + ".svg").Order(), files.Order());
        Assert.All(LookPanel.All, p => Assert.Contains(p.Verdict, new[] { "VET NOW", "KEEPER", "NORMAL", "TURN HER" }));
        Assert.Equal(LookPanel.All.Length, LookPanel.All.Select(p => p.Shows).Distinct().Count());
    }

    [Theory]
    [InlineData("A4")]
    [InlineData("Letter")]
    public void One_leaf_shows_them_all_in_lines_of_two_points(string paper)
    {
        var text = Composed.SampleText("hollin-bank").Replace("paper: A4", $"paper: {paper}", StringComparison.Ordinal);
        var sheet = Composed.Of(text, Composed.HollinBankDay).Pack.Sheets.Single(s => s.Code == "LOOK");

        Assert.Equal(2, sheet.Sides.Length);
        var lines = sheet.Sides.SelectMany(s => s.Page.Content.Flatten().Items).OfType<OutlineItem>().Where(o => o is { Fill: not Fill.Black, Thickness: > 0 }).ToArray();
        Assert.InRange(lines.Max(o => o.Thickness), 1.9, 9);
        Assert.True(lines.All(o => o.Thickness > 1.2), "a thin line is lost at arm's length");
    }
}
