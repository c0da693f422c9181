using System.Text.Json.Nodes;
using PaperFlock.Layout.Painting;
using static PaperFlock.Packs.Figures.Shown;

namespace PaperFlock.Packs.Screen;

/// <summary>Pages of a pack as pictures a screen draws for itself.</summary>
public static class ScreenPictures
{
    /// <summary>The pages of some sheets: each its <c>label</c>, <c>title</c>, <c>width</c> and <c>height</c> in points, and what is <c>drawn</c> (see <see cref="PictureCanvas"/>).</summary>
    /// <param name="words">Sheets by name or page code, with blanks between.</param>
    /// <exception cref="PackRequestException">There is no such sheet, or it has nothing to say.</exception>
    public static JsonArray Of(PlannedFlock planned, string words)
    {
        var (kinds, codes, complaints) = SheetChoice.Read(words.Split(' ', StringSplitOptions.RemoveEmptyEntries));
        if (!complaints.IsEmpty)
        {
            throw new PackRequestException(complaints[0]);
        }

        var pack = ScreenPack.Made(planned.Plan!, new PackRequest(kinds) { Codes = codes }, null);
        return List(
            from sheet in pack.Issue.Pack.Sheets from side in sheet.Sides where !side.IsBlank select (sheet, side),
            of =>
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
