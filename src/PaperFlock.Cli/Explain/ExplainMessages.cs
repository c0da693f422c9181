using NodaTime;
using PaperFlock.Planning;

namespace PaperFlock.Cli.Explain;

/// <summary>The words that explanations share.</summary>
internal static class ExplainMessages
{
    public const string Gathered = "the ewes are gathered for it";

    public static string NotADay(string text) => $"'{text}' is no date: write it year first, such as 2026-12-27, or as on paper, such as \"27 Dec\"";

    public static string Nothing(string text, string? nearest) =>
        $"no day, job or ewe of this plan is called '{text}'{(nearest is null ? "; `paperflock dates` lists them" : $"; did you mean '{nearest}'?")}";

    public static string TooMany(string text, IReadOnlyCollection<string> things) =>
        $"'{text}' could be any of {things.Count}: {Messages.List(things)}; be more exact";

    public static string OutsidePlan(LocalDate day, SeasonPlan plan) =>
        $"the plan runs from {Messages.Day(plan.From)} to {Messages.Day(plan.To)}, and {Messages.Day(day)} is outside it";

    public static string Span(LocalDate first, LocalDate last) => first == last ? Messages.Day(first) : $"{Messages.Day(first)} to {Messages.Day(last)}";
}
