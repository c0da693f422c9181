using PaperFlock.Layout.Painting;
using static PaperFlock.Packs.Figures.Shown;

namespace PaperFlock.Packs.Screen;

/// <summary>Pages of a pack as pictures a screen draws for itself.</summary>
public static class ScreenPictures
{
    /// <summary>The pages of some sheets: each its <c>label</c>, <c>title</c>, <c>width</c> and <c>height</c> in points, and what is <c>drawn</c> (see <see cref="PictureCanvas"/>). Of a sheet with nothing to say there are none.</summary>
    /// <param name="words">Sheets by name or page code, with blanks between.</param>
    /// <exception cref="PackRequestException">There is no such sheet.</exception>
    public static JsonArray Of(SeasonPlan plan, string words)
    {
        var pages =
            from sheet in ScreenPack.Fitting(() => PackComposer.Compose(plan, FontLibrary.Measurer, ScreenPack.Choice(words))).Sheets
            from side in sheet.Sides
            where !side.IsBlank
            select (sheet, side);
        return List(pages, of =>
        {
            var canvas = new PictureCanvas();
            PiecePainter.Paint(of.side.Page, canvas);
            return new JsonObject
            {
                ["label"] = of.side.Label,
                ["title"] = of.sheet.Title,
                ["width"] = of.side.Page.Paper.Width,
                ["height"] = of.side.Page.Paper.Height,
                ["drawn"] = canvas.Drawn,
            };
        });
    }
}
