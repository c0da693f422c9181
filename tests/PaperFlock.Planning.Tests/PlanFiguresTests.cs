using PaperFlock.Flocks;
using Snapshooter.Xunit3;

namespace PaperFlock.Planning.Tests;

/// <summary>
/// A whole season at Hollin Bank, written down. Nothing here is proved right: a figure that moves is to be looked at, and the table
/// taken anew only when it moved for a reason.
/// </summary>
public class PlanFiguresTests
{
    private static readonly SeasonPlan Plan = SeasonPlanner.Plan(HollinBank(), Sample.Day("2026-11-01"));

    [Fact]
    public void Jobs_and_their_days() => Snapshot.Match(PlanFigures.Jobs(Plan));

    [Fact]
    public void Groups_and_when_they_are_due() => Snapshot.Match(PlanFigures.Groups(Plan));

    [Fact]
    public void Ewes_and_when_they_are_due() => Snapshot.Match(PlanFigures.Ewes(Plan));

    [Fact]
    public void Weeks_of_feeding() => Snapshot.Match(PlanFigures.Feeding(Plan));

    [Fact]
    public void Stores_to_order() => Snapshot.Match(PlanFigures.Stores(Plan));

    /// <summary>Two tups a week apart, every kind of evidence, an empty ewe and one kept back, a keeper with weekends.</summary>
    private static Flock HollinBank() => Sample.Flock(
        [
            Sample.Group("Orchard", tup: "Bramley"),
            Sample.Group("Paddock", Sample.Day("2026-08-17"), Sample.TupOut, "Damson"),
        ],
        Sample.Ewe("Bracken", "Orchard", "2026-08-14", scan: 2),
        Sample.Ewe("Sorrel", "Orchard", "2026-08-10", scan: 1) with { Weight = new Mass(64) },
        Sample.Ewe("Teasel", "Orchard", "2026-08-19", scan: 3) with { Weight = new Mass(78) },
        Sample.Ewe("Bryony", "Orchard", "2026-08-17 2026-09-03", scan: 2),
        Sample.Ewe("Mallow", "Orchard", "2026-08-13", scan: 0),
        Sample.Ewe("Vetch", "Orchard", scan: 1, stage: ScanStage.Late) with { Weight = new Mass(68), Condition = 2.5m },
        Sample.Ewe("Heather", "Paddock", "2026-08-18", scan: 2),
        Sample.Ewe("Juniper", "Paddock", "2026-08-24 2026-09-10", scan: 2, stage: ScanStage.Early),
        Sample.Ewe("Lovage", "Paddock"),
        Sample.Ewe("Burdock", "Paddock") with { ToTup = false }) with
    {
        OwnJobs =
        [
            Sample.Own("Fluke drench as vet advised", JobAnchor.Housing, -21, -14) with { MinutesPerEwe = 2 },
            Sample.OwnOn("Feed merchant closed", "2026-11-16", handled: false) with { Closed = true },
        ],
        Housing = Sample.Housing() with
        {
            Pens = [FeedingSample.Pen("North bay", 3.6m, 2, 3.3m), FeedingSample.Pen("South bay", 3, 2, 3)],
        },
    };
}
