using PaperFlock.Flocks.Reading.Values;
using PaperFlock.Planning;

namespace PaperFlock.Cli.Entering.Sheets;

/// <summary>Who lambs when: the day, and what came of it.</summary>
internal sealed class LambingResults() : PencilSheet(
    "lambed",
    "Who lambs when (DUE)",
    "lambings: day, lambs alive and dead, help",
    "nobody is to lamb in this pack: no ewe is in lamb",
    Understood.As("not lambed", OfALambing.Select(key => AnswerPart.Word(key, null))))
{
    /// <summary>No live lamb comes sooner, and none later: what the flock file takes.</summary>
    private const int ShortestGestationDays = 130;
    public const int LongestGestationDays = 165;

    /// <summary>All that a lambing is written under, its day last: the others mean nothing without it.</summary>
    private static readonly string[] OfALambing = ["lambs", "lambed-time", "lambs-alive", "lambs-dead", "lambing-help", "lambed"];

    private static readonly string[] Helps = ["none", "hand", "vet"];

    public override ImmutableArray<(string Keys, string Meaning)> Keys =>
    [
        ("14", "lambed on the 14th, where only one month can be meant; nothing more said"),
        ("14 jan 2", "lambed on 14 January, 2 lambs alive"),
        ("today 2 1", "lambed today, 2 alive, 1 dead; `yesterday` and `2027-01-14` do as well"),
        ("14 jan 3:20 2 0 v", "at 03:20, 2 alive, none dead, vet's help; n no help, h by hand"),
        ("14 jan 2; ewe 10001 4.1 kg; ram", "and her lambs for the flock book: ewe, ram or wether, tag and weight if you have them"),
        ("; ewe; wether", "her lambs alone, where the day stands already"),
    ];

    public override ImmutableArray<ResultColumn> Columns =>
    [
        new("lambed", "date", "day", "lambing date", "lambed on", "date lambed"), new("lambed-time", "time", "lambing time"),
        new("lambs-alive", "alive", "born alive", "live", "live lambs"), new("lambs-dead", "dead", "born dead", "dead lambs", "lost"),
        new("lambing-help", "help", "assisted", "assistance"),
    ];

    public override ImmutableArray<EwePlan> Ewes(SeasonPlan plan) => [.. PencilLists.WhoLambsWhen(plan).Select(row => row.Ewe)];

    public override string Known(Asked asked) => asked.Ewe.Lambed is not { } day ? ""
        : asked.Ewe.Lambs.IsEmpty ? Say(day, asked.Ewe.Lambing)
        : $"{Say(day, asked.Ewe.Lambing)}, {string.Join(", ", asked.Ewe.Lambs.Select(l => $"{l.Sex.ToString().ToLowerInvariant()} lamb {l.Tag}".TrimEnd()))}";

    protected override Understood Read(string typed, Asked asked)
    {
        if (typed.IndexOf(';', StringComparison.Ordinal) is >= 0 and var at)
        {
            return WithLambs(typed[..at].Trim(), typed[(at + 1)..].Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries), asked);
        }

        var words = typed.Split([' ', ','], StringSplitOptions.RemoveEmptyEntries);
        var date = DateWords(words);
        var cells = ImmutableArray.CreateBuilder<(string, string)>();
        cells.Add(("lambed", string.Join(' ', words[..date])));
        var counts = 0;
        foreach (var word in words[date..])
        {
            var column = word.Contains(':', StringComparison.Ordinal) || (word.Length == 4 && word.All(char.IsAsciiDigit)) ? "lambed-time"
                : !char.IsAsciiDigit(word[0]) ? "lambing-help"
                : counts++ switch { 0 => "lambs-alive", 1 => "lambs-dead", _ => "" };
            if (column.Length == 0 || cells.Any(c => c.Item1 == column))
            {
                return Understood.Not($"`{word}` is one thing too many; type the day, the time if you have it, lambs alive, lambs dead and n, h or v for the help");
            }

            cells.Add((column, word));
        }

        return Understand(cells.ToImmutable(), asked);
    }

    public override Understood Understand(ImmutableArray<(string Column, string Text)> cells, Asked asked)
    {
        var at = cells.ToList().FindIndex(c => c.Column == "lambed");
        var text = at < 0 ? null : cells[at].Text;
        if (text is null && asked.Ewe.Lambed is null)
        {
            return Understood.Not("the day she lambed is not given", 0);
        }

        var group = asked.Group;
        var (day, whyNot) = text is null
            ? (asked.Ewe.Lambed, null)
            : SeasonDay.Read(
                text, [new DateInterval(group.TupIn.PlusDays(ShortestGestationDays), group.TupOut.PlusDays(LongestGestationDays))], asked.Today, "her group could lamb");
        if (day is not { } lambed)
        {
            return Understood.Not(whyNot!, at);
        }

        var result = asked.Ewe.Lambing;
        var parts = new List<AnswerPart> { AnswerPart.Word("lambed", LocalDatePattern.Iso.Format(lambed)) };
        for (var cell = 0; cell < cells.Length; cell++)
        {
            var (column, said) = cells[cell];
            if (cell == at)
            {
                continue;
            }

            (var value, result) = Read(column, said, result);
            if (value is null)
            {
                return Understood.Not(Refusal(column, said), cell);
            }

            parts.Add(AnswerPart.Word(column, value));
        }

        return Understood.As(Say(lambed, result) + Doubt(asked.Ewe, result), parts);
    }

    /// <param name="lambing">Empty where only the lambs are said.</param>
    private Understood WithLambs(string lambing, string[] typed, Asked asked)
    {
        var (lambs, words, whyNot) = TypedLambs.Read(typed);
        if (lambs is null)
        {
            return Understood.Not(whyNot!);
        }

        if (lambing.Length == 0 && asked.Ewe.Lambed is null)
        {
            return Understood.Not("the day she lambed is not given; type it first, such as `today 2; ewe; ram`");
        }

        var before = lambing.Length == 0 ? Understood.As("") : Understand(lambing, asked);
        return before.Answer is not { } answer
            ? before
            : Understood.As(answer.Words.Length == 0 ? words! : $"{answer.Words}, {words}", answer.Parts.Add(new AnswerPart("lambs", lambs)));
    }

    /// <returns>As the flock file writes it, null where it is none; and the result with it.</returns>
    private static (string? Value, LambingResult Result) Read(string column, string text, LambingResult result) => column switch
    {
        "lambed-time" when Time(text) is { } time => (time.ToString("HH:mm", CultureInfo.InvariantCulture), result with { Time = time }),
        "lambs-alive" when Count(text) is { } alive => (Number(alive), result with { Alive = alive }),
        "lambs-dead" when Count(text) is { } dead => (Number(dead), result with { Dead = dead }),
        "lambing-help" when Help(text) is { } help => (Helps[(int)help], result with { Help = help }),
        _ => (null, result),
    };

    private static string Refusal(string column, string text) => column switch
    {
        "lambed-time" => $"`{text}` is no time of the day; write it on the 24-hour clock, such as 03:20",
        "lambing-help" => $"`{text}` is no help she can have had; write none, hand or vet, or their first letter",
        _ => $"`{text}` is no number of lambs; it lies between 0 and {LambingResult.MostLambs.ToString(CultureInfo.InvariantCulture)}",
    };

    /// <summary>How many words at the beginning make the date: a month may stand before or after the day, and a year after both.</summary>
    private static int DateWords(string[] words)
    {
        if (words.Length > 1 && WrittenDate.SplitWeekday($"{words[0]} ").Weekday is not null)
        {
            return 1 + DateWords(words[1..]);
        }

        var hasMonth = words.Length > 1 && (WrittenDate.IsMonth(words[0]) || WrittenDate.IsMonth(words[1]));
        // 2026 is a year, and 2026 hours is no time.
        return !hasMonth ? 1 : words.Length > 2 && words[2].Length == 4 && words[2].StartsWith("20", StringComparison.Ordinal) && !words[2].Contains(':', StringComparison.Ordinal) ? 3 : 2;
    }

    private static LocalTime? Time(string text)
    {
        var figures = text.Replace(":", "", StringComparison.Ordinal).Replace(".", "", StringComparison.Ordinal).PadLeft(4, '0');
        return figures.Length == 4 && int.TryParse(figures, NumberStyles.None, CultureInfo.InvariantCulture, out var n) && n / 100 < 24 && n % 100 < 60
            ? new LocalTime(n / 100, n % 100)
            : null;
    }

    private static int? Count(string text) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var count) && count <= LambingResult.MostLambs ? count : null;

    private static LambingHelp? Help(string text)
    {
        var at = Array.FindIndex(Helps, h => h.Equals(text, StringComparison.OrdinalIgnoreCase) || (text.Length == 1 && char.ToLowerInvariant(text[0]) == h[0]));
        return at < 0 ? null : (LambingHelp)at;
    }

    private static string Say(LocalDate day, LambingResult result)
    {
        var lambs = new[] { result.Alive is { } alive ? $"{Number(alive)} alive" : "", result.Dead is { } dead ? $"{Number(dead)} dead" : "" }.Where(l => l.Length > 0);
        var help = result.Help switch { LambingHelp.None => ", no help", LambingHelp.Hand => ", helped by hand", LambingHelp.Vet => ", helped by the vet", _ => "" };
        var time = result.Time is { } at ? $" at {at.ToString("HH:mm", CultureInfo.InvariantCulture)}" : "";
        return $"lambed {ScreenText.Day(day)}{time}{string.Concat(lambs.Select(l => $", {l}"))}{help}";
    }

    /// <summary>A scan may have missed a lamb, but a slip of the finger is likelier.</summary>
    private static string Doubt(Ewe ewe, LambingResult result) =>
        ewe.Scan is { } scan && result.Alive + (result.Dead ?? 0) is { } born && born != scan ? $" (she was scanned with {Number(scan)})" : "";

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
