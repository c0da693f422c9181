using PaperFlock.Flocks.Drafting;

namespace PaperFlock.Packs;

/// <summary>What is to be said of a season that was begun from the one before: a heading, and a line for each thing under it.</summary>
public sealed record CarriedOver(string Heading, ImmutableArray<string> Lines)
{
    /// <param name="last">The season before, on the day the next was begun.</param>
    /// <returns>Only what has something under it.</returns>
    public static IEnumerable<CarriedOver> Of(NextSeason next, SeasonPlan last)
    {
        CarriedOver[] all =
        [
            new("Left behind:", [.. next.Gone.Select(Gone), .. next.Jobs.Select(j => $"the job of {ScreenText.Day(j.On!.Value)}: {j.Title}"), .. next.Away.Select(Away)]),
            new("Should not go to the tup again:", [.. last.Outcome.NotAgain.Select(e => $"{Who(e.Ewe)}: {TupAdviceText.Reason(e)}")]),
            new("Think about:", [.. last.Ewes.Where(e => e.Ewe.Gone is null).SelectMany(e => ThinkAbout(e).Select(why => $"{Who(e.Ewe)}: {why}"))]),
        ];
        return all.Where(said => !said.Lines.IsEmpty);
    }

    private static string Who(Ewe ewe) => ewe.Name is null ? ewe.Tag : $"{ewe.Tag} {ewe.Name}";

    private static string Gone(Ewe ewe) => $"{Who(ewe)}: {LossText.Why(ewe.Gone!.Why)}, {ScreenText.Day(ewe.Gone.On)}";

    private static string Away(Absence away) => $"days away, {ScreenText.Span(away.From, away.To)}{(away.Sitter is null ? "" : $", {away.Sitter}")}";

    private static IEnumerable<string> ThinkAbout(EwePlan ewe)
    {
        if (ewe.Standing == Standing.Empty)
        {
            yield return "scanned empty";
        }

        if (ewe.Ewe.LostLambs is { } lost)
        {
            yield return $"lost her lambs on {ScreenText.Day(lost)}: ask the vet before she goes again";
        }

        if (ewe.Ewe is { Lambing.Help: LambingHelp.Vet, History.IsEmpty: true })
        {
            yield return "lambed with the vet: if it was a caesarean or a prolapse, write it under `history`";
        }

        if (ewe.Ewe.ToTup is { } decided)
        {
            yield return decided ? "went to the tup by your own decision: write `to-tup: yes` again, if it still holds" : "was kept back: she goes this time unless you write `to-tup: no` again";
        }
    }
}
