using PaperFlock.Flocks.Reading.Sections;
using static PaperFlock.Flocks.Reading.Form;

namespace PaperFlock.Flocks.Reading;

/// <summary>
/// Every key of the flock file, format 1, with what may stand after it. A key that is not here is refused, and the readers may
/// ask for no other; the tests hold each default here against what is read without the key. The JSON Schema is made from this.
/// </summary>
internal static class FlockKeys
{
    private static readonly Form Anchor = Words<JobAnchor>();

    public static readonly ImmutableArray<IsoDayOfWeek> EveryDay = [.. Enum.GetValues<IsoDayOfWeek>().Where(day => day != IsoDayOfWeek.None)];

    private static readonly Form Weekday = Names([.. EveryDay]);

    private static readonly Form Gestation = Whole(GestationLimits.Shortest, GestationLimits.Longest);

    /// <summary>
    /// A ewe outside these is a slip of the pen. Wide on purpose: the smallest primitive breeds and the largest of the
    /// longwools stay inside. Common knowledge of the trade, no source.
    /// </summary>
    private static readonly Form LiveWeight = Mass(15, 200);

    public static KeyTable Top { get; } = new("",
    [
        Must("paperflock", Form.Version, "the version of this format: leave it as it is", "1"),
        Must("holding", Section("holding"), "where the sheep are, and who to ring"),
        May("print", Section("print"), null, "what comes out of the printer"),
        Must("season", Section("season"), "when the tup is with the ewes"),
        May("breeds", ListOf(Section("breeds[]")), null, "breeds with figures of their own"),
        May("groups", ListOf(Section("groups[]")), null, "tupping groups; without them every ewe is in one"),
        May("fields", Section("fields"), null, "where ewes run by the lambs they carry, once scanned"),
        May("keeper-days", Section("keeper-days"), null, "when the keeper can work, and is away"),
        May("practice", Section("practice"), null, "figures the scheduler uses"),
        May("jobs", ListOf(Section("jobs[]")), null, "the keeper's own jobs, placed with the others"),
        May("feeds", Section("feeds"), null, "forage, concentrate and how the ration is worked"),
        May("housing", Section("housing"), null, "pens, and days in them"),
        Must("ewes", ListOf(Section("ewes[]"), fewest: 1), "the ewes, one after another"),
    ]);

    public static KeyTable Holding { get; } = new("holding",
    [
        Must("name", Text(), "what the holding is called", "Hollin Bank"),
        May("code", Text(TextValues.LongestCode), null, "letters and figures at the foot of every page; default: the initials of the holding"),
        May("keeper", Text(), null, "the name on the handover sheet"),
        May("location", Section("holding.location"), null, "the place, for sunrise and for the emergency services; without it rounds keep fixed times", "{latitude: 54.46, longitude: -2.74}"),
        Must("time-zone", Zone, "the time kept there", "Europe/London"),
        May("grid-reference", Text(), null, "printed for the emergency services"),
        May("postcode", Text(TextValues.LongestTag), null, "printed for the emergency services"),
        May("find", Text(TextValues.LongestTitle * 2), null, "where bins, tap, hay, hurdles and scales are, for whoever is in charge"),
        May("signal", Text(TextValues.LongestTitle), null, "where a telephone has a signal"),
        May("sick-pen", Text(), null, "where a ewe that is unwell is brought in, out of the weather"),
        May("contacts", ListOf(Section("holding.contacts[]")), null, "who to ring, in order"),
    ]);

    public static KeyTable Location { get; } = new("holding.location",
    [
        Must("latitude", Number(-90, 90), "decimal degrees; south is negative", "54.46"),
        Must("longitude", Number(-180, 180), "decimal degrees; west is negative", "-2.74"),
    ]);

    public static KeyTable Contact { get; } = new("holding.contacts[]",
    [
        Must("role", Text(), "such as Vet", "Vet"),
        May("name", Text(), null, "who answers"),
        May("phone", Text(TextValues.LongestPhone), null, "printed as typed"),
        May("note", Text(TextValues.LongestTitle), null, "such as out of hours too"),
    ]);

    public static KeyTable Print { get; } = new("print",
    [
        May("paper", Names<Paper>(), "A4", "what the printer holds"),
        May("planner", Names<PlannerPaper>(), null, "larger paper for one more copy of the wall planner, in a file of its own"),
        May("units", Words<UnitSystem>(), "metric", "units on the paper"),
        May("week-starts", Weekday, "Monday", "first column of the planner"),
        May("gloves", Flag, "true", "sizes write-in boxes for gloved hands"),
        May("binding", Words<Binding>(), "two-hole", "which holes are ticked"),
        May("duplex", Words<Duplex>(), "long-edge", "how the printer turns the sheet"),
        May("log-weeks", Whole(2, 52), "8", "weeks of the round log that are printed ahead"),
    ]);

