using NodaTime;
using PaperFlock.Planning;
using PaperFlock.Sheets.Issues;

namespace PaperFlock.Sheets.Tests.PaperRules;

/// <summary>Who is due when, as several sheets say it.</summary>
internal static class LikeliestDays
{
    public static IEnumerable<string> NotOneRowEach(PackInHand pack)
    {
        var sides = pack.Sides.Where(s => s.IsDue && !s.IsBlankBack).ToArray();
        return sides.Length == 0 ? [] : pack.Plan.Ewes
            .Select(e => (e.Ewe.Tag, Wanted: e.Standing is Standing.ToLamb or Standing.Lambed ? 1 : 0, Found: sides.Sum(s => s.Ink.Words.Count(w => w.IsMono && w.Text == e.Ewe.Tag))))
            .Where(e => e.Wanted != e.Found)
            .Select(e => $"{e.Tag} has {e.Found}");
    }

    public static IEnumerable<string> Apart(PackInHand pack)
    {
        var leaves = pack.Pack.Sheets.SelectMany(s => Leaves.Of(s)).ToArray();
        var rows = leaves.Where(l => l.Id.StartsWith("DUE ", StringComparison.Ordinal)).SelectMany(l => l.Rows).ToLookup(r => r.Key.Id, r => string.Join(' ', r.Cells.Select(c => c.Words)));
        var weeks = leaves.Where(l => l.Id.StartsWith("WALL-", StringComparison.Ordinal)).SelectMany(l => l.Rows).Where(r => r.Key.Kind == RowKind.Week).ToArray();
        var cards = leaves.Where(l => l.Id.StartsWith("CARD-", StringComparison.Ordinal)).ToLookup(l => l.Title, l => string.Join(' ', l.Rows.SelectMany(r => r.Cells).Select(c => c.Words)));
        foreach (var (ewe, due) in pack.Plan.Ewes.Where(e => e.Due is not null && pack.Plan.Ewes.Count(o => o.Ewe.CallName == e.Ewe.CallName) == 1).Select(e => (e.Ewe, e.Due!)))
        {
            var day = DateText.Loose(due.Likely);
            if (rows[ewe.Tag].Any(said => !said.Contains($"likeliest {day};", StringComparison.Ordinal)))
            {
                yield return $"{ewe.CallName} is likeliest on {day}, and on DUE on another";
            }

            if (cards[ewe.CallName].Any(said => !said.Contains(day, StringComparison.Ordinal)))
            {
                yield return $"{ewe.CallName} is likeliest on {day}, and her card does not say so";
            }

            foreach (var week in weeks)
            {
                var told = week.Cells.SelectMany(c => c.Words.Split(" \u00b7 ")).Where(w => w.TrimEnd('\u2022', ' ').EndsWith($" {ewe.CallName}", StringComparison.Ordinal) && char.IsDigit(w[4])).ToArray();
                if (told.Any(w => week.Key.Last != Sunday(due.Likely, week) || !w.StartsWith(DateText.WeekdayNumber(due.Likely).Replace('\u00a0', ' ') + " ", StringComparison.Ordinal)))
                {
                    yield return $"{ewe.CallName} is likeliest on {day}, and on the planner {told[0]} in the {week.Key.Name}";
                }
            }
        }
    }

    /// <summary>The last day of the week a day is in, where weeks end as that one does.</summary>
    private static LocalDate Sunday(LocalDate day, LeafRow week) =>
        day.PlusDays(((int)week.Key.Last!.Value.DayOfWeek - (int)day.DayOfWeek + 7) % 7);
}
