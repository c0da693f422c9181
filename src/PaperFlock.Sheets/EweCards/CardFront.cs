using System.Collections.Immutable;
using PaperFlock.Languages;
using PaperFlock.Layout;
using PaperFlock.Layout.Elements;
using PaperFlock.Planning;
using PaperFlock.Sheets.House;

namespace PaperFlock.Sheets.EweCards;

/// <summary>Front of a card: her name and the day she is due are the largest things on it.</summary>
internal static class CardFront
{
    private const int MostTasks = 3;

    /// <summary>Characters of a note that the largest type there is leaves no room for.</summary>
    private static readonly int[] ShorterNotes = [160, 100, 60, 30];

    private static readonly TextStyle Small = Fount.Label with { Size = 9.5 };
    private static readonly TextStyle SmallBold = Fount.LabelBold with { Size = 9.5 };
    private static readonly Edges SmallPadding = Edges.Of(3, 3);

    // Widths of the columns of what was found, and of its value.
    private static readonly double[] CaptionShares = [0.8, 0.72, 0.72];
    private static readonly double[] ValueShares = [1.15, 1, 1];

    public static Element Of(Stationery stationery, CardFormat format, EwePlan ewe, string code)
    {
        // What the jobs sheet and the feed chart say too gives way before what only her card says, and a long note last of all.
        var note = ewe.Ewe.Note ?? "";
        IEnumerable<(int Tasks, bool Ration, Text Note)> shorter =
        [
            .. Enumerable.Range(0, MostTasks + 1).Select(dropped => (MostTasks - dropped, true, Ink.Text(note, Fount.BodyBold))),
            (0, false, Ink.Text(note, Fount.BodyBold)),
            (0, false, Ink.Text(note, Fount.LabelBold)),
            .. ShorterNotes.Where(n => n < note.Length).Select(n => (0, false, Shortened(note, n, stationery.Language))),
        ];
        return new FirstThatFits(shorter.Select(s => Card(stationery, format, ewe, code, s.Tasks, s.Ration, s.Note)));
    }

    /// <summary>As many whole words as the length holds, and where to read on.</summary>
    private static Text Shortened(string note, int length, Language language)
    {
        var end = note.LastIndexOf(' ', length);
        return Ink.Text(language.Say($"{note[..(end > 0 ? end : length)]} \u2026 (the rest of her note is in the flock file)"), Fount.LabelBold);
    }

    private static Element Card(Stationery stationery, CardFormat format, EwePlan ewe, string code, int tasks, bool ration, Text note)
    {
        var width = format.Content.Width;
        ImmutableArray<Element?> parts =
        [
            Title(stationery, ewe, width),
            Ink.Largest(ewe.Ewe.Tag, stationery.Measurer, width, TextAlign.Left, Fount.Tag with { Size = 17 }, Fount.Tag with { Size = 14 }, Fount.Tag),
            Identity(stationery, ewe),
            Headline(ewe, stationery),
            Checks(stationery, ewe, width),
            ration ? CardRation.Of(stationery, ewe, width) : null,
            note,
            Tasks(stationery, ewe, tasks),
            new LogLines(stationery.BarnRow, AtLeast: 0),
        ];
        var body = new Column([.. parts.OfType<Element>()], 5);
        return CardFrame.Of(stationery, format, body, code, stationery.Language.Say("front"), $"card of {ewe.Ewe.CallName}");
    }

    private static Row Title(Stationery stationery, EwePlan ewe, double width)
    {
        var right = LitterWord(ewe, stationery.Language);
        var rightStyle = Fount.Cap(Face.TextBold, 4.2);
        var rightWidth = stationery.Measurer.WidthOf(right, rightStyle) + 2;
        return new Row(
            [
                new RowCell(
                    Track.Share(),
                    Ink.Largest(
                        ewe.Ewe.Name ?? stationery.Language.Say("no name"), stationery.Measurer, width - rightWidth - 8, TextAlign.Left,
                        Fount.Cap(Face.TextBold, 6), Fount.Cap(Face.TextBold, 4.8), Fount.Cap(Face.TextBold, 3.8)),
                    VerticalAlign.Bottom),
                new RowCell(Track.Fixed(rightWidth), Ink.Text(right, rightStyle, TextAlign.Right, 1.1), VerticalAlign.Top),
            ],
            8);
    }

    private static string LitterWord(EwePlan ewe, Language language) => (ewe.Standing, ewe.IsScanned, ewe.Litter) switch
    {
        (Standing.Empty, _, _) => language.Say("EMPTY"),
        (Standing.LeftOut, _, _) => language.Say("LEFT OUT"),
        (Standing.Lambed, _, _) => language.Say("LAMBED"),
        (_, false, _) => language.Say("not scanned"),
        var (_, _, n) => language.CountLoose(n, "lamb", "lambs"),
    };