    public static KeyTable Season { get; } = new("season",
    [
        May("tup-in", Date, null, "the day the tup joins the ewes; this or lambing-from is required"),
        May("lambing-from", Date, null, "the day the first lambs are wanted; tup-in is that day less gestation-days"),
        May("tup-out", Date, null, "the day he leaves; default: tup-in and 42 days, two and a half cycles"),
        May("gestation-days", Gestation, "147", "days in lamb, where a breed gives no figure of its own"),
        May("last", Text(TextValues.LongestTitle), null, "the file of the season before, from which this one was begun"),
    ])
    {
        ExactlyOneOf = ["tup-in", "lambing-from"],
    };

    public static KeyTable Breed { get; } = new("breeds[]",
    [
        Must("name", Text(), "the breed", "Ryeland"),
        May("gestation-days", Gestation, null, "days in lamb; default: the season's"),
        May("mature-weight", LiveWeight, null, "live weight, for a ewe with none of her own"),
    ]);

    public static KeyTable Group { get; } = new("groups[]",
    [
        Must("name", Text(), "what the group is called", "Orchard"),
        May("tup", Text(), null, "his name"),
        May("tups", ListOf(Section("groups[].tups[]"), fewest: 1), null, "instead of tup, tup-in and tup-out, where one took over from another"),
        May("mating", Words<Mating>(), "natural", "the last two have one day, given as date"),
        May("date", Date, null, "the one day; required for artificial and hand, and only for them", "2026-08-14"),
        May("tup-in", Date, null, "the day he joins them; default: the season's"),
        May("tup-out", Date, null, "the day he leaves; default: the season's; after a tup-in of its own, 42 days later or the season's stated day, whichever is later"),
        May("field", Text(), null, "where they run until they are sorted, housed or lambed"),
        May("raddle", new EitherForm(new NoneForm(), ListOf(Text(TextValues.LongestTag))), "[yellow, orange, red, blue]", "crayons in order, light to dark; false for none"),
    ]);

    public static KeyTable TupTurn { get; } = new("groups[].tups[]",
    [
        Must("name", Text(), "his name", "Bramley"),
        Must("in", Date, "the day he joins them", "2026-08-10"),
        Must("out", Date, "the day he leaves; the next may join them on it", "2026-08-24"),
    ]);

    public static KeyTable Fields { get; } = new("fields",
    [
        May("singles", Text(), null, "the field of ewes that carry one; default: their group's"),
        May("twins", Text(), null, "of ewes that carry two"),
        May("triplets", Text(), null, "of ewes that carry three or more"),
        May("not-in-lamb", Text(), null, "of ewes that are empty or were kept from the tup"),
        May("with-lambs", Text(), null, "of ewes turned out with their lambs"),
    ]);

    public static KeyTable KeeperDays { get; } = new("keeper-days",
    [
        May("free", ListOf(Weekday, fewest: 1), "[Monday, Tuesday, Wednesday, Thursday, Friday, Saturday, Sunday]", "days for jobs that need hours"),
        May("away", ListOf(Section("keeper-days.away[]")), null, "when a sitter holds the pack"),
    ]);

    public static KeyTable Absence { get; } = new("keeper-days.away[]",
    [
        Must("from", Date, "first day away", "2026-12-27"),
        Must("to", Date, "last day away", "2027-01-02"),
        May("sitter", Text(), null, "who holds the pack"),
        May("phone", Text(TextValues.LongestPhone), null, "printed as typed"),
    ]);

