namespace PaperFlock.Flocks.Reading.Sections;

internal static class PrintReader
{
    public static PrintSettings Read(Section print) => Read(print, print.Find("paper")?.AsChoice<Paper>() ?? Paper.A4);

    private static PrintSettings Read(Section print, Paper paper) => new(
        paper,
        print.Find("planner")?.AsChoice<PlannerPaper>() ?? (paper == Paper.A4 ? PlannerPaper.A4 : PlannerPaper.Letter),
        print.Find("units")?.AsChoice<UnitSystem>() ?? UnitSystem.Metric,
        print.Find("week-starts")?.AsChoice<IsoDayOfWeek>() ?? IsoDayOfWeek.Monday,
        print.Find("gloves")?.AsFlag() ?? true,
        print.Find("binding")?.AsChoice<Binding>() ?? Binding.TwoHole,
        print.Find("duplex")?.AsChoice<Duplex>() ?? Duplex.LongEdge)
    {
        LogWeeks = print.Find("log-weeks")?.AsWhole() ?? 8,
    };
}
