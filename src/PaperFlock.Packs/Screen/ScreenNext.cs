using PaperFlock.Flocks.Drafting;
using PaperFlock.Flocks.Editing;

namespace PaperFlock.Packs.Screen;

/// <summary>The next season begun from the flock that is open, as <c>begin --from</c> does it.</summary>
public static class ScreenNext
{
    /// <param name="tupIn">As typed; empty for the same day of the week a year on.</param>
    /// <returns>
    /// <c>text</c> and <c>name</c> of the new file, <c>summary</c>, a sentence, and <c>said</c>, each a <c>heading</c> and its <c>lines</c>; or <c>wrong</c>, what is the matter with the day.
    /// </returns>
    /// <exception cref="PackRequestException">There are mistakes in the flock, nobody is left in it, or the next season would begin with a mistake.</exception>
    public static JsonObject Begin(OpenFlock open, string tupIn)
    {
        var last = open.Plan;
        if (last.Flock.Ewes.All(e => e.Gone is not null))
        {
            throw new PackRequestException("no ewe of this flock is still there: begin a new one");
        }

        var read = tupIn.Trim().Length == 0 ? null : ScreenDay.Read(tupIn, Figures.Shown.Date(open.Today));
        var day = read is null ? SeasonAfter.UsualTupIn(last.Flock) : read["day"] is { } said ? ScreenDay.Day(said["iso"]!.GetValue<string>()) : (LocalDate?)null;
        if ((day is null ? ScreenDay.WhyNone(tupIn, read!) : SeasonAfter.WhyNot(last.Flock, day.Value)) is { } wrong)
        {
            return new JsonObject { ["wrong"] = wrong };
        }

        var file = FlockFile.Open(open.Name, Encoding.UTF8.GetBytes(open.Text), out _, _ => open.Today)!;
        var next = NextSeason.After(file, open.Name, day!.Value);
        if (next.Edit.File is not { } made)
        {
            throw new PackRequestException($"the next season would begin with a mistake: {next.Edit.Diagnostics[0].Message}. Put it right in this flock first");
        }

        return new JsonObject
        {
            ["text"] = Encoding.UTF8.GetString(made.ToBytes()),
            ["name"] = SeasonAfter.FileName(open.Name, day.Value),
            ["summary"] = $"{ScreenText.Count(made.Flock.Ewes.Length, "ewe")}, tup in {ScreenText.Day(made.Flock.Season.TupIn)}. The dates of all tups have moved by {ScreenText.Count(next.Days, "day")}.",
            ["said"] = Figures.Shown.List(CarriedOver.Of(next, last), s => new JsonObject { ["heading"] = s.Heading, ["lines"] = Figures.Shown.List(s.Lines, line => (JsonNode)line) }),
        };
    }
}
