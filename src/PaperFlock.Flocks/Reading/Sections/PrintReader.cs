using NodaTime;
using PaperFlock.Flocks.Reading.Values;

namespace PaperFlock.Flocks.Reading.Sections;

internal static class PrintReader
{
    public static PrintSettings Read(Section print) => new(
        print.Find("paper")?.AsChoice(("A4", Paper.A4), ("Letter", Paper.Letter)) ?? Paper.A4,
        print.Find("planner")?.AsChoice(
            ("A4", PlannerPaper.A4),
            ("A3", PlannerPaper.A3),
            ("A2", PlannerPaper.A2),
            ("Letter", PlannerPaper.Letter),
            ("Tabloid", PlannerPaper.Tabloid)) ?? PlannerPaper.A3,
        print.Find("units")?.AsChoice(("metric", Units.Metric), ("imperial", Units.Imperial), ("both", Units.Both)) ?? Units.Metric,
        print.Find("week-starts")?.AsChoice(Words.Weekdays) ?? IsoDayOfWeek.Monday,
        print.Find("gloves")?.AsFlag() ?? true,
        print.Find("binding")?.AsChoice(
            ("two-hole", Binding.TwoHole),
            ("four-hole", Binding.FourHole),
            ("three-hole", Binding.ThreeHole),
            ("none", Binding.None)) ?? Binding.TwoHole,
        print.Find("duplex")?.AsChoice(
            ("long-edge", Duplex.LongEdge),
            ("short-edge", Duplex.ShortEdge),
            ("single-sided", Duplex.SingleSided)) ?? Duplex.LongEdge);
}