    public static KeyTable Practice { get; } = new("practice",
    [
        May("teeth-toes-teats-weeks-before-tupping", Whole(2, 26), "8", "weeks: time enough to treat, or to find another ewe"),
        May("scan-days-after-tup-in", Pair(PregnancyScan.EarliestCountableDays, GestationLimits.Shortest), "[75, 80]", "first and last day worth scanning"),
        May(
            "feed-weeks-before-lambing",
            new EitherForm(Whole(1, 16), Section("practice.feed-weeks-before-lambing")),
            "{single: 6, twin: 6, triplet: 8, thin: 8}",
            "weeks: when concentrate begins; one number for every ewe, or one each"),
        May("two-feeds-weeks-before-lambing", Whole(0, 16), "3", "weeks: when it is given in two feeds at the latest"),
        May("house-days-before-lambing", Whole(0, 90), "7", "days: when they come in"),
        May("dag", Words<Dagging>(), "at-housing", "when they are dagged"),
        May("shear", Words<Shearing>(), "before-tupping", "when they are shorn"),
        May("booster-weeks-before-lambing", Pair(1, 20), "[6, 4]", "weeks, the earliest first: when a booster is any use"),
        May("checks-per-day", Section("practice.checks-per-day"), null, "rounds a day"),
        May("changeover-days", Whole(10, 21), "17", "the oestrous cycle, and so the days between raddle colours"),
        May("gestation-spread-days", Number(0.5m, 6), "2.5", "days: standard deviation of a ewe's gestation round her own mean"),
        May("gestation-days-by-litter", Section("practice.gestation-days-by-litter"), null, "days added to the mean"),
        May("conception-per-cycle", Percentage(0.10m, 1), "80 %", "chance that a ewe mated in one cycle holds"),
        May("ewes-per-tup", Whole(1, 150), "50", "more than this with one tup is warned of"),
        May("last-round", new TimeForm(new LocalTime(12, 0), new LocalTime(23, 59)), "21:30", "when the late round is walked"),
        May("first-round-not-before", new TimeForm(LocalTime.Midnight, new LocalTime(12, 0)), "05:00", "first light is walked no earlier than this"),
    ]);

    public static KeyTable FeedingWeeks { get; } = new("practice.feed-weeks-before-lambing",
    [
        May("single", Whole(1, 16), "6", "weeks for a ewe with one lamb"),
        May("twin", Whole(1, 16), "6", "weeks for a ewe with two"),
        May("triplet", Whole(1, 16), "8", "weeks for a ewe with three or more"),
        May("thin", Whole(1, 16), "8", "weeks for a ewe under condition score 2.5, whatever she carries"),
    ]);

    public static KeyTable ChecksPerDay { get; } = new("practice.checks-per-day",
    [
        May("normal", Whole(1, 12), "2", "rounds a day, most of the year"),
        May("heavy", Whole(1, 12), "4", "rounds a day, when ewes are heavy in lamb"),
        May("lambing", Whole(1, 12), null, "rounds a day while they lamb, two of them by night; default 6, or as many as heavy if that is more"),
        May("heavy-from-weeks-before-lambing", Whole(0, 20), "6", "weeks: when that begins"),
    ]);

    public static KeyTable GestationByLitter { get; } = new("practice.gestation-days-by-litter",
    [
        May("single", Whole(-7, 7), "1", "days added for one lamb"),
        May("twin", Whole(-7, 7), "0", "days added for two"),
        May("triplet", Whole(-7, 7), "-1", "days added for three or more"),
    ]);

    public static KeyTable Job { get; } = new("jobs[]",
    [
        Must("title", Text(TextValues.LongestTitle), "as it is to be printed", "Feed merchant closed"),
        May("on", Date, null, "the one day; exactly one of on, before and after is given"),
        May("before", Anchor, null, "so many days before this"),
        May("after", Anchor, null, "so many days after this"),
        May("days", new EitherForm(Whole(0, 400), Pair(0, 400)), null, "required with before or after: the furthest and the nearest day from it, or one number for one day", "[21, 14]"),
        May("minutes-per-ewe", Number(0.1m, 240), null, "what the gathering is reckoned from"),
        May("handled", Flag, null, "ewes must be gathered; default: true when minutes-per-ewe is given"),
        May("closed", Flag, null, "nothing can be ordered or fetched; default: true when the title has the word closed"),
    ])
    {
        ExactlyOneOf = ["on", "before", "after"],
    };

    public static KeyTable Feeds { get; } = new("feeds",
    [
        May("method", Words<FeedMethod>(), "stepped", "how the ration is worked: raised week by week, so much a lamb, or the energy sum alone"),
        May("per-lamb", Mass(0.05m, 2), null, "daily, for each lamb carried: the ceiling of stepped; with method per-lamb the ration itself, 1 lb when left out"),
        May("forage", Section("feeds.forage"), null, "what is before them all day"),
        May("concentrate", new EitherForm(new ChoiceForm<bool>([("none", false)]), Section("feeds.concentrate")), null, "what is weighed out; none for hardy ewes on forage alone"),
        May("largest-feed", Mass(0.05m, 2), "0.5 kg", "most concentrate a ewe gets at one time; never over 0.5 kg, whatever stands here"),
        May("most-dry-matter", Percentage(0.015m, 0.025m), "2.5 %", "eaten a day before lambing, forage and concentrate together, of live weight"),
        May("scales", Flag, "true", "feed is weighed; false: every amount is in scoops, and concentrate needs its scoop"),
        May("parted", Words<Parting>(), "by-lambs", "whether ewes of one place are parted at the trough by the lambs they carry"),
        May("change-day", Weekday, null, "the weekday on which every ration changes; default: week-starts under print"),
        May("lambed", Section("feeds.lambed"), null, "concentrate a ewe a day by lambs at foot, until turnout"),
        May("buckets", Section("feeds.buckets"), null, "mineral or molasses buckets; default: none"),
        May("order-lead-days", Whole(0, 60), "7", "days between ordering and having it"),
        May("margin", Percentage(0, 1), "0 %", "bought over the sum"),
        May("ground", Words<Ground>(), "lowland", "what they walk when not housed"),
    ]);