    private static Text Identity(Stationery stationery, EwePlan ewe)
    {
        var group = stationery.Flock.GroupOf(ewe.Ewe);
        var words = new[]
        {
            ewe.Ewe.Breed,
            ewe.Ewe.Born is { } born ? stationery.Language.Say($"born\u00a0{born}") : null,
            group.Name.Length > 0 ? group.Name : null,
            group.Tup is { } tup ? stationery.Language.Say($"tup\u00a0{tup.Replace(' ', '\u00a0')}") : null,
            ewe.Pen is { } pen ? stationery.Language.Say($"pen\u00a0{pen.Replace(' ', '\u00a0')}") : null,
        };
        return Ink.Text(string.Join(" · ", words.OfType<string>().DefaultIfEmpty(stationery.Language.Say("no breed or group given"))), Fount.Label, leading: 1.25);
    }

    /// <summary>When she is due, or why she is not.</summary>
    private static Box Headline(EwePlan ewe, Stationery stationery)
    {
        var language = stationery.Language;
        var padding = Edges.Of(7, 5);
        if (ewe.Due is { } due)
        {
            var caption = language.Say("due");
            return new Box(
                Ink.Column(
                    2,
                    new Row(
                        [
                            new RowCell(Track.Fixed(Math.Max(30, stationery.Measurer.WidthOf(caption, Fount.Body) + 2)), Ink.Text(caption, Fount.Body), VerticalAlign.Bottom),
                            new RowCell(Track.Share(), Ink.Text(language.Days.Short(due.Likely), Fount.Cap(Face.TextBold, 5.4), leading: 1.05), VerticalAlign.Bottom),
                        ]),
                    Ink.Text(language.Say($"9 in 10 between {language.Days.Short(due.Earliest)} and {language.Days.Short(due.Latest)}"), Fount.Label),
                    Ink.Text(due.Words, Fount.LabelBold)),
                padding,
                Lines.Section);
        }

        var (bold, plain) = ewe.Standing switch
        {
            Standing.Lambed => (language.Say($"Lambed {language.Days.Short(ewe.Ewe.Lambed!.Value)}"), language.Say("Her card is closed.")),
            Standing.LeftOut => (language.Say("Left out of the tup"), ewe.Advice.Reason),
            _ => (language.Say("Scanned empty"), language.Say("No lambs: feed and house her apart from those in lamb.")),
        };
        return new Box(
            Ink.Column(2, Ink.Text(bold, Fount.Cap(Face.TextBold, 4.2), leading: 1.1), Ink.Text(plain, Fount.Label)),
            padding,
            Lines.Section);
    }

    private static Table Checks(Stationery stationery, EwePlan ewe, double width)
    {
        var (e, language) = (ewe.Ewe, stationery.Language);
        (string Caption, string Value)[] checks =
        [
            (language.Say("teeth"), CheckWords.Of(e.Teeth, language) ?? ""),
            (language.Say("toes"), CheckWords.Of(e.Toes, language) ?? ""),
            (language.Say("teats"), CheckWords.Of(e.Teats, language) ?? ""),
            (language.Say("weight"), e.Weight is { } w ? stationery.Amounts.Weight(w.Kilograms) : ""),
            (language.Say("score"), e.Condition is { } c ? Amounts.Figure(c, "0.0") : ""),
            (language.Say("now"), ""),
        ];
        var captions = CaptionShares.Select((share, i) => (Share: share, Words: checks.Where((_, n) => n % 3 == i).Select(p => p.Caption)));
        var shares = CaptionShares.Sum() + ValueShares.Sum();
        var apart = captions.All(p => stationery.WidestOf(Small, p.Words) + SmallPadding.Horizontal <= p.Share / shares * width);
        return apart
            ? new Table(
                [.. CaptionShares.Zip(ValueShares, (caption, value) => (ImmutableArray<Track>)[Track.Share(caption), Track.Share(value)]).SelectMany(t => t)],
                [],
                [.. checks.Chunk(3).Select(row => new TableRow([.. row.SelectMany(p => new[] { Cell(new Run(p.Caption, Small)), Cell(new Run(p.Value, SmallBold)) })]))])
            : new Table(
                [.. Enumerable.Repeat(Track.Share(), 3)],
                [],
                [.. checks.Chunk(3).Select(row => new TableRow([.. row.Select(p => Cell(new Run(p.Caption + " ", Small), new Run(p.Value, SmallBold)))]))]);
    }

    private static TableCell Cell(params ImmutableArray<Run> words) => new(new Text(words, Leading: 1.2), Padding: SmallPadding);

    /// <summary>The last things done to her this side of lambing, to tick off. Those that are past stay, so that a day that passes changes no card.</summary>
    private static Element? Tasks(Stationery stationery, EwePlan ewe, int most)
    {
        var jobs = stationery.Plan.Jobs
            .Where(j => j.Handled && j.Date is not null && (j.Group is null || j.Group.Name == ewe.Ewe.Group))
            .Where(j => ewe.IsCarrying || j.Id is not (JobIds.House or JobIds.Dag or JobIds.Booster))
            .GroupBy(j => j.Date!.Value)
            .OrderBy(g => g.Key)
            .TakeLast(most)
            .ToArray();
        return jobs.Length == 0 ? null : new Column(
            [
                .. jobs.Select(g => Ink.TickWith(
                    stationery.BarnTick,
                    new Text([new Run(stationery.Language.Days.Short(g.Key), Fount.LabelBold, Whole: true), new Run("  " + string.Join(", ", g.Select(j => j.Title).Distinct()), Fount.Label)]))),
            ],
            3);
    }
}
