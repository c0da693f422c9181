using PaperFlock.Flocks.Places;

namespace PaperFlock.Flocks.Reading;

// Warnings.

internal static partial class FlockMessages
{
    public static Diagnostic SameName(SourceSpan at, string name, int firstLine) => Warning("FLK090", at,
        $"the ewe on line {Number(firstLine)} is also called `{name}`",
        "give one of them another name, or a number, so that nobody at night mistakes one for the other");

    public static Diagnostic NoPhone(SourceSpan at, string role) => Warning("FLK091", at,
        $"there is no `phone` for `{role}`",
        "add it; the call sheet is what a sitter reaches for");

    public static Diagnostic PhoneWithoutNumber(SourceSpan at, string phone, string whose) => Warning("FLK091", at,
        $"`{Shown(phone)}` is no number to ring for `{Shown(whose)}`",
        "write the number in figures; what else is to be said can go into a `note`");

    public static Diagnostic TakenForRemark(SourceSpan at, string name) => Warning("FLK092", at,
        $"what follows # is taken for a comment, not for part of `{name}`",
        "put quotes round text that holds a space and #; or put a space after the # of a comment");

    public static Diagnostic NothingToRead(SourceSpan at, string tag) => Warning("FLK171", at,
        $"the tag `{tag}` has neither a letter nor a figure, and nobody could read it off an ear",
        "write what is on her tag, or in its place a number of your own");

    public static Diagnostic AnotherSeason(SourceSpan at, LocalDate tupIn, LocalDate today) => Warning("FLK150", at,
        $"the tup goes in on {Day(tupIn)}, and today is {Day(today)}: this is the season of {Number(tupIn.Year)}",
        "check the year, and the clock of this computer; to print the paper of another season, give a day of that season as today");

    public static Diagnostic ScannedSoonAfterMark(SourceSpan at, LocalDate mark, LocalDate today) => Warning("FLK151", at,
        $"she was marked again on {Day(mark)}, too soon before today, {Day(today)}, for lambs of that day to be counted",
        $"check the mark; if it is right, have her scanned again from {Day(mark.PlusDays(PregnancyScan.EarliestCountableDays))}");

    /// <param name="days">The least and the most from mating to lambing.</param>
    public static Diagnostic LambedUnlikely(SourceSpan at, LocalDate lambed, LocalDate earliest, LocalDate latest, (int Least, int Most) days, bool isMarked) => Warning("FLK152", at,
        $"a lambing on {Day(lambed)} does not fit {(isMarked ? "her marks" : "the days with the tup")}: after {Number(days.Least)} to {Number(days.Most)} days she would lamb from {Day(earliest)} to {Day(latest)}",
        isMarked ? "check the day, her marks and their years" : "check the day and its year, and the group she ran with");

    public static Diagnostic EmptyYetLambed(SourceSpan at) => Warning("FLK153", at,
        "she was scanned empty, and has lambed",
        "check which ewe it was; if it was she, take out `scan: 0`");

    public static Diagnostic LambsDoNotAddUp(SourceSpan at, int born, int counted) => Warning("FLK154", at,
        $"{Lambs(born)} born, and the scan counted {Number(counted)}: a scanner is seldom out by more than one",
        "check the lambs, the scan, and which ewe it was");

    public static Diagnostic LambedNothing(SourceSpan at) => Warning("FLK155", at,
        "she has lambed, with no lamb alive or dead",
        "write the lambs under `lambs-alive` and `lambs-dead`, or take both out");

    public static Diagnostic EmptyGroup(SourceSpan at, string name) => Warning("FLK156", at,
        $"there is no ewe in the group `{name}`",
        $"write `group: {name}` under each of its ewes, or take the group out");

    public static Diagnostic TupInTwoGroups(SourceSpan at, string tup, string other, LocalDate from, LocalDate to) => Warning("FLK157", at,
        $"`{tup}` is with `{other}` too, {Days(from, to)}",
        "check his name and the days; if both groups run in one field, write the same `field:` under each");

    public static Diagnostic TupsTogether(SourceSpan at, string tup, string other, LocalDate from, LocalDate to) => Warning("FLK163", at,
        $"`{tup}` and `{other}` are both with them {Days(from, to)}: nobody will know whose lambs they are",
        "check the days; one goes out on the day the other goes in, or before");

    /// <param name="isGiven">The file says how many for heavy ewes; else it is the usual number.</param>
    public static Diagnostic FewerHeavyRounds(SourceSpan at, int normal, int heavy, bool isGiven) => Warning("FLK158", at,
        $"heavy ewes get {Rounds(heavy)} a day, and others {Number(normal)}",
        isGiven ? $"write `{{normal: {Number(heavy)}, heavy: {Number(normal)}}}`, if that is what you mean" : $"add `heavy: {Number(normal)}`, or more");