    public static KeyTable Forage { get; } = new("feeds.forage",
    [
        May("kind", Words<ForageKind>(), "hay", "decides the figures below where they are not given"),
        May("energy", Energy(3, 14), "8.8 MJ/kg", "metabolisable energy in dry matter; the default shown is for hay"),
        May("protein", Content(10, 350), "90 g/kg", "crude protein in dry matter; the default shown is for hay"),
        May("dry-matter", Percentage(0.05m, 1), "85 %", "of the forage as fed; the default shown is for hay"),
        May("bale", Mass(3, 1000), "20 kg", "weight of one; the default is for hay; other kinds have none, and grass may have none"),
        May("ad-lib", Flag, "true", "always before them"),
        May("intake", Percentage(0.003m, 0.05m), null, "dry matter eaten a day, of live weight; default: usual for the kind"),
        May("substitution", Number(0, 1), "0", "kg of forage left for each kg of concentrate eaten"),
    ]);

    public static KeyTable Concentrate { get; } = new("feeds.concentrate",
    [
        May("name", Text(), "Ewe nuts", "as on the bag"),
        May("energy", Energy(5, 16), "12.5 MJ/kg", "metabolisable energy in dry matter"),
        May("protein", Content(20, 600), "180 g/kg", "crude protein in dry matter"),
        May("dry-matter", Percentage(0.20m, 1), "86 %", "of the bag"),
        May("bag", Mass(1, 1500), "20 kg", "what one bag holds"),
        May("scoop", Mass(0.1m, 10), null, "what one level scoop holds; without it everything is weighed"),
    ]);

    public static KeyTable LambedFeeds { get; } = new("feeds.lambed",
    [
        May("single", Mass(0, 3), "0.6 kg", "a day with one lamb at foot"),
        May("twin", Mass(0, 3), "1.35 kg", "a day with two"),
        May("triplet", Mass(0, 3), "1.5 kg", "a day with three or more"),
    ]);

    public static KeyTable Buckets { get; } = new("feeds.buckets",
    [
        May("name", Text(), "Mineral bucket", "as on the lid"),
        May("weight", Mass(0.5m, 250), "22 kg", "of one"),
        May("ewes-per-bucket", Whole(1, 200), "20", "how many share one"),
        May("days", Whole(1, 120), "14", "how long one lasts them"),
    ]);

    public static KeyTable Housing { get; } = new("housing",
    [
        May("lambing", Words<LambingPlace>(), "indoors", "outdoors means no housing job and no pens to fill"),
        May("pens", ListOf(Section("housing.pens[]")), null, "where groups stand"),
        May("lambing-pens", Whole(0, 500), null, "how many there are"),
        May("days-in-lambing-pen", Section("housing.days-in-lambing-pen"), null, "how long a ewe holds one"),
        May("turnout-days-after-lambing", Whole(0, 120), "10", "days: when a ewe and her lambs go out to grass"),
    ]);

    public static KeyTable Pen { get; } = new("housing.pens[]",
    [
        Must("name", Text(), "what the pen is called", "North bay"),
        Must("length", Length(0.5m, 200), "of the bedded floor", "6 m"),
        Must("width", Length(0.5m, 200), "of the bedded floor", "4.8 m"),
        May("trough", Length(0.1m, 400), null, "that ewes can stand at, both sides counted"),
        May("at", Section("housing.pens[].at"), null, "its upper left corner on the plan of the shed; length runs to the right, width down"),
    ]);

    public static KeyTable PenAt { get; } = new("housing.pens[].at",
    [
        Must("right", Length(0, 400), "from the left of the shed", "0 m"),
        Must("down", Length(0, 400), "from the top of the plan", "0 m"),
    ]);

    public static KeyTable DaysInLambingPen { get; } = new("housing.days-in-lambing-pen",
    [
        May("single", Whole(1, 14), "1", "days with one lamb"),
        May("twin", Whole(1, 14), "2", "days with two"),
        May("triplet", Whole(1, 14), "3", "days with three or more"),
    ]);

