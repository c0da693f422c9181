using System.Collections.Immutable;
using NodaTime;
using PaperFlock.Flocks;

namespace PaperFlock.Planning.Jobs;

/// <summary>Which days the keeper's week and absences leave for jobs.</summary>
internal sealed class KeeperCalendar(KeeperDays days)
{
    /// <summary>How far outside a window a day that would do is looked for.</summary>
    private const int SearchDays = 366;

    public bool IsAway(LocalDate day) => days.AbsenceOn(day) is not null;

    /// <summary>A free weekday on which the keeper is there.</summary>
    public bool IsFree(LocalDate day) => days.IsFreeWeekday(day) && !IsAway(day);

    /// <summary>The free days of a window; where it has none, the days the keeper is at least there; empty where there are none either.</summary>
    public (DayKind Kind, ImmutableArray<LocalDate> Days) DaysFor(LocalDate earliest, LocalDate latest)
    {
        var free = Days(earliest, latest, IsFree);
        return free.IsEmpty
            ? (DayKind.Present, Days(earliest, latest, d => !IsAway(d)))
            : (DayKind.Free, free);
    }

    /// <summary>The free day nearest to a window from outside, the earlier of two as near; null when there is none within a year.</summary>
    /// <param name="notAfter">A day it may not be later than.</param>
    public LocalDate? NearestFreeOutside(LocalDate earliest, LocalDate latest, LocalDate? notAfter)
    {
        for (var i = 1; i <= SearchDays; i++)
        {
            var before = earliest.PlusDays(-i);
            if (IsFree(before))
            {
                return before;
            }

            var after = latest.PlusDays(i);
            if (IsFree(after) && !(after > notAfter))
            {
                return after;
            }
        }

        return null;
    }

    private static ImmutableArray<LocalDate> Days(LocalDate earliest, LocalDate latest, Func<LocalDate, bool> wanted)
    {
        var found = ImmutableArray.CreateBuilder<LocalDate>();
        for (var day = earliest; day <= latest; day = day.PlusDays(1))
        {
            if (wanted(day))
            {
                found.Add(day);
            }
        }

        return found.ToImmutable();
    }
}

internal enum DayKind
{
    /// <summary>A free weekday, keeper there.</summary>
    Free,

    /// <summary>Not a free weekday, keeper there.</summary>
    Present,
}
