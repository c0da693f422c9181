using System.Text.RegularExpressions;
using PaperFlock.Planning;

namespace PaperFlock.Cli.Entering.Sheets;

/// <summary>Before the tup: teeth, toes, teats, score, and whether she is to go.</summary>
internal sealed partial class TeethToesTeats : IPencilSheet
{
    /// <summary>The words of each column of the sheet, in its order, each with the letter that stands for it.</summary>
    private static readonly (string Key, (char Letter, string Word)[] Words)[] Findings =
    [
        ("teeth", [('s', "sound"), ('w', "worn"), ('b', "broken")]),
        ("toes", [('s', "sound"), ('t', "treated"), ('l', "lame")]),
        ("teats", [('s', "sound"), ('l', "lumpy"), ('h', "lost-half")]),
    ];

    public string Word => "teeth-toes-teats";

    public string Title => "Before the tup: teeth, toes, teats (TTT)";

    public string About => "what was found before the tup";

    public string NoEwes => "there is no such sheet in this pack";

    public ImmutableArray<(string Keys, string Meaning)> Keys =>
    [
        ("a", "all sound"),
        ("s w b", "first letter, teeth: sound, worn, broken"),
        ("s t l", "second letter, toes: sound, treated, lame"),
        ("s l h", "third letter, teats: sound, lumpy, lost half"),
        ("wss", "so this is worn teeth, sound toes, sound teats; . for one that is to stay as it is"),
        ("3.5 a", "condition score 3.5 and all sound: the score goes first; a score alone will do"),
        ("+ a  x wls", "+ to the tup whatever was found, x not to the tup: before the letters"),
    ];

    public ImmutableArray<ResultColumn> Columns =>
    [
        new("teeth", "mouth"), new("toes", "feet", "foot"), new("teats", "udder", "bag"),
        new("condition", "score", "bcs", "condition score", "body condition", "body condition score"), new("to-tup", "tup", "to the tup"),
    ];

    public ImmutableArray<EwePlan> Ewes(SeasonPlan plan) => PencilLists.BeforeTheTup(plan);

    public string Known(Asked asked)
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

    public Understood Understand(string typed, Asked asked)
    {
        if (typed == "-")
        {
            return Understood.As("unchecked", AnswerPart.Word("teeth", null), AnswerPart.Word("toes", null), AnswerPart.Word("teats", null));
        }

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

    public Understood Understand(ImmutableArray<(string Column, string Text)> cells, Asked asked)
    {
        var parts = new List<AnswerPart>();
        var words = new List<string>();
        for (var cell = 0; cell < cells.Length; cell++)
        {
            var (column, text) = cells[cell];
            var (value, said, whyNot) = column switch
            {
                "condition" => ReadScore(text),
                "to-tup" => ReadToTup(text),
                _ => ReadFinding(column, text),
            };
            if (value is null)
            {
                return Understood.Not(whyNot!, cell);
            }

            parts.Add(AnswerPart.Word(column, value));
            words.Add(said!);
        }

        return Understood.As(string.Join(", ", words), parts);
    }

    private static (string? Value, string? Said, string? WhyNot) ReadFinding(string key, string text)
    {
        var choices = Findings.First(f => f.Key == key).Words;
        var typed = text.ToLowerInvariant().Replace(' ', '-').Replace("half-lost", "lost-half", StringComparison.Ordinal);
        return choices.FirstOrDefault(c => c.Word == typed || $"{c.Letter}" == typed).Word is { } word
            ? (word, $"{key} {word.Replace('-', ' ')}", null)
            : (null, null, $"`{text}` is nothing to find of {key}; write {ScreenText.List(choices.Select(c => c.Word))}, or nothing");
    }

    private static (string? Value, string? Said, string? WhyNot) ReadScore(string text) =>
        decimal.TryParse(text.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var score) && score is >= 1 and <= 5 && text.Length <= 5
            ? (score.ToString("0.0##", CultureInfo.InvariantCulture), Score(score), null)
            : (null, null, $"`{text}` is no condition score; it lies between 1 and 5, such as 3.5");

    private static (string? Value, string? Said, string? WhyNot) ReadToTup(string text) => text.ToLowerInvariant() switch
    {
        "yes" or "y" or "true" or "tup" => ("yes", "to the tup", null),
        "no" or "n" or "false" or "leave out" or "cull" => ("no", "not to the tup", null),
        _ => (null, null, $"`{text}` does not say whether she goes to the tup; write yes or no, or nothing"),
    };

    private static string Score(decimal score) => $"score {score.ToString("0.0##", CultureInfo.InvariantCulture)}";

    private static string Lower(string word) => word.ToLowerInvariant();

    [GeneratedRegex(@"^(?<score>[0-9][.,]?[0-9]*)?\s*(?<tup>[+x])?\s*((?<all>a)|(?<teeth>[swb.])\s*(?<toes>[stl.])\s*(?<teats>[slh.]))?$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Typed();
}
