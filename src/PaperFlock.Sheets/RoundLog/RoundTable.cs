using System.Collections.Immutable;
using NodaTime;
using PaperFlock.Languages;
using PaperFlock.Layout;
using PaperFlock.Layout.Elements;
using PaperFlock.Planning;
using PaperFlock.Sheets.House;
using PaperFlock.Sheets.Issues;
using static PaperFlock.Layout.Units;

namespace PaperFlock.Sheets.RoundLog;

/// <summary>A row a round: the hour it should be walked, when it was, and what was looked at.</summary>
internal static class RoundTable
{
    /// <summary>More below than above: the tails of the small words must clear the frame where a page ends.</summary>
    private static readonly Edges Hour = new(4, 0.5, 4, 1.5);

    public static ImmutableArray<Track> Columns(Stationery stationery)
    {
        var language = stationery.Language;
        var tick = stationery.Column(
            Math.Max(stationery.BarnTick + 8, Mm(14)), Fount.Label with { Size = 9.5 },
            language.Say("all on their feet"), language.Say("all eating"), language.Say("water"), language.Say("hay"));
        return [Track.Fixed(Mm(31)), Track.Fixed(Mm(18)), Track.Fixed(Mm(18)), tick, tick, tick, tick, Track.Share()];
    }

    public static TableRow Head(Stationery stationery)
    {
        var heads = LogWords.EwesToCount(stationery.Plan);
        return new TableRow(
        [
            Ink.Cell(stationery.Language.Say("round"), Fount.Label), Small(stationery.Language.Say("walked at")), Small(stationery.Language.Say($"seen, of {heads}")), Small(stationery.Language.Say("all on their feet")), Small(stationery.Language.Say("all eating")),
            Small(stationery.Language.Say("water")), Small(stationery.Language.Say("hay")), Ink.Cell(stationery.Language.Say("which ewe, what you saw and did, who you told"), Fount.Label),
        ]);
    }

    /// <param name="day">Where the table is not one day's alone.</param>
    public static TableRow Row(Stationery stationery, Round round, LocalDate? day = null, double? ruleAbove = null)
    {
        var tick = Ink.Cell(Ink.Tick(stationery.BarnTick));
        var label = day is { } d ? $"{stationery.Language.Days.WeekdayNumber(d)} {round.Name}" : round.Name;
        return new TableRow(
            [
                new TableCell(
                    Ink.Column(0, Ink.Text(Days.Clock(round.At), new TextStyle(Face.TextBold, 17), leading: 1.0), Ink.Text(label, Fount.Label with { Size = 9.5 }, leading: 1.05)),
                    Padding: Hour),
                Ink.Blank(), Ink.Blank(), tick, tick, tick, tick, Ink.Blank(),
            ],
            stationery.BarnRow,
            ruleAbove,
            Name: day is { } on ? Dated.Name(label, on) : label);
    }

    /// <summary>The last line of a day: what the next person must know.</summary>
    public static TableRow LeftForTomorrow(Stationery stationery) => new(
        [new TableCell(Ink.Text(stationery.Language.Say("left for tomorrow"), Fount.LabelBold), 8, VerticalAlign.Top, Edges.Of(4, 3))],
        stationery.BarnRow);

    private static TableCell Small(string words) => new(Ink.Text(words, Fount.Label with { Size = 9.5 }, TextAlign.Centre, 1.1), Padding: Edges.Of(1, 2));
}
