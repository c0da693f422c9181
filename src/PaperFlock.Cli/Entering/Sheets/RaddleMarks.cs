using PaperFlock.Flocks.Reading.Values;
using PaperFlock.Planning;

namespace PaperFlock.Cli.Entering.Sheets;

/// <summary>Tup and raddle: the days a fresh mark was seen.</summary>
internal sealed class RaddleMarks() : PencilSheet(
    "marks",
    "Tup and raddle (RADL)",
    "days a fresh raddle mark was seen",
    "there is no raddle sheet in this pack: no tup wears raddle",
    Understood.As("no mark", new MarksPart([])))
{
    public override ImmutableArray<(string Keys, string Meaning)> Keys =>
    [
        ("14", "marked on the 14th, where only one month of the tup's stay has it"),
        ("14 aug", "marked on 14 August; `2026-08-14`, `today` and `yesterday` do as well"),
        ("yellow 14", "marked on the 14th while the tup wore yellow: the column of the sheet; y will do"),
        ("14 aug, 31", "marked on both days"),
        ("15", "in place of a day that stands in the column of the same raddle"),
        ("+15", "beside it"),
        ("-14 aug", "not marked on 14 August after all"),
    ];

    public override ImmutableArray<ResultColumn> Columns =>
    [
        new("mark", "marks", "marked", "marked on", "date", "day", "date marked", "mark date", "raddle", "raddle mark"),
        .. Enumerable.Range(1, 6).Select(n => new ResultColumn(FormattableString.Invariant($"mark {n}"), FormattableString.Invariant($"raddle {n}"), FormattableString.Invariant($"date {n}"))),
    ];

    public override bool RowsMayRepeat => true;

    public override ImmutableArray<EwePlan> Ewes(SeasonPlan plan) => [.. PencilLists.TupAndRaddle(plan).SelectMany(g => g.Ewes)];

    public override string Known(Asked asked) => asked.Ewe.Marks.IsEmpty ? "" : $"marked {ScreenText.List(asked.Ewe.Marks.Select(m => Say(m, asked)))}";

    protected override Understood Read(string typed, Asked asked)
    {
        var said = new List<(char Sign, LocalDate Day)>();
        foreach (var text in typed.Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
        {
            var sign = text[0] is '-' or '+' ? text[0] : ' ';
            var (day, whyNot) = Day(text.TrimStart('-', '+').Trim(), asked);
            if (day is not { } d)
            {
                return Understood.Not(whyNot!);
            }

            if (sign == '-' && !asked.Ewe.Marks.Contains(d))
            {
                return Understood.Not($"she has no mark of {ScreenText.Day(d)} to take away");
            }

            said.Add((sign, d));
        }

        return said.Count == 0 ? Understood.Not("there is no day in it") : Answer(said, asked);
    }

    public override Understood Understand(ImmutableArray<(string Column, string Text)> cells, Asked asked)
    {
        var days = new List<LocalDate>();
        for (var cell = 0; cell < cells.Length; cell++)
        {
            foreach (var one in cells[cell].Text.Split([',', ';'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
            {
                var (day, whyNot) = Day(one, asked);
                if (day is not { } d)
                {
                    return Understood.Not(whyNot!, cell);
                }

                days.Add(d);
            }
        }

        return Answer([.. days.Select(d => (' ', d))], asked);
    }

    /// <summary>A day takes the place of what stood in its box of the paper, the column of one colour: a mark that was read wrongly is put right by typing it again.</summary>
    /// <param name="said">Behind a minus: not marked that day. Behind a plus: beside what stands in the box.</param>
    private static Understood Answer(IReadOnlyCollection<(char Sign, LocalDate Day)> said, Asked asked)
    {
        var periods = Periods(asked);
        var gone = said.Where(s => s.Sign == '-').Select(s => s.Day).ToList();
        var marked = said.Where(s => s.Sign != '-').Select(s => s.Day).Distinct().ToList();
        var boxes = said.Where(s => s.Sign == ' ').Select(s => Box(s.Day)).ToHashSet();
        var replaced = asked.Ewe.Marks.Where(m => !marked.Contains(m) && !gone.Contains(m) && boxes.Contains(Box(m))).ToList();
        var words = gone.Select(d => $"not marked {Say(d, asked)}").Concat(marked.Select(d => $"marked {Say(d, asked)}"));
        var instead = replaced.Count == 0 ? "" : $", in place of {ScreenText.List(replaced.Select(ScreenText.Day))}";
        return Understood.As(
            string.Join(", ", words) + instead,
            new MarksPart([.. asked.Ewe.Marks.Except(gone).Except(replaced).Concat(marked).Distinct().Order().Select(LocalDatePattern.Iso.Format)]));

        int Box(LocalDate day) => periods.ToList().FindIndex(p => p.From <= day && day <= p.To);
    }

    private static (LocalDate? Day, string? WhyNot) Day(string text, Asked asked)
    {
        var group = asked.Group;
        if (group.IsOneDay)
        {
            return (null, $"her group was mated on one day, {ScreenText.Day(group.TupIn)}, and has no marks");
        }

        var stay = new DateInterval(group.TupIn, group.TupOut);
        var split = text.IndexOf(' ', StringComparison.Ordinal);
        var word = split < 0 ? "" : text[..split];
        if (word.Length == 0 || !char.IsLetter(word[0]) || WrittenDate.IsMonth(word) || WrittenDate.SplitWeekday(text).Weekday is not null)
        {
            return SeasonDay.Read(text, [stay], asked.Today, "the tup of her group is in");
        }

        var worn = Periods(asked).Where(p => p.Colour.StartsWith(word, StringComparison.OrdinalIgnoreCase)).ToList();
        var colours = worn.Select(p => p.Colour).Distinct(StringComparer.OrdinalIgnoreCase).ToList();
        return colours.Count == 1
            ? SeasonDay.Read(text[(split + 1)..], [.. worn.Select(p => new DateInterval(p.From, p.To))], asked.Today, $"the tup wears {colours[0]}")
            : (null, $"`{word}` is {(colours.Count == 0 ? "none" : "more than one")} of the colours of her group: {ScreenText.List(Periods(asked).Select(p => p.Colour).Distinct(StringComparer.OrdinalIgnoreCase))}");
    }

    private static string Say(LocalDate day, Asked asked) =>
        Periods(asked).FirstOrDefault(p => p.From <= day && day <= p.To) is { } period ? $"{ScreenText.Day(day)} ({period.Colour})" : ScreenText.Day(day);

    private static ImmutableArray<RaddlePeriod> Periods(Asked asked) =>
        asked.Group.Raddle.IsEmpty ? [] : RaddlePeriod.Of(asked.Group, asked.Flock.Practice.ChangeoverDays);
}
