using NodaTime;
using NodaTime.Text;

namespace PaperFlock.Planning.Tests;

/// <summary>The figures of a plan as small tables, to be read and compared by eye.</summary>
internal static class PlanFigures
{
    private static readonly LocalDatePattern DayPattern = LocalDatePattern.CreateWithInvariantCulture("ddd uuuu-MM-dd");

    public static string Jobs(SeasonPlan plan) => Table(
        ["day", "job", "group", "window", "best"],
        plan.Jobs.Select(j => new[]
        {
            Day(j.Date), j.Rule.Own?.Title ?? $"{j.Kind} {j.Rule.Colour}{j.Rule.Chart}".TrimEnd(), j.Group?.Name ?? "all", j.IsFixed ? "fixed" : $"{Day(j.Earliest)} to {Day(j.Latest)}", j.IsFixed ? "" : Day(j.Best),
        }));

    public static string Groups(SeasonPlan plan) => Table(
        ["group", "first due", "last due", "housed"],
        plan.Groups.Select(g => new[] { g.Group.Name, Day(g.FirstDue), Day(g.LastDue), Day(g.Housed) }));

    public static string Ewes(SeasonPlan plan) => Table(
        ["ewe", "standing", "lambs", "earliest", "likely", "latest", "chart", "pen", "evidence"],
        plan.Ewes.Select(e => new[]
        {
            e.Ewe.CallName, e.Standing.ToString(), Number(e.Litter), Day(e.Due?.Earliest), Day(e.Due?.Likely), Day(e.Due?.Latest),
            e.Chart ?? "-", e.Pen ?? "-", Evidence(e.Due?.Evidence),
        }));

    public static string Feeding(SeasonPlan plan) => Table(
        ["chart", "ewes", "from", "kg a ewe a day, row by row", "feeds", "energy sum"],
        plan.Feeding.Charts.Select(c => new[]
        {
            c.Code, Number(c.Ewes.Length), Day(c.Start), string.Join(' ', c.Rows.Select(r => Number(r.KgPerEwePerDay))),
            string.Join(' ', c.Rows.Select(r => Number(r.FedAt.Length))), string.Join(' ', c.Rows.Select(r => Number(r.EnergyBalanceKg))),
        }));

    public static string Stores(SeasonPlan plan) => Table(
        ["item", "kg", "packs", "order by", "from", "to"],
        plan.Stores.Select(s => new[] { s.Kind.ToString(), Number(s.Kg), $"{Number(s.Packs)} {s.Pack}", Day(s.OrderBy), Day(s.NeededFrom), Day(s.NeededTo) }));

    private static string Evidence(MatingEvidence? evidence) => evidence is null
        ? "-"
        : $"{evidence.Kind} {Day(evidence.FirstDay)} to {Day(evidence.LastDay)} {evidence.Stage}{(evidence.MarkedAgain ? " again" : "")}".TrimEnd();

    private static string Day(LocalDate? day) => day is { } there ? DayPattern.Format(there) : "-";

    private static string Number(decimal? number) => number?.ToString("0.###", CultureInfo.InvariantCulture) ?? "-";

    /// <summary>Columns as wide as their widest cell, two spaces apart, no space at the end of a line.</summary>
    private static string Table(string[] heads, IEnumerable<string[]> rows)
    {
        List<string[]> lines = [heads, .. rows];
        var widths = heads.Select((_, column) => lines.Max(l => l[column].Length)).ToArray();
        return string.Concat(lines.Select(l => string.Join("  ", l.Select((cell, column) => cell.PadRight(widths[column]))).TrimEnd() + "\n"));
    }
}
