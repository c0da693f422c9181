using PaperFlock.Flocks.Reading.Values;
using PaperFlock.Planning;

namespace PaperFlock.Cli.Entering.Sheets;

/// <summary>Tup and raddle: the days a fresh mark was seen.</summary>
internal sealed class RaddleMarks : IPencilSheet
{
    public string Word => "marks";

    public string Title => "Tup and raddle (RADL)";

    public string About => "days a fresh raddle mark was seen";

    public string NoEwes => "there is no raddle sheet in this pack: no tup wears raddle";

    public ImmutableArray<(string Keys, string Meaning)> Keys =>
    [
        ("14", "marked on the 14th, where only one month of the tup's stay has it"),
        ("14 aug", "marked on 14 August; `2026-08-14`, `today` and `yesterday` do as well"),
        ("yellow 14", "marked on the 14th while the tup wore yellow: the column of the sheet; y will do"),
        ("14 aug, 31", "marked on both days"),
        ("-14 aug", "not marked on 14 August after all"),
    ];

    public ImmutableArray<ResultColumn> Columns =>
    [
        new("mark", "marks", "marked", "marked on", "date", "day", "date marked", "mark date", "raddle", "raddle mark"),
        .. Enumerable.Range(1, 6).Select(n => new ResultColumn(FormattableString.Invariant($"mark {n}"), FormattableString.Invariant($"raddle {n}"), FormattableString.Invariant($"date {n}"))),
    ];

    public bool RowsMayRepeat => true;

    public ImmutableArray<EwePlan> Ewes(SeasonPlan plan) => [.. PencilLists.TupAndRaddle(plan).SelectMany(g => g.Ewes)];

    public string Known(Asked asked) => asked.Ewe.Marks.IsEmpty ? "" : $"marked {ScreenText.List(asked.Ewe.Marks.Select(m => Say(m, asked)))}";

    /// <summary>More figures or a month may always follow.</summary>
    public bool IsWhole(string typed) => typed == "-";

    public Understood Understand(string typed, Asked asked)
    {
        if (typed == "-")
        {
            return Understood.As("no mark", new KeyPart("marks", null));
        }

        var parts = new List<AnswerPart>();
        var words = new List<string>();
        foreach (var text in typed.Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
        {
            var isTakenBack = text[0] == '-';
            var (day, whyNot) = Day(isTakenBack ? text[1..].Trim() : text, asked);
            if (day is not { } d)
            {
                return Understood.Not(whyNot!);
            }

            if (isTakenBack && !asked.Ewe.Marks.Contains(d))
            {
                return Understood.Not($"she has no mark of {ScreenText.Day(d)} to take away");
            }

            parts.Add(new MarkPart(d, !isTakenBack));
            words.Add($"{(isTakenBack ? "not marked" : "marked")} {Say(d, asked)}");
        }

        return parts.Count == 0 ? Understood.Not("there is no day in it") : Understood.As(string.Join(", ", words), parts.Distinct());
    }

    public (Understood What, string? Column) Understand(ImmutableArray<(string Column, string Text)> cells, Asked asked)
    {
        var days = new List<LocalDate>();
        foreach (var (column, text) in cells)
        {
            foreach (var one in text.Split([',', ';'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
            {
                var (day, whyNot) = Day(one, asked);
                if (day is not { } d)
                {
                    return (Understood.Not(whyNot!), column);
                }

                days.Add(d);
            }
        }

        return (Understood.As(string.Join(", ", days.Distinct().Select(d => $"marked {Say(d, asked)}")), days.Distinct().Select(d => new MarkPart(d, Seen: true))), cells[^1].Column);
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
        if (word.Length == 0 || !char.IsLetter(word[0]) || WrittenDate.IsMonth(word))
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
