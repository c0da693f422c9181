namespace PaperFlock.Planning.Places;

/// <summary>Where each ewe is from groups, fields, housing and lambings. Only what the file says moves her.</summary>
internal static class WhereaboutsPlanner
{
    /// <param name="ewes">In the order of the flock file.</param>
    /// <param name="from">First day, included.</param>
    /// <param name="to">Last day, included; no earlier than <paramref name="from"/>.</param>
    public static Whereabouts Plan(Flock flock, IEnumerable<EwePlan> ewes, LocalDate from, LocalDate to, EweMoves moves) =>
        new(from, to, [.. ewes.Select(e => new EweStays(e.Ewe, Stays(flock, e, from, to, moves)))]);

    private static ImmutableArray<Stay> Stays(Flock flock, EwePlan ewe, LocalDate from, LocalDate to, EweMoves moves)
    {
        var turns = TurningDays(flock, ewe, moves).Where(d => from < d && d <= to).Append(from).Distinct().Order().ToList();
        var stays = ImmutableArray.CreateBuilder<Stay>();
        for (var i = 0; i < turns.Count; i++)
        {
            var last = i + 1 < turns.Count ? turns[i + 1].PlusDays(-1) : to;
            var (place, state) = (PlaceOn(flock, ewe, turns[i], moves), StateOn(flock, ewe, turns[i]));
            if (stays.Count > 0 && stays[^1].Place == place && stays[^1].State == state)
            {
                stays[^1] = stays[^1] with { To = last };
            }
            else
            {
                stays.Add(new Stay(turns[i], last, place, state));
            }
        }

        return stays.ToImmutable();
    }

    /// <summary>Every day on which anything about her can change.</summary>
    private static IEnumerable<LocalDate> TurningDays(Flock flock, EwePlan ewe, EweMoves moves)
    {
        var (group, lambed) = (flock.GroupOf(ewe.Ewe), ewe.Ewe.Lambed);
        LocalDate?[] days =
        [
            group.TupIn,
            group.TupOut.PlusDays(1),
            moves.Sorted(ewe.Ewe),
            moves.Housed(ewe.Ewe),
            ewe.Ewe.LostLambs,
            ewe.Ewe.Gone?.On,
            lambed,
            lambed?.PlusDays(flock.Housing.DaysInLambingPen.For(ewe.LambsAtFoot)),
            lambed?.PlusDays(flock.Housing.TurnoutDaysAfterLambing),
        ];
        return days.OfType<LocalDate>();
    }

    private static EweState StateOn(Flock flock, EwePlan ewe, LocalDate day)
    {
        if (ewe.Ewe.Gone?.On <= day)
        {
            return EweState.Gone;
        }

        if (ewe.Ewe.Lambed <= day)
        {
            return EweState.Lambed;
        }

        var group = flock.GroupOf(ewe.Ewe);
        return ewe.BeforeLoss switch
        {
            Standing.LeftOut => EweState.LeftOut,
            _ when day < group.TupIn => EweState.NotInLamb,
            _ when day <= group.TupOut => EweState.WithTup,
            Standing.Empty => EweState.NotInLamb,
            _ when ewe.Ewe.LostLambs <= day => EweState.NotInLamb,
            _ => EweState.InLamb,
        };
    }

    private static Place PlaceOn(Flock flock, EwePlan ewe, LocalDate day, EweMoves moves)
    {
        if (ewe.Ewe.Gone?.On <= day)
        {
            return new Place(PlaceKind.Gone, null);
        }

        if (ewe.Ewe.Lambed is { } lambed && lambed <= day && ewe.LambsAtFoot > 0)
        {
            return WithLambs(flock, ewe, Period.DaysBetween(lambed, day));
        }

        if (ewe.BeforeLoss is Standing.ToLamb or Standing.Lambed && !(ewe.Ewe.Lambed <= day) && !(ewe.Ewe.LostLambs <= day) && moves.Housed(ewe.Ewe) <= day)
        {
            return new Place(PlaceKind.Pen, moves.Pen(ewe.Ewe));
        }

        return new Place(PlaceKind.Field, FieldOn(flock, ewe, day, moves));
    }

    private static string? FieldOn(Flock flock, EwePlan ewe, LocalDate day, EweMoves moves)
    {
        var own = FieldOfGroup(flock, ewe.Ewe);
        var withNoLambs = ewe.BeforeLoss == Standing.LeftOut && flock.GroupOf(ewe.Ewe).TupIn <= day
            || ewe.BeforeLoss == Standing.Empty && moves.Sorted(ewe.Ewe) <= day
            || ewe.Ewe.LostLambs <= day
            || ewe.Ewe.Lambed <= day;
        return withNoLambs ? flock.Fields.NotInLamb ?? own
            : moves.Sorted(ewe.Ewe) <= day ? moves.SortedField(ewe.Ewe) ?? own
            : own;
    }

    private static Place WithLambs(Flock flock, EwePlan ewe, int days)
    {
        var outdoors = flock.Housing.Lambing == LambingPlace.Outdoors;
        if (!outdoors && days < flock.Housing.DaysInLambingPen.For(ewe.LambsAtFoot))
        {
            return new Place(PlaceKind.LambingPen, null);
        }

        var turnedOut = outdoors || days >= flock.Housing.TurnoutDaysAfterLambing;
        return new Place(PlaceKind.WithLambs, turnedOut ? flock.Fields.WithLambs ?? FieldOfGroup(flock, ewe.Ewe) : null);
    }

    /// <summary>A group is named for the place it runs in, unless the file says where that is.</summary>
    private static string? FieldOfGroup(Flock flock, Ewe ewe)
    {
        var group = flock.GroupOf(ewe);
        return group.Field ?? (group.Name.Length > 0 ? group.Name : null);
    }
}
