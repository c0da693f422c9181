namespace PaperFlock.Sheets.Handover;

/// <summary>Boxes for the name and number of a sitter the flock file does not know.</summary>
internal static class SitterBlanks
{
    /// <returns>Null where the file says both.</returns>
    public static Element? For(SheetContext context, Absence away) => away is { Sitter: not null, Phone: not null }
        ? null
        : new Table(
            [Track.Share(1.3), Track.Share()],
            [],
            [
                new TableRow(
                    [
                        new TableCell(Block.Text(away.Sitter is { } sitter ? $"sitter: {sitter}" : "sitter", TypeScale.Label), Align: VerticalAlign.Top),
                        new TableCell(Block.Text(away.Phone is { } phone ? $"phone: {phone}" : "phone", TypeScale.Label), Align: VerticalAlign.Top),
                    ],
                    context.WriteIn.TableRow + TypeScale.Label.Size),
            ]);
}
