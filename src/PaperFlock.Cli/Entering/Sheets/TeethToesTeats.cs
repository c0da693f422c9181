using System.Text.RegularExpressions;
using PaperFlock.Planning;

namespace PaperFlock.Cli.Entering.Sheets;

/// <summary>Before the tup: teeth, toes, teats, score, and whether she is to go.</summary>
internal sealed partial class TeethToesTeats() : PencilSheet(
    "teeth-toes-teats",
    "Before the tup: teeth, toes, teats (TTT)",
    "what was found before the tup",
    "there is no such sheet in this pack",
    Understood.As("unchecked", AnswerPart.Word("teeth", null), AnswerPart.Word("toes", null), AnswerPart.Word("teats", null)))
{
    /// <summary>The words of each column of the sheet, in its order, each with the letter that stands for it.</summary>
    private static readonly (string Key, (char Letter, string Word)[] Words)[] Findings =
    [
        ("teeth", [('s', "sound"), ('w', "worn"), ('b', "broken")]),
        ("toes", [('s', "sound"), ('t', "treated"), ('l', "lame")]),
        ("teats", [('s', "sound"), ('l', "lumpy"), ('h', "lost-half")]),
    ];

    public override ImmutableArray<(string Keys, string Meaning)> Keys =>
    [
        ("a", "all sound"),
        ("s w b", "first letter, teeth: sound, worn, broken"),
        ("s t l", "second letter, toes: sound, treated, lame"),
        ("s l h", "third letter, teats: sound, lumpy, lost half"),
        ("wss", "so this is worn teeth, sound toes, sound teats; . for one that is to stay as it is"),
        ("3.5 a", "condition score 3.5 and all sound: the score goes first; a score alone will do"),
        ("+ a  x wls", "+ to the tup whatever was found, x not to the tup: before the letters"),
    ];

    public override ImmutableArray<ResultColumn> Columns =>
    [
        new("teeth", "mouth"), new("toes", "feet", "foot"), new("teats", "udder", "bag"),
        new("condition", "score", "bcs", "condition score", "body condition", "body condition score"), new("to-tup", "tup", "to the tup"),
    ];

    public override ImmutableArray<EwePlan> Ewes(SeasonPlan plan) => PencilLists.BeforeTheTup(plan);

    public override string Known(Asked asked)
    {
        var ewe = asked.Ewe;
        var found = new[]
        {
            ewe.Teeth == Teeth.Unchecked ? "" : $"teeth {Lower(ewe.Teeth.ToString())}",
            ewe.Toes == Toes.Unchecked ? "" : $"toes {Lower(ewe.Toes.ToString())}",
            ewe.Teats switch { Teats.Unchecked => "", Teats.LostHalf => "teats lost half", _ => $"teats {Lower(ewe.Teats.ToString())}" },
            ewe.Condition is { } score ? Score(score) : "",
            ewe.ToTup switch { true => "to the tup", false => "not to the tup", null => "" },
        };
        return string.Join(", ", found.Where(f => f.Length > 0));
    }

    protected override Understood Read(string typed, Asked asked)
    {
        if (Typed().Match(typed) is not { Success: true } match)
        {
            return Understood.Not($"`{typed}` is not understood; type a for all sound, or three letters, teeth (s w b), toes (s t l) and teats (s l h), such as `sls`");
        }

        var cells = ImmutableArray.CreateBuilder<(string, string)>();
        if (match.Groups["score"] is { Success: true } score)
        {
            cells.Add(("condition", score.Value));
        }

        if (match.Groups["tup"] is { Success: true } tup)
        {
            cells.Add(("to-tup", tup.Value == "+" ? "yes" : "no"));
        }

        foreach (var (key, _) in Findings)
        {
            var letter = match.Groups["all"].Success ? "s" : match.Groups[key].Value;
            if (letter is not ("" or "."))
            {
                cells.Add((key, letter));
            }
        }

        return cells.Count == 0 ? Understood.Not("nothing is said of her") : Understand(cells.ToImmutable(), asked);
    }

    public override Understood Understand(ImmutableArray<(string Column, string Text)> cells, Asked asked) =>
        Understood.All(cells.Select((cell, at) => Said(cell.Column, cell.Text) with { Cell = at }));

    private static Understood Said(string column, string text) => column switch
    {
        "condition" => Condition(text),
        "to-tup" => ToTup(text),
        _ => Finding(column, text),
    };

    private static Understood Finding(string key, string text)
    {
        var choices = Findings.First(f => f.Key == key).Words;
        var typed = text.ToLowerInvariant().Replace(' ', '-').Replace("half-lost", "lost-half", StringComparison.Ordinal);
        return choices.FirstOrDefault(c => c.Word == typed || $"{c.Letter}" == typed).Word is { } word
            ? Understood.As($"{key} {word.Replace('-', ' ')}", AnswerPart.Word(key, word))
            : Understood.Not($"`{text}` is nothing to find of {key}; write {ScreenText.List(choices.Select(c => c.Word))}, or nothing");
    }

    private static Understood Condition(string text) =>
        decimal.TryParse(text.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var score) && score is >= 1 and <= 5 && text.Length <= 5
            ? Understood.As(Score(score), AnswerPart.Word("condition", score.ToString("0.0##", CultureInfo.InvariantCulture)))
            : Understood.Not($"`{text}` is no condition score; it lies between 1 and 5, such as 3.5");

    private static Understood ToTup(string text) => text.ToLowerInvariant() switch
    {
        "yes" or "y" or "true" or "tup" => Understood.As("to the tup", AnswerPart.Word("to-tup", "yes")),
        "no" or "n" or "false" or "leave out" or "cull" => Understood.As("not to the tup", AnswerPart.Word("to-tup", "no")),
        _ => Understood.Not($"`{text}` does not say whether she goes to the tup; write yes or no, or nothing"),
    };

    private static string Score(decimal score) => $"score {score.ToString("0.0##", CultureInfo.InvariantCulture)}";

    private static string Lower(string word) => word.ToLowerInvariant();

    [GeneratedRegex(@"^(?<score>[0-9][.,]?[0-9]*)?\s*(?<tup>[+x])?\s*((?<all>a)|(?<teeth>[swb.])\s*(?<toes>[stl.])\s*(?<teats>[slh.]))?$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Typed();
}
