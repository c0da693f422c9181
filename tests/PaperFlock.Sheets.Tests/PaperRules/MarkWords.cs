using PaperFlock.Languages;
using PaperFlock.Sheets.House;

namespace PaperFlock.Sheets.Tests.PaperRules;

/// <summary>What control lines and the like say in the language of a pack, as far as it does not depend on numbers and days.</summary>
internal sealed class MarkWords(Language language)
{
    private const string Hole = "§";

    private readonly string _hole = Hole;

    /// <summary>Before the pack's id.</summary>
    public string Trial { get; } = language.IsEnglish ? "" : PackMark.TrialWords + " · ";

    public string Front { get; } = language.Say("front");

    public string Back { get; } = language.Say("back");

    public string Issue => Stem(language.Say($"issue {_hole} {_hole}"));

    public string CardIssue => Stem(language.Say($"issue {_hole}, {_hole}"));

    public string NotAfter => Stem(language.Say($"not after {_hole}"));

    public string Replaces => Stem(language.Say($"replaces issue {_hole}"));

    public string ReplacesNone { get; } = language.Say("replaces none");

    public string CheckBar { get; } = language.Say("must measure 100 mm; if not, print again at actual size");

    public string Leaves { get; } = language.Say("leaves");

    public string LeftBlank => language.Say($"The back of {_hole} is left blank on purpose.")[^6..];

    /// <summary>The words before the first hole.</summary>
    private static string Stem(string phrase) => phrase[..phrase.IndexOf(Hole, StringComparison.Ordinal)];
}
