namespace PaperFlock.Sheets.Register;

/// <summary>Every issue of the pack so far, and who filed it.</summary>
internal static class IssueTable
{
    public static Column Of(SheetContext context, ImmutableArray<PackIssue> issues) => new(
        [
            Block.Heading("Issues of this pack"),
            new Table(
                [Track.Fixed(Mm(15)), Track.Fixed(Mm(40)), Track.Share(), Track.Fixed(Mm(34))],
                [Block.Heads(..1, "issue", "printed", "what changed", "filed by, day")],
                [.. issues.Select(issue => Row(context, issue))])
            { RowHeaders = true },
            Block.Text("Changed by hand: one line through it, initials, day. Then put it in the flock file.", TypeScale.Body),
            new LogLines(context.WriteIn.TableRow, AtLeast: 0),
        ],
        5);

    private static TableRow Row(SheetContext context, PackIssue issue) => new(
        [
            Block.Cell(issue.Number.ToString(CultureInfo.InvariantCulture), TypeScale.Body, TextAlign.Centre),
            Block.Cell(DateText.Long(issue.On), TypeScale.Body),
            Block.Cell(issue.What, TypeScale.Body),
            Block.Blank(),
        ],
        context.WriteIn.TableRow);
}
