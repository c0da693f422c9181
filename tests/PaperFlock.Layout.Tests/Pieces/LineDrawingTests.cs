using PaperFlock.Layout.Pieces;

namespace PaperFlock.Layout.Tests.Pieces;

public class LineDrawingTests
{
    private const string Good = """<path d="M10 20 L30 20 C40 20 50 30 50 40 Z" fill="#fff" stroke="#000" stroke-width="4"/>""";

    [Fact]
    public void A_path_is_read_as_it_is_written()
    {
        var drawing = Read(Good);
        Assert.Equal(new Size(100, 50), drawing.Size);
        var outline = Assert.Single(drawing.Outlines);
        Assert.Equal(("MLCZ", Fill.White, 4), (outline.Steps, outline.Fill, outline.Thickness));
        Assert.Equal([(10, 20), (30, 20), (40, 20), (50, 30), (50, 40)], outline.Points);
    }

    [Fact]
    public void It_stands_in_the_middle_as_large_as_the_space_allows()
    {
        var outline = Assert.IsType<OutlineItem>(Assert.Single(Read(Good).Within(new Size(200, 140))));
        Assert.Equal(((20, 60), 8), (outline.Points[0], outline.Thickness));
    }

    [Theory]
    [InlineData("d", "m10 20 l30 20")]
    [InlineData("d", "M10 20 Q30 20 40 20")]
    [InlineData("d", "M10 20 C30 20")]
    [InlineData("d", "M10 20 L30")]
    [InlineData("d", "L10 20")]
    [InlineData("d", "M10 -20 L30 20")]
    [InlineData("d", "M10 20 L101 20")]
    [InlineData("d", "M10.5 20 L30 20")]
    [InlineData("fill", "#888")]
    [InlineData("stroke", "red")]
    [InlineData("stroke-width", "4pt")]
    public void Anything_else_is_refused(string attribute, string value)
    {
        var bad = System.Text.RegularExpressions.Regex.Replace(Good, $" {attribute}=\"[^\"]*\"", $" {attribute}=\"{value}\"");
        Assert.NotEqual(Good, bad);
        Assert.Throws<FormatException>(() => Read(bad));
    }

    [Theory]
    [InlineData("<g/>")]
    [InlineData("<text>ewe</text>")]
    [InlineData("""<path d="M10 20 L30 20" fill="none" stroke="#000" stroke-width="4" transform="scale(2)"/>""")]
    [InlineData("<path/>")]
    public void So_is_any_other_element(string element) => Assert.Throws<FormatException>(() => Read(element));

    private static LineDrawing Read(string paths) => LineDrawing.Read(new StringReader($"""<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 100 50">{paths}</svg>"""));
}
