using NodaTime;
using PaperFlock.Flocks;
using PaperFlock.Planning.Tests.Feeding;

namespace PaperFlock.Planning.Tests;

/// <summary>What holds between the parts of any plan, whatever the flock.</summary>
internal static class PlanParts
{
    public static void Agree(SeasonPlan plan)
    {
        JobsStandInTheirWindowsOrSayWhyNot(plan);
        EwesToLambHaveAWindowAndNoOthersDo(plan);
        FeedingParts.Agree(plan);
        StoresAreInWholeWeeksAndInTime(plan);
        ExpectedEwesAddUp(plan);
        NoEweStandsInTwoPens(plan);
        EveryDayOfThePaperHasItsRounds(plan);
    }

    private static void JobsStandInTheirWindowsOrSayWhyNot(SeasonPlan plan)
    {
        Assert.All(plan.Jobs, j =>
        {
            Assert.True(j.Earliest <= j.Best && j.Best <= j.Latest, j.Kind.ToString());
            Assert.Equal(j.Date is null, j.WhyThatDay == DayReason.NoDay);
            Assert.True(j.Date is null || (j.Earliest <= j.Date && j.Date <= j.Latest), j.Kind.ToString());
            Assert.InRange(j.ShownOn, plan.From, plan.To);
        });
        Assert.Equal(plan.Jobs.Select(j => j.ShownOn).Order(), plan.Jobs.Select(j => j.ShownOn));
        Assert.Equal(
            plan.Jobs.Where(j => j is { Handled: true, Date: not null }),
            plan.Gatherings.SelectMany(g => g.Jobs.Where(j => j.Date == g.Date)));
    }

    private static void EwesToLambHaveAWindowAndNoOthersDo(SeasonPlan plan)
    {
        Assert.Equal(plan.Flock.Ewes, plan.Ewes.Select(e => e.Ewe));
        Assert.All(plan.Ewes, e => Assert.Equal(e.IsCarrying, e.Due is not null));
        foreach (var ewe in plan.Ewes.Where(e => e.IsCarrying))
        {
            var due = ewe.Due!;
            var group = plan.Groups.Single(g => g.Group.Name == ewe.Ewe.Group);
            Assert.True(due.FirstPossible <= due.LastPossible && due.Earliest <= due.Likely && due.Likely <= due.Latest);
            Assert.InRange(due.FirstPossible, group.FirstDue!.Value, group.LastDue!.Value);
            Assert.InRange(due.LastPossible, group.FirstDue!.Value, group.LastDue!.Value);
            Assert.Equal(1, due.Chances.Chances.Sum(), 1e-9);
        }
    }

    private static void StoresAreInWholeWeeksAndInTime(SeasonPlan plan) => Assert.All(plan.Stores, s =>
    {
        Assert.All(s.Weeks, w => Assert.Equal(plan.Flock.Print.WeekStarts, w.WeekBeginning.DayOfWeek));
        Assert.True(s.NeededFrom <= s.NeededTo && (s.OrderBy is null || s.OrderBy <= s.NeededFrom.PlusDays(-plan.Flock.Feeds.OrderLeadDays)), s.Kind.ToString());

        // Hay and straw are sevenths and ratios, cut off at the 28th figure.
        Assert.True(s.Kg is null || Math.Abs(s.Kg.Value - s.Weeks.Sum(w => w.Amount)) < 1e-12m, s.Kind.ToString());
        Assert.True(s.Packs is null || s.Kg is null || s.Packs * s.PackKg >= s.Kg, s.Kind.ToString());
    });

    private static void ExpectedEwesAddUp(SeasonPlan plan) =>
        Assert.Equal(plan.Ewes.Count(e => e.IsCarrying), plan.Lambing.Days.Sum(d => d.ExpectedEwes), 1e-9);

    private static void NoEweStandsInTwoPens(SeasonPlan plan)
    {
        var penned = plan.Housing.Pens.SelectMany(p => p.Ewes.Select(e => (e.Tag, p.Pen.Name))).ToList();
        Assert.Distinct(penned.Select(p => p.Tag));
        Assert.Equal(plan.Ewes.Where(e => e.Pen is not null).Select(e => (e.Ewe.Tag, e.Pen!)).Order(), penned.Where(p => plan.Ewes.First(e => e.Ewe.Tag == p.Tag).IsCarrying).Order());
        Assert.All(plan.Ewes.Where(e => e.Pen is not null), e => Assert.True(e.IsCarrying));
        if (plan.Flock.Housing is { Lambing: LambingPlace.Indoors, Pens.IsEmpty: false })
        {
            Assert.Equal(plan.Ewes.Count(e => e.WasToLamb), penned.Count + plan.Housing.WithoutRoom.Length);
        }
    }

    private static void EveryDayOfThePaperHasItsRounds(SeasonPlan plan)
    {
        Assert.Equal(plan.Flock.Print.WeekStarts, plan.From.DayOfWeek);
        Assert.Equal(Period.DaysBetween(plan.From, plan.To) + 1, plan.Rounds.Length);
        Assert.Equal((plan.From, plan.To), (plan.Rounds[0].Date, plan.Rounds[^1].Date));
        Assert.All(plan.Rounds, r => Assert.NotEmpty(r.Times));
        Assert.All(plan.Rounds, r => Assert.All(plan.Feeding.FedAt(r.Date), feed => Assert.NotNull(r.At(feed))));
    }
}
