using System.Collections.Immutable;
using System.Globalization;
using PaperFlock.Layout.Elements;
using PaperFlock.Sheets.House;
using PaperFlock.Sheets.Issues;
using static PaperFlock.Layout.Units;

namespace PaperFlock.Sheets.Register;

/// <summary>Every issue of the pack so far, and who filed it.</summary>
internal static class IssueTable
{
    public static Column Of(Stationery stationery, ImmutableArray<IssueLine> issues) => new(
        [
            Ink.Text(stationery.Language.Say("Issues of this pack"), Fount.Heading),
            new Table(
                [Track.Fixed(Mm(15)), Track.Fixed(Mm(40)), Track.Share(), Track.Fixed(Mm(34))],
                [
                    new TableRow(
                    [
                        Ink.Cell(stationery.Language.Say("issue"), Fount.Label, TextAlign.Centre), Ink.Cell(stationery.Language.Say("printed"), Fount.Label),
                        Ink.Cell(stationery.Language.Say("what changed"), Fount.Label), Ink.Cell(stationery.Language.Say("filed by, day"), Fount.Label),
                    ]),
                ],
                [.. issues.Select(issue => Row(stationery, issue))]),
            Ink.Text(stationery.Language.Say("Changed by hand: one line through it, initials, day. Then put it in the flock file."), Fount.Body),
            new LogLines(stationery.TableRow, AtLeast: 2),
        ],
        5);

    private static TableRow Row(Stationery stationery, IssueLine issue) => new(
        [
            Ink.Cell(issue.Number.ToString(CultureInfo.InvariantCulture), Fount.Body, TextAlign.Centre),
            Ink.Cell(stationery.Language.Days.Long(issue.On), Fount.Body),
            Ink.Cell(issue.What, Fount.Body),
            Ink.Blank(),
        ],
        stationery.TableRow);
}