    public static Diagnostic FewerLambingRounds(SourceSpan at, int heavy, int lambing) => Warning("FLK158", at,
        $"ewes that may lamb get {Rounds(lambing)} a day, and heavy ewes {Number(heavy)}",
        $"write `lambing: {Number(heavy)}`, or more: most lambs come outside the middle of the day");

    /// <param name="usual">What is walked where the file does not say.</param>
    public static Diagnostic TooFewRounds(SourceSpan at, bool isLambing, int rounds, int usual, int least) => Warning("FLK206", at,
        isLambing ? $"ewes that may lamb get {Rounds(rounds)} a day: one that is stuck would be alone for half a day or more"
            : $"heavy ewes get {Rounds(rounds)} a day: one on her back, or off her feed, would be found a day late",
        $"write `{Number(usual)}`, as is usual, or {Number(least)} at least");

    public static Diagnostic NoFreeDay(SourceSpan at, LocalDate from, LocalDate to) => Warning("FLK159", at,
        $"there is no day for any job: from {Day(from)} to {Day(to)} you are away on every free day",
        "check the days away, or add weekdays to `free`");

    public static Diagnostic TooMuchWork(SourceSpan at, string title, decimal minutes, int ewes) => Warning("FLK160", at,
        $"`{title}` would take {Number(decimal.Round(minutes * ewes / 60))} hours, more than a day holds: {Number(minutes)} minutes for each of {Number(ewes)} ewes",
        "check `minutes-per-ewe`, which is for one ewe");

    public static Diagnostic TooMuchOnOneDay(SourceSpan at, LocalDate day, decimal minutes) => Warning("FLK160", at,
        $"the jobs of {Day(day)} would take {Number(decimal.Round(minutes / 60))} hours together, more than a day holds",
        "give one of them another day, or check `minutes-per-ewe`, which is for one ewe");

    public static string NoonAt(LocalTime noon, string zone) =>
        $"by the clock of {zone} the sun would be highest there at {DateValues.Clock.Format(noon)}";

    public static string FarFromTown(double kilometres, string zone) => $"it is {Kilometres(kilometres)} from the main town of {zone}";

    public static string OtherThanBritish(string zone) => $"in Great Britain clocks do not go by {zone} all the year round";

    public static string BeyondSheep(decimal latitude) => $"at latitude {Number(latitude)} nobody keeps sheep";

    /// <param name="doubt">Why place and zone do not go together.</param>
    /// <param name="slip">What looks wrong; null when it cannot be told.</param>
    /// <param name="meant">The place without the slip; null with it.</param>
    /// <param name="likely">The zone of the place, where it is the zone that looks wrong.</param>
    public static Diagnostic PlaceOutsideZone(SourceSpan at, string doubt, string? slip, Place? meant, string? likely) => Warning("FLK161", at,
        $"{slip ?? (likely is null ? "the latitude looks wrong" : "place and time zone do not go together")}: {doubt}",
        meant is not null ? $"write {Location(meant.Latitude, meant.Longitude)}, if that is the place"
            : likely is not null ? $"if the place is right, write `time-zone: {likely}`; else check latitude and longitude, of which south and west are negative"
            : "check latitude and longitude, of which south and west are negative");

    /// <param name="whyNot">It names the text.</param>
    public static Diagnostic NoGridReference(SourceSpan at, string text, string whyNot) => Warning("FLK170", at,
        $"`{Shown(text)}` is no grid reference of Great Britain, and is printed to be read out to the emergency services",
        whyNot[(whyNot.LastIndexOf(": ", StringComparison.Ordinal) + 2)..]);

    public static Diagnostic GridReferenceElsewhere(SourceSpan at, string text, double kilometres, Place square) => Warning("FLK162", at,
        $"`{text}` is {Kilometres(kilometres)} from `location`, and help would be sent to one or the other",
        $"check both; this reference is {Location(square.Latitude, square.Longitude)}");

    public static Diagnostic NoLocation(SourceSpan at) => Warning("FLK164", at,
        "nothing says where the sheep are, so the paper has no sunrise, and rounds keep to 07:00, 12:00, 17:00 and 22:00",
        "add a line `location:` with your own figures, such as `{latitude: 54.46, longitude: -2.74}`; a map or a phone shows both");

    private static string Days(LocalDate from, LocalDate to) => from == to ? $"on {Day(from)}" : $"from {Day(from)} to {Day(to)}";

    private static string Rounds(int rounds) => rounds == 1 ? "1 round" : $"{Number(rounds)} rounds";
}
