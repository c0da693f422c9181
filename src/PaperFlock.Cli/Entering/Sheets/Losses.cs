using PaperFlock.Planning;

namespace PaperFlock.Cli.Entering.Sheets;

/// <summary>Who has left the flock, and who has lost her lambs: noted on whichever sheet was at hand.</summary>
internal sealed class Losses : IPencilSheet
{
    private const string Lost = "lost";

    /// <summary>A day without its month is the last such day there was.</summary>
    private const int DaysBack = 27;

    /// <summary>A day without its year is of this season, and none comes twice.</summary>
    private const int MostDaysBack = 300;
    private const int MonthsBefore = 3;

    private static readonly string[] Whys = ["died", "sold", "culled", "missing", Lost];

    public string Word => "losses";

    public string Title => "Losses";

    public string About => "ewes that died, were sold, culled or are missing, and ewes that lost their lambs";

    public string Order => "in the order of the flock file; / and the letters of her name go to one";

    public string NoEwes => "there is no ewe in this flock";

    public ImmutableArray<(string Keys, string Meaning)> Keys =>
    [
        ("died 3 dec", "she died on 3 December; `today`, `yesterday` and `2026-12-03` do as well, and d for died"),
        ("sold today", "s for sold, c for culled, m for missing"),
        ("lost 30 nov", "she lost her lambs on 30 November and is no longer in lamb: l will do"),
        ("lost 30 nov, died 3 dec", "both"),
    ];

    public ImmutableArray<ResultColumn> Columns =>
    [
        new("gone", "gone on", "date gone", "date", "day", "left", "left on"), new("why", "reason", "gone why", "fate", "cause"), new("lost-lambs", "lost lambs on", "aborted", "aborted on"),
    ];

    public ImmutableArray<EwePlan> Ewes(SeasonPlan plan) => plan.Ewes;

    public string Known(Asked asked) => string.Join(", ", new[]
    {
        asked.Ewe.LostLambs is { } lost ? Say(Lost, lost) : "",
        asked.Ewe.Gone is { } gone ? Say(Whys[(int)gone.Why], gone.On) : "",
    }.Where(w => w.Length > 0));

    public Understood Understand(string typed, Asked asked)
    {
        if (typed == "-")
        {
            return Understood.As("still in the flock, nothing lost", new AnswerPart("gone", null), new AnswerPart("lost-lambs", null));
        }

        var (parts, words) = (new List<AnswerPart>(), new List<string>());
        foreach (var one in typed.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
        {
            var split = one.IndexOf(' ', StringComparison.Ordinal);
            var word = split < 0 ? one : one[..split];
            if (Why(word) is not { } why)
            {
                return Understood.Not($"`{word}` does not say what became of her; type died, sold, culled, missing or lost, and the day");
            }

            if (split < 0)
            {
                return Understood.Not($"the day is missing; type it too, such as `{why} today`");
            }

            var (day, whyNot) = Day(why, one[(split + 1)..].Trim(), asked);
            if (day is not { } d)
            {
                return Understood.Not(whyNot!);
            }

            parts.Add(Part(why, d));
            words.Add(Say(why, d));
        }

        return parts.DistinctBy(p => p.Key).Count() == parts.Count && parts.Count > 0
            ? Understood.As(string.Join(", ", words), parts)
            : Understood.Not("that is one thing too many; type what became of her once, and beside it `lost` with a day if she had lost her lambs");
    }

    public Understood Understand(ImmutableArray<(string Column, string Text)> cells, Asked asked)
    {
        var (parts, words) = (new List<AnswerPart>(), new List<string>());
        var whyCell = cells.ToList().FindIndex(c => c.Column == "why");
        for (var cell = 0; cell < cells.Length; cell++)
        {
            if (cell == whyCell)
            {
                continue;
            }

            var why = cells[cell].Column == "lost-lambs" ? Lost : whyCell < 0 ? null : Why(cells[whyCell].Text);
            if (why is null || (why == Lost && cells[cell].Column == "gone"))
            {
                return Understood.Not("it is not said what became of her; write died, sold, culled or missing beside the day", whyCell < 0 ? cell : whyCell);
            }

            var (day, whyNot) = Day(why, cells[cell].Text, asked);
            if (day is not { } d)
            {
                return Understood.Not(whyNot!, cell);
            }

            parts.Add(Part(why, d));
            words.Add(Say(why, d));
        }

        return whyCell >= 0 && !parts.Exists(p => p.Key == "gone")
            ? Understood.Not("it is not said on which day", whyCell)
            : Understood.As(string.Join(", ", words), parts);
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

    private static AnswerPart Part(string why, LocalDate day)
    {
        var iso = FlockValue.Word(LocalDatePattern.Iso.Format(day));
        return why == Lost ? new AnswerPart("lost-lambs", iso) : new AnswerPart("gone", FlockValue.Section(("on", iso), ("why", FlockValue.Word(why))));
    }

    private static string Say(string why, LocalDate day) => $"{(why == Lost ? "lost her lambs" : why)} {ScreenText.Day(day)}";
}