    public static KeyTable Ewe { get; } = new("ewes[]",
    [
        Must("tag", Text(TextValues.LongestTag), "as on the ear, never twice", "ZZ 0123456 00101"),
        May("name", Text(), null, "what she is called"),
        May("breed", Text(), null, "one under breeds, or any other"),
        May("group", Text(), null, "her tupping group; default: the only group"),
        May("born", Whole(0, 9999), null, "the year, such as 2021"),
        May("weight", LiveWeight, null, "at tupping"),
        May("condition", Number(1, 5), null, "body condition score at tupping"),
        May("teeth", Words(Teeth.Sound, Teeth.Worn, Teeth.Broken, Teeth.Unchecked), "unchecked", "before tupping"),
        May("toes", Words(Toes.Sound, Toes.Treated, Toes.Lame, Toes.Unchecked), "unchecked", "before tupping"),
        May("teats", Words(Teats.Sound, Teats.Lumpy, Teats.LostHalf, Teats.Unchecked), "unchecked", "before tupping"),
        May("history", ListOf(Words<PastTrouble>()), null, "of earlier seasons; each keeps her from the tup, unless to-tup says otherwise"),
        May("was", Section("ewes[].was"), null, "what came of last season, carried over by begin --from"),
        May("to-tup", Flag, null, "the keeper's own decision, whatever her history, teeth, toes and teats say"),
        May("marks", ListOf(Date), null, "days a fresh raddle mark was seen"),
        May("scan", Whole(0, 5), null, "lambs counted; leave out until scanned"),
        May("scan-stage", Words<ScanStage>(), null, "if the scanner said so"),
        May("lambed", Date, null, "the day; closes her card"),
        May("lambed-time", new TimeForm(LocalTime.Midnight, new LocalTime(23, 59)), null, "when, such as 03:20; only with lambed, as the three after it"),
        May("lambs-alive", Whole(0, LambingResult.MostLambs), null, "lambs born alive"),
        May("lambs-dead", Whole(0, LambingResult.MostLambs), null, "lambs born dead"),
        May("lambing-help", Words<LambingHelp>(), null, "what help she had"),
        May("lambs", ListOf(Section("ewes[].lambs[]")), null, "lambs born alive, for the flock book; only with lambed"),
        May("lost-lambs", Date, null, "the day she was seen to have lost the lambs she carried"),
        May("gone", Section("ewes[].gone"), null, "if she has left the flock; she stays in the file"),
        May("note", new TextForm(TextValues.LongestNote, MayRunOn: true), null, "anything a stranger should know"),
    ]);

    public static KeyTable LastSeason { get; } = new("ewes[].was",
    [
        May("scan", Whole(0, 5), null, "lambs counted"),
        May("lambs-alive", Whole(0, LambingResult.MostLambs), null, "lambs born alive"),
    ]);

    public static KeyTable Lamb { get; } = new("ewes[].lambs[]",
    [
        Must("sex", Words<LambSex>(), "of the lamb", "ewe"),
        May("tag", Text(TextValues.LongestTag), null, "as on the ear, never twice"),
        May("weight", Mass(0.3m, 12), null, "at birth"),
    ]);

    public static KeyTable Gone { get; } = new("ewes[].gone",
    [
        Must("on", Date, "the day", "2026-12-03"),
        Must("why", Words<LossReason>(), "what became of her", "died"),
    ]);

    public static IEnumerable<KeyTable> All =>
    [
        Top, Holding, Location, Contact, Print, Season, Breed, Group, TupTurn, Fields, KeeperDays, Absence, Practice, FeedingWeeks, ChecksPerDay, GestationByLitter,
        Job, Feeds, Forage, Concentrate, LambedFeeds, Buckets, Housing, Pen, PenAt, DaysInLambingPen, Ewe, LastSeason, Lamb, Gone,
    ];

    /// <param name="path">Of a table that is there.</param>
    public static KeyTable At(string path) => All.First(t => t.Path == path);

    /// <summary>The letters and hyphens a text begins with: its key, if it has one.</summary>
    public static string WordOf(string text) => new([.. text.TakeWhile(c => char.IsAsciiLetter(c) || c == '-')]);

    private static FlockKey Must(string name, Form form, string meaning, string? example = null) => new(name, form, IsRequired: true, null, meaning, example);

    private static FlockKey May(string name, Form form, string? whenLeftOut, string meaning, string? example = null) =>
        new(name, form, IsRequired: false, whenLeftOut, meaning, example);
}
