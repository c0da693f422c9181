namespace PaperFlock.Flocks.Reading;

/// <summary>
/// Every key of the flock file, format 1. A key that is not here is refused, and the readers may ask for no other;
/// the tests hold each default here against what is read without the key.
/// </summary>
internal static class FlockKeys
{
    public static KeyTable Top { get; } = new("",
    [
        new("paperflock", "1", null, "required: the version of this format", "1"),
        new("holding", "section", null, "required: where the sheep are"),
        new("print", "section", null, "what comes out of the printer"),
        new("season", "section", null, "required: when the tup is with the ewes"),
        new("breeds", "list", null, "breeds with figures of their own"),
        new("groups", "list", null, "tupping groups; without them every ewe is in one"),
        new("keeper-days", "section", null, "when the keeper can work, and is away"),
        new("practice", "section", null, "figures the scheduler uses"),
        new("jobs", "list", null, "the keeper's own jobs"),
        new("feeds", "section", null, "forage, concentrate and how the ration is worked"),
        new("housing", "section", null, "pens, and days in them"),
        new("ewes", "list", null, "required: at least one"),
    ]);

    public static KeyTable Holding { get; } = new("holding",
    [
        new("name", "text", null, "required", "Hollin Bank"),
        new("keeper", "text", null, "the name on the handover sheet"),
        new("location", "section", null, "required: for sunrise and for the emergency services", "{latitude: 54.46, longitude: -2.74}"),
        new("time-zone", "IANA name", null, "required: such as Europe/London", "Europe/London"),
        new("grid-reference", "text", null, "printed for the emergency services"),
        new("postcode", "text", null, "printed for the emergency services"),
        new("contacts", "list", null, "who to ring, in order"),
    ]);

    public static KeyTable Location { get; } = new("holding.location",
    [
        new("latitude", "decimal degrees", null, "required: south is negative", "54.46"),
        new("longitude", "decimal degrees", null, "required: west is negative", "-2.74"),
    ]);

    public static KeyTable Contact { get; } = new("holding.contacts[]",
    [
        new("role", "text", null, "required: such as Vet", "Vet"),
        new("name", "text", null, "who answers"),
        new("phone", "text", null, "printed as typed"),
        new("note", "text", null, "such as out of hours too"),
    ]);

    public static KeyTable Print { get; } = new("print",
    [
        new("paper", "A4 | Letter", "A4", "what the printer holds"),
        new("planner", "A4 | A3 | A2 | Letter | Tabloid", "A3", "size of the finished wall planner; larger than paper means tiles"),
        new("units", "metric | imperial | both", "metric", "units on the paper"),
        new("week-starts", "weekday", "Monday", "first column of the planner"),
        new("gloves", "true | false", "true", "sizes write-in boxes for gloved hands"),
        new("binding", "two-hole | four-hole | three-hole | none", "two-hole", "which holes are ticked"),
        new("duplex", "long-edge | short-edge | single-sided", "long-edge", "how the printer turns the sheet"),
    ]);

    public static KeyTable Season { get; } = new("season",
    [
        new("tup-in", "date", null, "required, unless lambing-from is given: the day the tup joins the ewes"),
        new("lambing-from", "date", null, "the day the first lambs are wanted; tup-in is that day less gestation-days"),
        new("tup-out", "date", null, "default: tup-in and 42 days, two and a half cycles"),
        new("gestation-days", "130 to 165", "147", "where a breed gives no figure of its own"),
    ]);

    public static KeyTable Breed { get; } = new("breeds[]",
    [
        new("name", "text", null, "required", "Ryeland"),
        new("gestation-days", "130 to 165", null, "default: the season's"),
        new("mature-weight", "mass", null, "for a ewe with no weight of her own"),
    ]);

    public static KeyTable Group { get; } = new("groups[]",
    [
        new("name", "text", null, "required", "Orchard"),
        new("tup", "text", null, "his name"),
        new("mating", "natural | artificial | hand", "natural", "the last two have one day, given as date"),
        new("date", "date", null, "the one day; required for artificial and hand, and only for them", "2026-08-14"),
        new("tup-in", "date", null, "default: the season's"),
        new("tup-out", "date", null, "default: the season's; after a tup-in of its own, 42 days later or the season's stated day, whichever is later"),
        new("raddle", "list of colours | false", "[yellow, orange, red, blue]", "crayons in order, light to dark"),
    ]);

