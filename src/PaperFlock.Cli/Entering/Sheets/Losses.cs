using PaperFlock.Planning;

namespace PaperFlock.Cli.Entering.Sheets;

/// <summary>Who has left the flock, and who has lost her lambs: noted on whichever sheet was at hand.</summary>
internal sealed class Losses() : PencilSheet(
    "losses",
    "Losses",
    "ewes that died, were sold, culled or are missing, and ewes that lost their lambs",
    "there is no ewe in this flock",
    Understood.As("still in the flock, nothing lost", new AnswerPart("gone", null), new AnswerPart("lost-lambs", null)))
{
    private const string Lost = "lost";

    /// <summary>A day without its month is the last such day there was.</summary>
    private const int DaysBack = 27;

    /// <summary>A day without its year is of this season, and none comes twice.</summary>
    private const int MostDaysBack = 300;
    private const int MonthsBefore = 3;

    private static readonly string[] Whys = ["died", "sold", "culled", "missing", Lost];

    public override string Order => "in the order of the flock file; / and the letters of her name go to one";

    public override ImmutableArray<(string Keys, string Meaning)> Keys =>
    [
        ("died 3 dec", "she died on 3 December; `today`, `yesterday` and `2026-12-03` do as well, and d for died"),
        ("sold today", "s for sold, c for culled, m for missing"),
        ("lost 30 nov", "she lost her lambs on 30 November and is no longer in lamb: l will do"),
        ("lost 30 nov, died 3 dec", "both"),
    ];

    public override ImmutableArray<ResultColumn> Columns =>
    [
        new("gone", "gone on", "date gone", "date", "day", "left", "left on"), new("why", "reason", "gone why", "fate", "cause"), new("lost-lambs", "lost lambs on", "aborted", "aborted on"),
    ];

    public override ImmutableArray<EwePlan> Ewes(SeasonPlan plan) => plan.Ewes;

    public override string Known(Asked asked) => string.Join(", ", new[]
    {
        asked.Ewe.LostLambs is { } lost ? Say(Lost, lost) : "",
        asked.Ewe.Gone is { } gone ? Say(Whys[(int)gone.Why], gone.On) : "",
    }.Where(w => w.Length > 0));

    protected override Understood Read(string typed, Asked asked)
    {
        var said = Understood.All(typed.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries).Select(one => One(one, asked)));
        return said.Answer is { Parts: var parts } && (parts.IsEmpty || parts.DistinctBy(p => p.Key).Count() < parts.Length)
            ? Understood.Not("that is one thing too many; type what became of her once, and beside it `lost` with a day if she had lost her lambs")
            : said;
    }

    public override Understood Understand(ImmutableArray<(string Column, string Text)> cells, Asked asked)
    {
        var whyCell = cells.ToList().FindIndex(c => c.Column == "why");
        var gone = whyCell < 0 ? null : Why(cells[whyCell].Text);
        var said = Understood.All(cells.Select((cell, at) => Day(cell.Column, cell.Text, at)).Where((_, at) => at != whyCell));
        return whyCell >= 0 && said.Answer?.Parts.Any(p => p.Key == "gone") is false ? Understood.Not("it is not said on which day", whyCell) : said;

        Understood Day(string column, string text, int at) =>
            column == "lost-lambs" ? On(Lost, text, asked) with { Cell = at }
            : gone is null or Lost ? Understood.Not("it is not said what became of her; write died, sold, culled or missing beside the day", whyCell < 0 ? at : whyCell)
            : On(gone, text, asked) with { Cell = at };
    }

    /// <summary>What became of her, and the day.</summary>
    private static Understood One(string typed, Asked asked)
    {
        var words = typed.Split(' ', 2);
        return Why(words[0]) is not { } why ? Understood.Not($"`{words[0]}` does not say what became of her; type died, sold, culled, missing or lost, and the day")
            : words.Length == 1 ? Understood.Not($"the day is missing; type it too, such as `{why} today`")
            : On(why, words[1].Trim(), asked);
    }

    private static Understood On(string why, string text, Asked asked)
    {
        var (day, whyNot) = Day(why, text, asked);
        if (day is not { } on)
        {
            return Understood.Not(whyNot!);
        }

        var iso = FlockValue.Word(LocalDatePattern.Iso.Format(on));
        return Understood.As(
            Say(why, on), why == Lost ? new AnswerPart("lost-lambs", iso) : new AnswerPart("gone", FlockValue.Section(("on", iso), ("why", FlockValue.Word(why)))));
    }

    private static string? Why(string word) => Whys.FirstOrDefault(w => w.StartsWith(word, StringComparison.OrdinalIgnoreCase));

    private static (LocalDate? Day, string? WhyNot) Day(string why, string text, Asked asked)
    {
        if (why == Lost)
        {
            var group = asked.Group;
            return SeasonDay.Read(text, [new DateInterval(group.TupIn.PlusDays(1), group.TupOut.PlusDays(LambingResults.LongestGestationDays))], asked.Today, "she can have carried them");
        }

        var today = asked.Today;
        var first = text.All(char.IsAsciiDigit) ? today.PlusDays(-DaysBack) : LocalDate.Min(LocalDate.Max(asked.Group.TupIn.PlusMonths(-MonthsBefore), today.PlusDays(-MostDaysBack)), today);
        var (day, whyNot) = SeasonDay.Read(text, [new DateInterval(first, today)], today, "it can have been");
        var soon = new DateInterval(today.PlusDays(1), today.PlusDays(DaysBack));
        return day is null && SeasonDay.Read(text, [soon], soon.End, "").Day is not null ? (null, EnterMessages.NotYet(text, today)) : (day, whyNot);
    }

    private static string Say(string why, LocalDate day) => $"{(why == Lost ? "lost her lambs" : why)} {ScreenText.Day(day)}";
}
