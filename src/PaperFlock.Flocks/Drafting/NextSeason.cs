using NodaTime.Text;
using PaperFlock.Flocks.Editing;

namespace PaperFlock.Flocks.Drafting;

/// <summary>
/// The flock file of the season after another: what stays true is kept with its remarks, dates of the tups move by as many days as the season's,
/// and what has been is left behind.
/// </summary>
/// <param name="Edit">The new file, under the name of the old one; without a file where a ewe or a date would be wrong in it.</param>
/// <param name="Days">From the old season to the new one; all its dates have moved by so many.</param>
/// <param name="HasRemarks">The layout of the old file allowed its remarks to be kept.</param>
/// <param name="Gone">Ewes that are no longer there, in the order of the file.</param>
/// <param name="Jobs">Jobs that stood on a day.</param>
/// <param name="Away">Days away.</param>
public sealed record NextSeason(
    FlockEdit Edit,
    int Days,
    bool HasRemarks,
    ImmutableArray<Ewe> Gone,
    ImmutableArray<OwnJob> Jobs,
    ImmutableArray<Absence> Away)
{
    /// <summary>What was found in a ewe or happened to her in one season; the next begins without it.</summary>
    private static readonly string[] OfOneSeason =
    [
        "condition", "teeth", "toes", "to-tup", "marks", "scan", "scan-stage", "lambed", "lambed-time", "lambs-alive", "lambs-dead", "lambing-help", "lambs", "lost-lambs",
    ];

    private static readonly string[] TupDates = ["tup-in", "tup-out", "date"];

    /// <param name="last">The season before, without errors and with a ewe that is still there.</param>
    /// <param name="lastName">What its file is called.</param>
    /// <param name="tupIn">The day the tup goes in, after that of the season before.</param>
    public static NextSeason After(FlockFile last, string lastName, LocalDate tupIn)
    {
        var flock = last.Flock;
        var days = Period.DaysBetween(flock.Season.TupIn, tupIn);
        var edit = last.Apply(Changes(last, lastName, days));
        var hasRemarks = !edit.Diagnostics.Any(d => d.Code == FlockEdit.CannotEdit);
        if (!hasRemarks && last.Plain() is var plain)
        {
            edit = plain.Apply(Changes(plain, lastName, days));
        }

        return new(
            edit,
            days,
            hasRemarks,
            [.. flock.Ewes.Where(e => e.Gone is not null)],
            [.. flock.OwnJobs.Where(j => j.On is not null)],
            flock.KeeperDays.Away);
    }

    private static IEnumerable<FlockChange> Changes(FlockFile file, string lastName, int days)
    {
        var flock = file.Flock;
        var season = FlockPlace.Top.Key("season");
        return
        [
            .. Moved(file, season, ["tup-in", "lambing-from", "tup-out"], days),
            new SetKey(season, "last", FlockValue.Text(lastName)),
            .. Enumerable.Range(0, file.ItemsOf(FlockPlace.Top, "groups").Length).SelectMany(i => Group(file, FlockPlace.Top.Key("groups").Item(i), days)),
            .. file.Has(FlockPlace.Top.Key("keeper-days")) ? [new ClearKey(FlockPlace.Top.Key("keeper-days"), "away")] : Array.Empty<FlockChange>(),
            .. Backwards(flock.OwnJobs, job => job.On is not null).Select(i => new RemoveFromList(FlockPlace.Top, "jobs", i)),
            .. flock.Ewes.SelectMany((ewe, i) => ewe.Gone is null ? Ewe(file, ewe, FlockPlace.Ewe(i)) : []),
            .. Backwards(flock.Ewes, ewe => ewe.Gone is not null).Select(i => new RemoveFromList(FlockPlace.Top, "ewes", i)),
        ];
    }

    private static IEnumerable<FlockChange> Group(FlockFile file, FlockPlace group, int days) =>
        Moved(file, group, TupDates, days).Concat(
            Enumerable.Range(0, file.ItemsOf(group, "tups").Length).SelectMany(i => Moved(file, group.Key("tups").Item(i), ["in", "out"], days)));

    private static IEnumerable<FlockChange> Moved(FlockFile file, FlockPlace section, string[] keys, int days) =>
        from key in keys
        let date = file.ValueOf(section, key) is { Node: Scalar written } ? WrittenDate.Read(written.Text).DayFirst : null
        where date is not null
        select new SetKey(section, key, FlockValue.Word(LocalDatePattern.Iso.Format(date.Value.PlusDays(days))));

    private static IEnumerable<FlockChange> Ewe(FlockFile file, Ewe ewe, FlockPlace place)
    {
        foreach (var key in OfOneSeason.Where(key => file.IsGiven(place, key)))
        {
            yield return new ClearKey(place, key);
        }

        // What is wrong with an udder does not mend; that it was sound says nothing of this year.
        if (ewe.Teats is Teats.Sound or Teats.Unchecked && file.IsGiven(place, "teats"))
        {
            yield return new ClearKey(place, "teats");
        }

        var alive = ewe.LostLambs is not null ? 0 : ewe.BornAlive;
        (string Key, int? Count)[] was = [("scan", ewe.Scan), ("lambs-alive", alive)];
        if (was.Where(w => w.Count is not null).Select(w => (w.Key, FlockValue.Word(w.Count!.Value.ToString(CultureInfo.InvariantCulture)))).ToList() is { Count: > 0 } known)
        {
            yield return new SetKey(place, "was", FlockValue.Section(known));
        }
        else if (file.IsGiven(place, "was"))
        {
            yield return new ClearKey(place, "was");
        }
    }

    /// <summary>Places in a list, the last first: taking one out leaves those before it where they are.</summary>
    private static IEnumerable<int> Backwards<T>(ImmutableArray<T> items, Func<T, bool> isMeant) => Enumerable.Range(0, items.Length).Reverse().Where(i => isMeant(items[i]));
}