    public static KeyTable KeeperDays { get; } = new("keeper-days",
    [
        new("free", "list of weekdays", "[Monday, Tuesday, Wednesday, Thursday, Friday, Saturday, Sunday]", "days for jobs that need hours"),
        new("away", "list", null, "when a sitter holds the pack"),
    ]);

    public static KeyTable Absence { get; } = new("keeper-days.away[]",
    [
        new("from", "date", null, "required: first day away", "2026-12-27"),
        new("to", "date", null, "required: last day away", "2027-01-02"),
        new("sitter", "text", null, "who holds the pack"),
        new("phone", "text", null, "printed as typed"),
    ]);

    public static KeyTable Practice { get; } = new("practice",
    [
        new("teeth-toes-teats-weeks-before-tupping", "2 to 26", "8", "time enough to treat, or to find another ewe"),
        new("scan-days-after-tup-in", "[first, last]", "[75, 80]", "days worth scanning"),
        new("feed-weeks-before-lambing", "1 to 16", "6", "when concentrate begins"),
        new("two-feeds-weeks-before-lambing", "0 to 16", "3", "when it is given in two feeds"),
        new("house-days-before-lambing", "0 to 90", "7", "when they come in"),
        new("dag", "at-housing | before-housing | none", "at-housing", "when they are dagged"),
        new("shear", "before-tupping | at-housing | after-lambing | none", "before-tupping", "when they are shorn"),
        new("booster-weeks-before-lambing", "[earliest, latest]", "[6, 4]", "when a booster is any use"),
        new("checks-per-day", "section", null, "rounds a day"),
        new("changeover-days", "10 to 21", "17", "the oestrous cycle, and so the days between raddle colours"),
        new("gestation-spread-days", "0.5 to 6", "2.5", "standard deviation of a ewe's gestation round her own mean"),
        new("gestation-days-by-litter", "section", null, "days added to the mean"),
        new("conception-per-cycle", "10 % to 100 %", "80 %", "chance that a ewe mated in one cycle holds"),
        new("ewes-per-tup", "1 to 150", "50", "more than this with one tup is warned of"),
        new("last-round", "12:00 to 23:59", "21:30", "when the late round is walked"),
        new("first-round-not-before", "00:00 to 12:00", "05:00", "first light is walked no earlier than this"),
    ]);

    public static KeyTable ChecksPerDay { get; } = new("practice.checks-per-day",
    [
        new("normal", "1 to 12", "2", "most of the year"),
        new("heavy", "1 to 12", "4", "when ewes are heavy in lamb"),
        new("heavy-from-weeks-before-lambing", "0 to 20", "6", "when that begins"),
    ]);

    public static KeyTable GestationByLitter { get; } = new("practice.gestation-days-by-litter",
    [
        new("single", "-7 to 7", "1", "added for one lamb"),
        new("twin", "-7 to 7", "0", "added for two"),
        new("triplet", "-7 to 7", "-1", "added for three or more"),
    ]);

    public static KeyTable Job { get; } = new("jobs[]",
    [
        new("title", "text", null, "required: as it is to be printed", "Feed merchant closed"),
        new("on", "date", null, "the one day; exactly one of on, before and after is given"),
        new("before", "anchor", null, "tup-in, tup-out, scan, feeding, housing, first-due or last-due"),
        new("after", "anchor", null, "the same words"),
        new("days", "[far, near]", null, "required with before or after: days from it, or one number for one day", "[21, 14]"),
        new("minutes-per-ewe", "number", null, "what the gathering is reckoned from"),
        new("handled", "true | false", null, "ewes must be gathered; default: true when minutes-per-ewe is given"),
        new("closed", "true | false", null, "nothing can be ordered or fetched; default: true when the title has the word closed"),
    ]);

    public static KeyTable Feeds { get; } = new("feeds",
    [
        new("method", "per-lamb | energy-balance", "per-lamb", "which of the two rations is followed"),
        new("per-lamb", "mass", "1 lb", "daily, for each lamb carried"),
        new("forage", "section", null, "what is before them all day"),
        new("concentrate", "section", null, "what is weighed out"),
        new("largest-feed", "mass", "0.5 kg", "most concentrate a ewe gets at one time"),
        new("buckets", "section", null, "default: none"),
        new("order-lead-days", "0 to 60", "7", "between ordering and having it"),
        new("margin", "percentage", "0 %", "bought over the sum"),
        new("ground", "lowland | hill", "lowland", "what they walk when not housed"),
    ]);

