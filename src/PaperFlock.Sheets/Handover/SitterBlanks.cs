using PaperFlock.Flocks;
using PaperFlock.Layout.Elements;
using PaperFlock.Sheets.House;

namespace PaperFlock.Sheets.Handover;

/// <summary>Boxes for the name and number of a sitter the flock file does not know.</summary>
internal static class SitterBlanks
{
    /// <returns>Null where the file says both.</returns>
    public static Element? For(Stationery stationery, Absence away) => away is { Sitter: not null, Phone: not null }
        ? null
        : new Table(
            [Track.Share(1.3), Track.Share()],
            [],
            [
                new TableRow(
                    [
                        new TableCell(Ink.Text(away.Sitter is { } sitter ? stationery.Language.Say($"sitter: {sitter}") : stationery.Language.Say("sitter"), Fount.Label), Align: VerticalAlign.Top),
                        new TableCell(Ink.Text(away.Phone is { } phone ? stationery.Language.Say($"phone: {phone}") : stationery.Language.Say("phone"), Fount.Label), Align: VerticalAlign.Top),
                    ],
                    stationery.TableRow + Fount.Label.Size),
            ]);
}