    public static KeyTable Forage { get; } = new("feeds.forage",
    [
        new("kind", "hay | haylage | silage | straw | grass", "hay", "decides the figures below where they are not given"),
        new("energy", "MJ/kg", "8.8 MJ/kg", "metabolisable energy in dry matter; the default shown is for hay"),
        new("protein", "g/kg", "90 g/kg", "crude protein in dry matter; the default shown is for hay"),
        new("dry-matter", "percentage", "85 %", "the default shown is for hay"),
        new("bale", "mass", "20 kg", "the default is for hay; other kinds have none, and grass may have none"),
        new("ad-lib", "true | false", "true", "always before them"),
        new("intake", "percentage", null, "dry matter eaten a day, of live weight; default: usual for the kind"),
        new("substitution", "0 to 1", "0", "kg of forage left for each kg of concentrate eaten"),
    ]);

    public static KeyTable Concentrate { get; } = new("feeds.concentrate",
    [
        new("name", "text", "Ewe nuts", "as on the bag"),
        new("energy", "MJ/kg", "12.5 MJ/kg", "metabolisable energy in dry matter"),
        new("protein", "g/kg", "180 g/kg", "crude protein in dry matter"),
        new("dry-matter", "percentage", "86 %", "of the bag"),
        new("bag", "mass", "20 kg", "what one bag holds"),
        new("scoop", "mass", null, "what one level scoop holds; without it everything is weighed"),
    ]);

    public static KeyTable Buckets { get; } = new("feeds.buckets",
    [
        new("name", "text", "Mineral bucket", "as on the lid"),
        new("weight", "mass", "22 kg", "of one"),
        new("ewes-per-bucket", "1 to 200", "20", "how many share one"),
        new("days", "1 to 120", "14", "how long one lasts them"),
    ]);

    public static KeyTable Housing { get; } = new("housing",
    [
        new("lambing", "indoors | outdoors", "indoors", "outdoors means no housing job and no pens to fill"),
        new("pens", "list", null, "where groups stand"),
        new("lambing-pens", "0 to 500", null, "how many there are"),
        new("days-in-lambing-pen", "section", null, "how long a ewe holds one"),
    ]);

    public static KeyTable Pen { get; } = new("housing.pens[]",
    [
        new("name", "text", null, "required", "North bay"),
        new("length", "length", null, "required", "6 m"),
        new("width", "length", null, "required", "4.8 m"),
        new("trough", "length", null, "that ewes can stand at, both sides counted"),
    ]);

    public static KeyTable DaysInLambingPen { get; } = new("housing.days-in-lambing-pen",
    [
        new("single", "1 to 14", "1", "with one lamb"),
        new("twin", "1 to 14", "2", "with two"),
        new("triplet", "1 to 14", "3", "with three or more"),
    ]);

    public static KeyTable Ewe { get; } = new("ewes[]",
    [
        new("tag", "text", null, "required: as on the ear, never twice", "ZZ 0123456 00101"),
        new("name", "text", null, "what she is called"),
        new("breed", "text", null, "one under breeds, or any other"),
        new("group", "text", null, "default: the only group"),
        new("born", "year", null, "such as 2021"),
        new("weight", "mass", null, "at tupping"),
        new("condition", "1 to 5", null, "body condition score at tupping"),
        new("teeth", "sound | worn | broken | unchecked", "unchecked", "before tupping"),
        new("toes", "sound | treated | lame | unchecked", "unchecked", "before tupping"),
        new("teats", "sound | lumpy | lost-half | unchecked", "unchecked", "before tupping"),
        new("to-tup", "true | false", null, "the keeper's own decision, whatever teeth, toes and teats say"),
        new("marks", "list of dates", null, "days a fresh raddle mark was seen"),
        new("scan", "0 to 5", null, "lambs counted; leave out until scanned"),
        new("scan-stage", "early | late", null, "if the scanner said so"),
        new("lambed", "date", null, "closes her card"),
        new("lambed-time", "time", null, "on the 24-hour clock, such as 03:20; only with lambed, as the three after it"),
        new("lambs-alive", "0 to 6", null, "lambs born alive"),
        new("lambs-dead", "0 to 6", null, "lambs born dead"),
        new("lambing-help", "none | hand | vet", null, "what help she had"),
        new("note", "text", null, "anything a stranger should know"),
    ]);

    public static IEnumerable<KeyTable> All =>
    [
        Top, Holding, Location, Contact, Print, Season, Breed, Group, KeeperDays, Absence, Practice, ChecksPerDay, GestationByLitter,
        Job, Feeds, Forage, Concentrate, Buckets, Housing, Pen, DaysInLambingPen, Ewe,
    ];
}
