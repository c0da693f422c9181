using CsCheck;
using NodaTime;
using NodaTime.Text;
using PaperFlock.Diagnostics;

namespace PaperFlock.Flocks.Tests;

/// <summary>
/// Pairs of keys that can disagree, drawn at random. Each pair has a rule of its own here, written without looking at the
/// reader's: what the pair says is legal, warned of or refused, and never silently settled one way or the other.
/// </summary>
public class ContradictionTests
{
    private static readonly LocalDate TupIn = new(2026, 8, 10);

    /// <summary>A day of the season, most often near the one that matters.</summary>
    private static readonly Gen<LocalDate> Day = Gen.OneOf(Gen.Int[-220, 420], Gen.Int[-3, 3], Gen.Int[36, 46], Gen.Int[125, 170]).Select(TupIn.PlusDays);

    private static readonly string[] Matings = ["natural", "artificial", "hand"];
    private static readonly string[] NaturalKeys = ["tup-in: 2026-08-10", "tup-out: 2026-09-10", "raddle: [red]"];
    private static readonly string[] LambingKeys = ["lambs-alive: 2", "lambs-dead: 1", "lambed-time: 03:20", "lambing-help: vet"];
    private static readonly string[] Signs = ["marks: [2026-08-14]", "scan: 2", "lambed: 2027-01-10"];
    private static readonly string[] OneTup = ["tup: Bramley", "tup-in: 2026-08-10", "tup-out: 2026-09-10"];
    private static readonly string[] Breeds = ["Ryeland", "ryeland", "Ryland", "Rye-land", "Cheviot"];
    private static readonly (string Tag, int Ear)[] Tags = [("ZZ 01", 1), ("zz01", 1), ("ZZ-01", 1), ("\"ZZ\u00A001\"", 1), ("ZZ\u201301", 1), ("ZZ 02", 2), ("ZZ O1", 3), ("ZZ 010", 4)];

    private static readonly string[] Fields = [", field: Croft", ", field: Low Paddock", ""];
    private static readonly (string Text, bool IsRight)[] References = [("NY 480 046", true), ("ny480046", true), ("NY 4800 0460", true), ("NY 480 04", false), ("ZZ 480 046", false), ("NY", false), ("51.5, -0.1", false), ("field gate", false)];

    private static readonly (string Name, bool KeepsTime)[] BritishZones = [("Europe/London", true), ("Europe/Dublin", true), ("UTC", false), ("Europe/Berlin", false), ("Africa/Abidjan", false), ("Europe/Moscow", false)];

    private static readonly string[] Zones = ["Europe/Berlin", "Europe/Rome", "Africa/Lagos", "Asia/Tokyo"];

    /// <summary>The list of pairs: the two keys, and a text with both and what must be said of it.</summary>
    private static readonly (string Keys, Gen<(string Text, Verdict Verdict)> Drawn)[] Pairs =
    [
        ("season.tup-in, season.lambing-from", Gen.Select(Day, Gen.Int[0, 2], (day, which) => (
            Season(which switch { 0 => $"tup-in: {Iso(day)}", 1 => $"lambing-from: {Iso(day)}", _ => $"tup-in: {Iso(day)}\n  lambing-from: {Iso(day.PlusDays(147))}" }),
            Refused(which == 2)))),

        // Half a year is the longest any tup stays.
        ("season.tup-in, season.tup-out", Gen.Select(Day, @out => (
            Season($"tup-in: {Iso(TupIn)}\n  tup-out: {Iso(@out)}"), Refused(@out < TupIn || Between(TupIn, @out) > 183)))),

        ("season.tup-in, today", Gen.Select(Gen.Int[-1200, 1200], days => (
            AsOf(TupIn.PlusDays(days), Samples.Text()),
            Warned(TupIn < TupIn.PlusDays(days).PlusMonths(-13) || TupIn > TupIn.PlusDays(days).PlusMonths(13))))),

        ("season.tup-in, groups.tup-in", Gen.Select(Day, own => (
            InGroups($"{{name: A, tup-in: {Iso(own)}}}"), Refused(Math.Abs(Between(TupIn, own)) > 183)))),

        ("season.tup-in, jobs.on", Gen.Select(Gen.Int[-900, 900], days => (
            Samples.Text($"jobs:\n  - {{title: Dip, on: {Iso(TupIn.PlusDays(days))}}}\n"),
            Diary(TupIn.PlusDays(days))))),

        ("season.tup-in, keeper-days.away", Gen.Select(Gen.Int[-900, 900], days => (Away((TupIn.PlusDays(days), TupIn.PlusDays(days))), Diary(TupIn.PlusDays(days))))),

        ("groups.mating, groups.date", Gen.Select(Gen.Int[0, 2], Gen.Bool, (mating, dated) => (
            InGroups($"{{name: A, mating: {Matings[mating]}{(dated ? ", date: 2026-08-14" : "")}}}"), Refused(dated == (mating == 0))))),

        ("groups.mating, groups.tup-in or tup-out or raddle", Gen.Select(Gen.Int[0, 2], Gen.Int[0, 3], (mating, key) => (
            InGroups($"{{name: A, mating: {Matings[mating]}{(mating > 0 ? ", date: 2026-08-14" : "")}{(key < 3 ? ", " + NaturalKeys[key] : "")}}}"), Refused(mating > 0 && key < 3)))),

        // He may go from one to the other on one day.
        ("groups.tup, groups.tup of another", Gen.Select(Gen.Int[0, 60], Gen.Int[0, 60], Gen.Int[0, 2], Gen.Bool, (from, until, mating, same) => (
            TwoGroups(
                "{name: A, tup: Bramley, tup-in: 2026-08-10, tup-out: 2026-09-10}",
                $"{{name: B, tup: {(same ? "BRAMLEY" : "Damson")}, {Stay(mating, TupIn.PlusDays(from), TupIn.PlusDays(from + until))}}}"),
            Warned(same && from < 31 && mating switch { 0 => from + until > 0, 2 => from > 0, _ => false })))),

        ("groups.tup, groups.field", Gen.Select(Gen.Int[0, 2], Gen.Int[0, 2], (one, other) => (
            TwoGroups($"{{name: A, tup: Bramley{Fields[one]}}}", $"{{name: B, tup: Bramley{Fields[other]}}}"), Warned(one != other || one == 2)))),

        ("feeds.scales, feeds.concentrate.scoop", Gen.Select(Gen.Bool, Gen.Bool, Gen.Bool, (scales, scoop, fed) => (
            Samples.Text($"feeds:\n  scales: {(scales ? "yes" : "no")}\n  concentrate: {(!fed ? "none" : scoop ? "{scoop: 1 kg}" : "{bag: 20 kg}")}\n"),
            Refused(!scales && fed && !scoop)))),

        ("groups.name, ewes.group", Gen.Select(Gen.Int[0, 3], which => (
            InGroups("{name: A}", "ewes:\n  - {tag: ZZ 1" + which switch { 0 => ", group: A", 1 => ", group: B", 2 => ", group: a", _ => "" } + "}\n"),
            Refused(which is 1 or 2)))),

        ("groups.name, ewes.group of every ewe", Gen.Select(Gen.Bool, Gen.Bool, (one, other) => (
            Samples.Text("groups:\n  - name: A\n  - name: B\n", ewes: $"ewes:\n  - {{tag: ZZ 1, group: {(one ? "A" : "B")}}}\n  - {{tag: ZZ 2, group: {(other ? "A" : "B")}}}\n"),
            Warned(one == other)))),

        ("groups.tup-in and tup-out, ewes.marks", Gen.Select(Day, mark => (
            Samples.Ewe($"marks: [{Iso(mark)}]"), Refused(mark < TupIn || mark > TupIn.PlusDays(42))))),

        ("ewes.marks, today", Gen.Select(Gen.Int[0, 42], Gen.Int[-5, 60], (mark, today) => (
            AsOf(TupIn.PlusDays(today), Samples.Ewe($"marks: [{Iso(TupIn.PlusDays(mark))}]")), Refused(mark > today)))),

        ("ewes.marks, ewes.marks", Gen.Select(Gen.Int[0, 9], Gen.Int[0, 9], (one, other) => (
            Samples.Ewe($"marks: [{Iso(TupIn.PlusDays(one))}, {Iso(TupIn.PlusDays(other))}]"), Refused(one == other)))),

        // Empty is a count too; nobody can count before day 40.
        ("ewes.scan, today", Gen.Select(Gen.Int[0, 5], Gen.Int[-20, 120], (scan, today) => (
            AsOf(TupIn.PlusDays(today), Samples.Ewe($"scan: {scan}")), Refused(today < 40)))),

        ("ewes.scan, ewes.marks", Gen.Select(Gen.Int[0, 42], Gen.Int[0, 42], Gen.Int[42, 120], (one, other, today) => (
            AsOf(TupIn.PlusDays(today), Samples.Ewe($"marks: [{Marks(one, other)}]", "scan: 2")),
            today < Math.Min(one, other) + 40 ? Verdict.Refused : Warned(today < Math.Max(one, other) + 40)))),

        ("ewes.scan, ewes.scan-stage", Gen.Select(Gen.Int[-1, 5], scan => (
            Samples.Ewe(scan < 0 ? "scan-stage: early" : $"scan-stage: early\n    scan: {scan}"), Refused(scan <= 0)))),

        ("ewes.lambed, today", Gen.Select(Gen.Int[138, 190], Gen.Int[100, 220], (lambed, today) => (
            AsOf(TupIn.PlusDays(today), Samples.Ewe($"lambed: {Iso(TupIn.PlusDays(lambed))}")), Refused(lambed > today)))),

        // The tup was in for 42 days; ewes lamb after 138 to 159 days, and no lamb comes before 130 or after 165.
        ("ewes.lambed, groups.tup-in and tup-out", Gen.Select(Gen.Int[100, 230], lambed => (
            Samples.Ewe($"lambed: {Iso(TupIn.PlusDays(lambed))}"),
            lambed < 130 || lambed > 42 + 165 ? Verdict.Refused : Warned(lambed < 138 || lambed > 42 + 159)))),

        ("ewes.lambed, ewes.marks", Gen.Select(Gen.Int[0, 42], Gen.Int[130, 207], (mark, lambed) => (
            Samples.Ewe($"marks: [{Iso(TupIn.PlusDays(mark))}]", $"lambed: {Iso(TupIn.PlusDays(lambed))}"),
            Warned(lambed - mark is < 138 or > 159)))),

        ("ewes.lambed, breeds.gestation-days", Gen.Select(Gen.Int[130, 165], Gen.Int[130, 165], (average, days) => (
            Samples.Text($"breeds:\n  - {{name: Finn, gestation-days: {average}}}\n", ewes: $"ewes:\n  - {{tag: ZZ 1, breed: Finn, marks: [2026-08-10], lambed: {Iso(TupIn.PlusDays(days))}}}\n"),
            Warned(average is < 140 or > 155 || days < Math.Min(138, average - 9) || days > Math.Max(159, average + 12))))),

        ("ewes.lambed, ewes.lambs-alive", Gen.Select(Gen.Bool, Gen.Int[0, 3], (lambed, key) => (
            Samples.Ewe(LambingKeys[key], lambed ? "lambed: 2027-01-10" : "name: Bracken"), Refused(!lambed)))),

        ("ewes.lambs-alive, ewes.lambs-dead", Gen.Select(Gen.Int[0, 6], Gen.Int[0, 6], (alive, dead) => (
            Samples.Ewe("lambed: 2027-01-10", $"lambs-alive: {alive}", $"lambs-dead: {dead}"),
            alive + dead > 6 ? Verdict.Refused : Warned(alive + dead == 0)))),

        ("ewes.scan, ewes.lambs-alive and lambs-dead", Gen.Select(Gen.Int[0, 5], Gen.Int[0, 6], Gen.Int[-1, 2], (scan, alive, dead) => (
            Samples.Ewe($"scan: {scan}", "lambed: 2027-01-10", $"lambs-alive: {alive}", dead < 0 ? "name: Bracken" : $"lambs-dead: {dead}"),
            alive + dead > 6 ? Verdict.Refused : Warned(LambsAreOdd(scan, alive, dead))))),

        ("ewes.to-tup, ewes.marks or scan or lambed", Gen.Select(Gen.Bool, Gen.Int[0, 3], (went, key) => (
            Samples.Ewe($"to-tup: {(went ? "yes" : "no")}", key == 3 ? "name: Bracken" : Signs[key]), Refused(!went && key < 3)))),

        ("groups.tups, groups.tup or tup-in or tup-out", Gen.Select(Gen.Int[0, 3], key => (
            InGroups($"{{name: A, tups: [{{name: Bramley, in: 2026-08-10, out: 2026-08-24}}]{(key < 3 ? ", " + OneTup[key] : "")}}}"), Refused(key < 3)))),

        // One may go out on the day the other goes in.
        ("groups.tups.in and out, groups.tups of another", Gen.Select(Gen.Int[0, 30], Gen.Int[0, 30], Gen.Int[0, 30], (@out, @in, days) => (
            InGroups($"{{name: A, tups: [{Turn("Bramley", 0, @out)}, {Turn("Damson", @in, @in + days)}]}}"), Warned(@in < @out && @in + days > 0)))),

        ("groups.tups.in, groups.tups.out", Gen.Select(Gen.Int[0, 30], Gen.Int[0, 30], (@in, @out) => (
            InGroups($"{{name: A, tups: [{Turn("Bramley", @in, @out)}]}}"), Refused(@out < @in)))),

        ("ewes.lambs, ewes.lambed", Gen.Select(Gen.Bool, lambed => (
            Samples.Ewe("lambs: [{sex: ewe}]", lambed ? "lambed: 2027-01-10" : "name: Bracken"), Refused(!lambed)))),

        ("ewes.lambs, ewes.lambs-alive", Gen.Select(Gen.Int[1, 6], Gen.Int[1, 4], (alive, listed) => (
            Samples.Ewe("lambed: 2027-01-10", $"lambs-alive: {alive}", $"lambs: [{string.Join(", ", Enumerable.Repeat("{sex: ewe}", listed))}]"), Refused(listed > alive)))),

        ("ewes.lambs.tag, ewes.tag", Gen.Select(Gen.Bool, same => (
            Samples.Ewe("lambed: 2027-01-10", $"lambs: [{{sex: ewe, tag: {(same ? "zz-0123456-00101" : "ZZ 2")}}}]"), Refused(same)))),

        ("ewes.lost-lambs, ewes.lambed", Gen.Select(Gen.Bool, both => (
            Samples.Ewe("lost-lambs: 2026-11-30", both ? "lambed: 2027-01-10" : "name: Bracken"), Refused(both)))),

        // Nobody can count before day 40; a loss before it may well be why she was scanned empty.
        ("ewes.lost-lambs, ewes.scan", Gen.Select(Gen.Int[1, 120], Gen.Int[-1, 3], (lost, scan) => (
            Samples.Ewe($"lost-lambs: {Iso(TupIn.PlusDays(lost))}", scan < 0 ? "name: Bracken" : $"scan: {scan}"),
            scan > 0 && lost < 40 ? Verdict.Refused : Warned(scan == 0 && lost >= 40)))),

        // After the tup went in, and no later than 165 days after he left.
        ("ewes.lost-lambs, groups.tup-in and tup-out", Gen.Select(Gen.Int[-20, 230], lost => (
            Samples.Ewe($"lost-lambs: {Iso(TupIn.PlusDays(lost))}"), lost is <= 0 or > 42 + 165 ? Verdict.Refused : Warned(lost > 42 + 159)))),

        ("ewes.lost-lambs, ewes.marks", Gen.Select(Gen.Int[0, 42], Gen.Int[0, 207], (mark, lost) => (
            Samples.Ewe($"marks: [{Iso(TupIn.PlusDays(mark))}]", $"lost-lambs: {Iso(TupIn.PlusDays(lost))}"),
            lost <= mark ? Verdict.Refused : Warned(lost - mark > 159)))),

        ("ewes.lost-lambs, today", Gen.Select(Gen.Int[1, 180], Gen.Int[1, 180], (lost, today) => (
            AsOf(TupIn.PlusDays(today), Samples.Ewe($"lost-lambs: {Iso(TupIn.PlusDays(lost))}")), Refused(lost > today)))),

        ("ewes.gone, today", Gen.Select(Gen.Int[-90, 180], Gen.Int[-90, 180], (gone, today) => (
            AsOf(TupIn.PlusDays(today), Samples.Ewe(Gone(gone))), Refused(gone > today)))),

        ("ewes.gone, ewes.marks or lambed or lost-lambs", Gen.Select(Gen.Int[0, 2], Gen.Int[1, 40], Gen.Int[0, 200], (which, mark, gone) => (
            Samples.Ewe(Seen(which, mark, out var day), Gone(gone)), Refused(gone < day)))),

        ("ewes.gone, ewes.scan", Gen.Select(Gen.Int[0, 42], Gen.Int[42, 100], (mark, gone) => (
            Samples.Ewe($"marks: [{Iso(TupIn.PlusDays(mark))}]", "scan: 2", Gone(gone)), Refused(gone < mark + 40)))),

        ("ewes.born, season.tup-in", Gen.Select(Gen.Int[1995, 2030], born => (
            Samples.Ewe($"born: {born}"), born is > 2026 or < 2001 ? Verdict.Refused : Warned(born is 2026 or <= 2010)))),

        ("ewes.breed, breeds.name", Gen.Select(Gen.Int[0, 4], which => (
            Samples.Text("breeds:\n  - {name: Ryeland, gestation-days: 149}\n", ewes: $"ewes:\n  - {{tag: ZZ 1, breed: {Breeds[which]}}}\n"), Refused(which is 1 or 2 or 3)))),

        ("ewes.tag, ewes.tag of another", Gen.Select(Gen.Int[0, Tags.Length - 1], Gen.Int[0, Tags.Length - 1], (one, other) => (
            Samples.Text(ewes: $"ewes:\n  - tag: {Tags[one].Tag}\n  - tag: {Tags[other].Tag}\n"), Refused(Tags[one].Ear == Tags[other].Ear)))),

        ("ewes.name, ewes.name of another", Gen.Select(Gen.Bool, same => (
            Samples.Text(ewes: $"ewes:\n  - {{tag: ZZ 1, name: Fern}}\n  - {{tag: ZZ 2, name: {(same ? "fern" : "Dock")}}}\n"), Warned(same)))),

        // By the mean sun, an hour for 15 degrees: noon between 10:00 and 15:00, in winter and in summer; and less than 4,500 km to London.
        ("holding.location, holding.time-zone", Gen.Select(Gen.Int[-179, 179], east => (
            Samples.Text(holding: $"holding:\n  name: Hollin Bank\n  location: {{latitude: 51.5, longitude: {east}}}\n  time-zone: Europe/London\n"),
            Warned(12 - (east / 15m) is < 10 or > 14)))),

        ("holding.location, holding.time-zone's own country", Gen.Select(Gen.Int[0, 1], Gen.Int[0, 3], (swapped, zone) => (
            Samples.Text(holding: $"holding:\n  name: Hollin Bank\n  location: {(swapped == 0 ? "{latitude: 52.5, longitude: 13.4}" : "{latitude: 13.4, longitude: 52.5}")}\n  time-zone: {Zones[zone]}\n"),
            Warned(swapped == 1 || zone > 1)))),

        // Easting 348, northing 505: the square is 54.43 north and 2.80 west. A hundredth of a degree is 1.11 km; with one decimal the farm may be 6.5 km off.
        ("holding.location, holding.grid-reference", Gen.Select(Gen.Int[-12, 12], Gen.Bool, (north, exact) => (
            Samples.Text(holding: $"holding:\n  name: Hollin Bank\n  location: {{latitude: {54.434m + (north / 100m)}, longitude: {(exact ? -2.803m : -2.8m)}}}\n  time-zone: Europe/London\n  grid-reference: NY 480 046\n"),
            Warned(Math.Abs(north) * 1.11 > (exact ? 2 : 6.5))))),

        // In Great Britain it is read as one of the National Grid; in New Zealand it may be anything.
        ("holding.location, holding.grid-reference as it is written", Gen.Select(Gen.Bool, Gen.Int[0, References.Length - 1], (british, which) => (
            Samples.Text(holding: $"holding:\n  name: Hollin Bank\n  location: {(british ? "{latitude: 54.434, longitude: -2.803}" : "{latitude: -43.86, longitude: 171.72}")}\n  time-zone: {(british ? "Europe/London" : "Pacific/Auckland")}\n  grid-reference: \"{References[which].Text}\"\n"),
            Warned(british != References[which].IsRight)))),

        // Greenwich time all the year is not the time of Britain, though noon is near twelve.
        ("holding.location, holding.time-zone of Britain", Gen.Select(Gen.Int[0, BritishZones.Length - 1], zone => (
            Samples.Text(holding: $"holding:\n  name: Hollin Bank\n  location: {{latitude: 54.46, longitude: -2.74}}\n  time-zone: {BritishZones[zone].Name}\n"),
            Warned(!BritishZones[zone].KeepsTime)))),

        ("holding.location.latitude, sheep", Gen.Select(Gen.Int[-89, 89], north => (
            Samples.Text(holding: $"holding:\n  name: Hollin Bank\n  location: {{latitude: {north}, longitude: 13.4}}\n  time-zone: Europe/Berlin\n"),
            Warned(north is > 72 or < -56 || Math.Abs(north - 52.5m) * 111.2m > 4500)))),

        ("practice.checks-per-day.normal, heavy", Gen.Select(Gen.Int[0, 12], Gen.Int[0, 12], (normal, heavy) => (
            Samples.Text($"practice:\n  checks-per-day: {{{string.Join(", ", new[] { normal > 0 ? $"normal: {normal}" : null, heavy > 0 ? $"heavy: {heavy}" : null }.OfType<string>().DefaultIfEmpty("normal: 2"))}}}\n"),
            Warned(heavy == 1 || (heavy > 0 ? heavy : 4) < (normal > 0 ? normal : 2))))),

        ("practice.checks-per-day.heavy, lambing", Gen.Select(Gen.Int[0, 12], Gen.Int[1, 12], (heavy, lambing) => (
            Samples.Text($"practice:\n  checks-per-day: {{normal: 1, {(heavy > 0 ? $"heavy: {heavy}, " : "")}lambing: {lambing}}}\n"),
            Warned(heavy == 1 || lambing < 3 || lambing < (heavy > 0 ? heavy : 4))))),

        ("practice.scan-days-after-tup-in, itself", Gen.Select(Gen.Int[40, 105], Gen.Int[40, 130], (first, last) => (
            Samples.Text($"practice:\n  scan-days-after-tup-in: [{first}, {last}]\n"), Refused(first > last)))),

        // Lambs are born 147 days after the tup goes in; the usual days of scanning are never too late.
        ("practice.scan-days-after-tup-in, feed-weeks-before-lambing", Gen.Select(Gen.Int[40, 130], Gen.Int[1, 16], (first, weeks) => (
            Samples.Text($"practice:\n  scan-days-after-tup-in: [{first}, 130]\n  feed-weeks-before-lambing: {weeks}\n"), Warned(first > Math.Max(75, 147 - (7 * weeks)))))),

        ("practice.first-round-not-before, last-round", Gen.Select(Gen.Int[0, 12], Gen.Int[12, 23], (first, last) => (
            Samples.Text($"practice:\n  first-round-not-before: {first:00}:00\n  last-round: {last}:00\n"), Warned(last - Math.Max(first, 7) < 10)))),

        ("practice.booster-weeks-before-lambing, itself", Gen.Select(Gen.Int[1, 20], Gen.Int[1, 20], (first, last) => (
            Samples.Text($"practice:\n  booster-weeks-before-lambing: [{first}, {last}]\n"), Refused(first < last)))),

        ("keeper-days.away.from, to", Gen.Select(Gen.Int[0, 40], Gen.Int[0, 40], (from, to) => (
            Away((TupIn.PlusDays(from), TupIn.PlusDays(to))), Refused(to < from)))),

        ("keeper-days.away, keeper-days.away", Gen.Select(Gen.Int[0, 30], Gen.Int[0, 30], (one, other) => (
            Away((TupIn.PlusDays(one), TupIn.PlusDays(one + 5)), (TupIn.PlusDays(other), TupIn.PlusDays(other + 5))), Refused(Math.Abs(one - other) <= 5)))),

        // From eight weeks before the tup to the last lamb, 147 days after he goes; every day is free.
        ("keeper-days.away, keeper-days.free", Gen.Select(Gen.Int[0, 30], gap => (
            Away((TupIn.PlusWeeks(-8), TupIn.PlusDays(9)), (TupIn.PlusDays(10 + gap), TupIn.PlusDays(42 + 147))), Warned(gap == 0)))),

        ("jobs.on, jobs.before, jobs.after", Gen.Select(Gen.Bool, Gen.Bool, Gen.Bool, (on, before, after) => (
            Samples.Text($"jobs:\n  - {{title: Dip{(on ? ", on: 2026-12-01" : "")}{(before ? ", before: housing" : "")}{(after ? ", after: scan" : "")}{(before || after ? ", days: 7" : "")}}}\n"),
            Refused(new[] { on, before, after }.Count(given => given) != 1)))),

        ("jobs.on, jobs.days", Gen.Select(Gen.Bool, Gen.Bool, (on, days) => (
            Samples.Text($"jobs:\n  - {{title: Dip, {(on ? "on: 2026-12-01" : "before: housing")}{(days ? ", days: 7" : "")}}}\n"), Refused(on == days)))),

        ("jobs.on, jobs.on of the same day", Gen.Select(Gen.Int[1, 240], Gen.Int[1, 240], Gen.Bool, (one, other, same) => (
            Samples.Text($"jobs:\n  - {{title: Shear, on: 2026-12-01, minutes-per-ewe: {one}}}\n  - {{title: Dag, on: 2026-12-0{(same ? 1 : 2)}, minutes-per-ewe: {other}}}\n", ewes: "ewes:\n  - tag: ZZ 1\n  - tag: ZZ 2\n  - tag: ZZ 3\n  - tag: ZZ 4\n"),
            Warned(same && (one + other) * 4 > 16 * 60)))),

        ("jobs.minutes-per-ewe, ewes", Gen.Select(Gen.Int[1, 240], Gen.Int[1, 9], (minutes, ewes) => (
            Samples.Text($"jobs:\n  - {{title: Shear, on: 2026-12-01, minutes-per-ewe: {minutes}}}\n", ewes: $"ewes:\n{string.Concat(Enumerable.Range(1, ewes).Select(n => $"  - tag: ZZ {n}\n"))}"),
            Warned(minutes * ewes > 16 * 60)))),

        ("ewes.scan, ewes.lambs and lambs-dead", Gen.Select(Gen.Int[0, 5], Gen.Int[1, 4], Gen.Int[-1, 2], (scan, listed, dead) => (
            Samples.Ewe($"scan: {scan}", "lambed: 2027-01-10", $"lambs: [{string.Join(", ", Enumerable.Repeat("{sex: ewe}", listed))}]", dead < 0 ? "name: Bracken" : $"lambs-dead: {dead}"),
            Warned(scan == 0 || listed + Math.Max(0, dead) > scan + 1)))),

        ("groups.tups.out and in of the next, ewes.marks", Gen.Select(Gen.Int[0, 40], mark => (
            InGroups($"{{name: A, tups: [{Turn("Bramley", 0, 10)}, {Turn("Damson", 23, 40)}]}}", $"ewes:\n  - {{tag: ZZ 1, marks: [{Iso(TupIn.PlusDays(mark))}]}}\n"),
            Refused(mark is > 10 and < 23)))),

        ("groups.raddle, itself", Gen.Select(Samples.OneOf("red", "blue"), Samples.OneOf("Red", "green"), (one, other) => (
            InGroups($"{{name: A, raddle: [{one}, {other}]}}"), Warned(one == "red" && other == "Red")))),

        ("ewes.weight, breeds.mature-weight", Gen.Select(Gen.Int[20, 150], Gen.Int[30, 100], (weight, usual) => (
            Samples.Text($"breeds:\n  - {{name: Ryeland, mature-weight: {usual} kg}}\n", ewes: $"ewes:\n  - {{tag: ZZ 1, breed: Ryeland, weight: {weight} kg}}\n"),
            Warned(weight < usual * 0.8m || weight > usual * 1.35m)))),

        // Half of them or fewer are said at the ewes, more at the breed; one or the other is always said.
        ("ewes.weight of most, breeds.mature-weight", Gen.Select(Gen.Int[30, 120], Gen.Int[0, 5], (usual, others) => (
            Samples.Text($"breeds:\n  - {{name: Ryeland, mature-weight: {usual} kg}}\n", ewes: $"ewes:\n{string.Concat(Enumerable.Range(1, 5).Select(n => $"  - {{tag: ZZ {n}, breed: Ryeland, weight: {(n > others ? 60 : 65)} kg}}\n"))}"),
            Warned((others < 5 && (60 < usual * 0.8m || 60 > usual * 1.35m)) || (others > 0 && (65 < usual * 0.8m || 65 > usual * 1.35m)))))),

        // In August a ewe of last year's spring is still growing, and one of the year before is grown.
        ("ewes.weight, ewes.born and breeds.mature-weight", Gen.Select(Gen.Int[20, 100], Gen.Int[2023, 2025], (weight, born) => (
            Samples.Text($"breeds:\n  - {{name: Ryeland, mature-weight: 70 kg}}\n", ewes: $"ewes:\n  - {{tag: ZZ 1, breed: Ryeland, born: {born}, weight: {weight} kg}}\n"),
            Warned(weight < 70 * (born == 2025 ? 0.5m : 0.8m) || weight > 70 * 1.35m)))),

        // The middle one of four of a breed says what it weighs; of three nobody can tell.
        ("ewes.weight, ewes.weight of others", Gen.Select(Gen.Int[20, 150], Gen.Int[2, 3], (weight, others) => (
            Samples.Text(ewes: $"ewes:\n  - {{tag: ZZ 0, weight: {weight} kg}}\n{string.Concat(Enumerable.Range(1, others).Select(n => $"  - {{tag: ZZ {n}, weight: 60 kg}}\n"))}"),
            Warned(others == 3 && (weight is < 48 or > 81))))),

        ("ewes.was.scan, ewes.was.lambs-alive", Gen.Select(Gen.Int[0, 5], Gen.Int[0, 6], (scan, alive) => (
            Samples.Ewe($"was: {{scan: {scan}, lambs-alive: {alive}}}"), Warned(alive > 0 && (scan == 0 || alive > scan + 1))))),

        // Of August: a lamb of the spring before may have gone to the tup then, one of this spring may not.
        ("ewes.born, ewes.was or history", Gen.Select(Gen.Int[2020, 2026], Gen.Int[0, 2], (born, which) => (
            Samples.Ewe($"born: {born}", which switch { 0 => "was: {scan: 2}", 1 => "history: [mastitis]", _ => "name: Bracken" }), Warned(born == 2026)))),

        // Sixteen years and more, or less than eight months by the year alone.
        ("ewes.born, season.tup-in and ewes.to-tup", Gen.Select(Gen.Int[2002, 2026], Gen.Int[6, 12], Gen.Bool, (born, month, went) => (
            Samples.Text(season: $"season:\n  tup-in: {Iso(new LocalDate(2026, month, 10))}\n", ewes: $"ewes:\n  - {{tag: ZZ 1, born: {born}, to-tup: {(went ? "yes" : "no")}}}\n"),
            Warned(went && (born <= 2010 || (born == 2026 && month < 9)))))),

        ("holding.keeper, holding.contacts.name", Gen.Select(Samples.OneOf("Nell Ashworth", "Nell", "Jack Smith"), Samples.OneOf("Keeper", "Vet"), (keeper, role) => (
            People($"  keeper: {keeper}\n  contacts: [{{role: {role}, name: Nell Ashworth, phone: 01632 960 101}}, {{role: Vet, phone: 01632 960 202}}]\n"), Warned(role == "Keeper" && keeper == "Jack Smith")))),

        ("holding.keeper, keeper-days.away.sitter", Gen.Select(Samples.OneOf("Nell Ashworth", "nell", "Jack Ashworth"), sitter => (
            People("  keeper: Nell Ashworth\n", sitter), Warned(sitter != "Jack Ashworth")))),

        ("holding.contacts.phone, keeper-days.away.phone", Gen.Select(Samples.OneOf("Tom Birkett", "Agnes Thwaite"), Samples.OneOf("01632 960303", "+44 1632 960 303", "01632 960 999"), (sitter, phone) => (
            People("  contacts: [{role: Sitter, name: Tom Birkett, phone: 01632 960 303}, {role: Vet, phone: 01632 960 202}]\n", $"{sitter}, phone: {phone}"), Warned(sitter == "Tom Birkett" && phone.EndsWith("999", StringComparison.Ordinal))))),

        ("holding.contacts.phone, holding.contacts.phone of another", Gen.Select(Samples.OneOf("Tom Birkett", "Tom", "Agnes Thwaite"), Samples.OneOf("01632 960303", "+44 1632 960 303", "01632 960 999"), Gen.Bool, (name, phone, noted) => (
            People($"  contacts: [{{role: Sitter, name: Tom Birkett, phone: 01632 960 303}}, {{role: Neighbour, name: {name}, phone: {phone}{(noted ? ", note: by day" : "")}}}, {{role: Vet, phone: 01632 960 202}}]\n"),
            Warned(phone.EndsWith("999", StringComparison.Ordinal) ? name != "Agnes Thwaite" && !noted : name == "Agnes Thwaite")))),

        ("feeds.concentrate, feeds.per-lamb or lambed", Gen.Select(Gen.Bool, Gen.Int[0, 2], (none, key) => (
            Samples.Text($"feeds:\n  concentrate: {(none ? "none" : "{bag: 20 kg}")}\n{key switch { 0 => "  per-lamb: 1 lb\n", 1 => "  lambed: {single: 0.6 kg}\n", _ => "" }}"), Warned(none && key < 2)))),

        // What is left out is 0.6 kg for one lamb, 1.35 for two and 1.5 for three.
        ("feeds.lambed.single, twin and triplet", Gen.Select(Gen.Int[-3, 20], Gen.Int[-3, 20], Gen.Int[-3, 20], (single, twin, triplet) => (
            Samples.Text($"feeds:\n  lambed: {{{string.Join(", ", new[] { ("single", single), ("twin", twin), ("triplet", triplet) }.Where(f => f.Item2 > 0).Select(f => $"{f.Item1}: {f.Item2 / 10m} kg"))}}}\n"),
            Warned((twin > 0 ? twin : 13.5) < (single > 0 ? single : 6) || (triplet > 0 ? triplet : 15) < (twin > 0 ? twin : 13.5))))),

        ("feeds.forage.kind, dry-matter", Gen.Select(Samples.OneOf(("hay", 70, 100), ("haylage", 35, 85), ("silage", 12, 60), ("straw", 70, 100), ("grass", 8, 100)), Gen.Int[5, 100], (kind, percent) => (
            Samples.Text($"feeds:\n  forage: {{kind: {kind.Item1}, dry-matter: {percent} %}}\n"), Warned(percent < kind.Item2 || percent > kind.Item3)))),

        ("feeds.forage.intake, feeds.most-dry-matter", Gen.Select(Gen.Int[3, 50], Gen.Int[15, 25], (intake, most) => (
            Samples.Text($"feeds:\n  forage: {{intake: {intake / 10m} %}}\n  most-dry-matter: {most / 10m} %\n"), Warned(intake > most)))),

        ("feeds.buckets.weight, ewes-per-bucket and days", Gen.Select(Gen.Int[1, 250], Gen.Int[1, 200], Gen.Int[1, 120], (weight, ewes, days) => (
            Samples.Text($"feeds:\n  buckets: {{weight: {weight} kg, ewes-per-bucket: {ewes}, days: {days}}}\n"), Warned((decimal)weight / (ewes * days) is < 0.003m or > 0.5m)))),

        ("housing.lambing, housing.lambing-pens", Gen.Select(Gen.Bool, Gen.Int[0, 2], (indoors, pens) => (
            Samples.Text($"housing:\n  lambing: {(indoors ? "indoors" : "outdoors")}\n  lambing-pens: {pens}\n"), Warned(indoors && pens == 0)))),

        ("housing.turnout-days-after-lambing, days-in-lambing-pen", Gen.Select(Gen.Bool, Gen.Int[0, 14], Gen.Int[1, 14], (indoors, turnout, penned) => (
            Samples.Text($"housing:\n  lambing: {(indoors ? "indoors" : "outdoors")}\n  turnout-days-after-lambing: {turnout}\n  days-in-lambing-pen: {{single: 1, twin: 1, triplet: {penned}}}\n"),
            Warned(indoors && turnout < penned)))),

        ("housing.pens.trough, length and width", Gen.Select(Gen.Int[1, 10], Gen.Int[1, 10], Gen.Int[1, 80], (length, width, trough) => (
            Samples.Text($"housing:\n  pens: [{{name: Bay, length: {length} m, width: {width} m, trough: {trough} m}}]\n"),
            Warned(trough > (2 * (length + width)) + (2 * Math.Max(length, width)))))),

        ("housing.lambing, practice.house-days-before-lambing or jobs.before", Gen.Select(Gen.Bool, Gen.Int[0, 2], (indoors, which) => (
            Samples.Text($"{which switch { 0 => "practice: {house-days-before-lambing: 21}\n", 1 => "jobs: [{title: Dip, before: housing, days: 7}]\n", _ => "jobs: [{title: Dip, before: first-due, days: 7}]\n" }}housing: {{lambing: {(indoors ? "indoors" : "outdoors")}}}\n"),
            Warned(!indoors && which < 2)))),

        ("feeds.forage.kind, bale", Gen.Select(Gen.Bool, Gen.Bool, (grass, bale) => (
            Samples.Text($"feeds:\n  forage: {{kind: {(grass ? "grass" : "hay")}{(bale ? ", bale: 20 kg" : "")}}}\n"), Refused(grass && bale)))),
    ];

    public static TheoryData<string> Names => [.. Pairs.Select(p => p.Keys)];

    [Theory]
    [MemberData(nameof(Names))]
    public void What_disagrees_is_never_silently_settled(string keys)
    {
        var seen = new HashSet<Verdict>();
        Pairs.Single(p => p.Keys == keys).Drawn.Sample(
            drawn =>
            {
                var reading = Samples.ReadText(drawn.Text, Today(drawn.Text));
                var said = reading.Flock is null ? Verdict.Refused : Warned(!reading.Diagnostics.IsEmpty);
                Assert.True(said == drawn.Verdict, $"{drawn.Verdict} expected\n{drawn.Text}\n{DiagnosticRenderer.Render(reading.Source, reading.Diagnostics)}");
                seen.Add(drawn.Verdict);
            },
            iter: 300,
            threads: 1);
        // Both sides must have been tried, or nothing was.
        Assert.Contains(Verdict.Legal, seen);
        Assert.True(seen.Overlaps([Verdict.Warned, Verdict.Refused]));
    }

    private enum Verdict
    {
        Legal,
        Warned,
        Refused,
    }

    private static bool LambsAreOdd(int scan, int alive, int dead)
    {
        var born = alive + Math.Max(0, dead);
        return scan == 0 || born > scan + 1 || (dead >= 0 && (born < scan - 1 || born == 0));
    }

    /// <summary>Half a year before the tup to four months after the last lambs; a year before him and two after, nothing is of this flock file.</summary>
    private static Verdict Diary(LocalDate day) =>
        day < TupIn.PlusYears(-1) || day > TupIn.PlusYears(2) ? Verdict.Refused : Warned(day < TupIn.PlusMonths(-6) || day > TupIn.PlusDays(42 + 147).PlusMonths(4));

    private static Verdict Refused(bool yes) => yes ? Verdict.Refused : Verdict.Legal;

    private static Verdict Warned(bool yes) => yes ? Verdict.Warned : Verdict.Legal;

    private static string Season(string lines) => Samples.Text(season: $"season:\n  {lines}\n");

    private static string InGroups(string group, string? ewes = null) => Samples.Text($"groups:\n  - {group}\n", ewes: ewes ?? Samples.Ewes);

    private static string TwoGroups(string one, string other) =>
        Samples.Text($"groups:\n  - {one}\n  - {other}\n", ewes: "ewes:\n  - {tag: ZZ 1, group: A}\n  - {tag: ZZ 2, group: B}\n");

    private static string Stay(int mating, LocalDate from, LocalDate to) =>
        mating == 0 ? $"tup-in: {Iso(from)}, tup-out: {Iso(to)}" : $"mating: {Matings[mating]}, date: {Iso(from)}";

    private static string Away(params (LocalDate From, LocalDate To)[] spans) =>
        Samples.Text($"keeper-days:\n  away:\n{string.Concat(spans.Select(s => $"    - {{from: {Iso(s.From)}, to: {Iso(s.To)}}}\n"))}");

    /// <param name="holding">Lines of it.</param>
    /// <param name="sitter">With what follows.</param>
    private static string People(string holding, string? sitter = null) => Samples.Text(
        sitter is null ? "" : $"keeper-days:\n  away: [{{from: 2026-12-27, to: 2027-01-02, sitter: {sitter}}}]\n", holding: Samples.Holding + holding);

    private static string Marks(int one, int other) => string.Join(", ", new[] { one, other }.Distinct().Select(d => Iso(TupIn.PlusDays(d))));

    private static string Turn(string tup, int from, int to) => $"{{name: {tup}, in: {Iso(TupIn.PlusDays(from))}, out: {Iso(TupIn.PlusDays(to))}}}";

    private static string Gone(int day) => $"gone: {{on: {Iso(TupIn.PlusDays(day))}, why: died}}";

    /// <param name="day">When it was seen, in days from the day the tup went in.</param>
    private static string Seen(int which, int mark, out int day)
    {
        (var text, day) = which switch
        {
            0 => ($"marks: [{Iso(TupIn.PlusDays(mark))}]", mark),
            1 => ($"lambed: {Iso(TupIn.PlusDays(150))}", 150),
            _ => ($"lost-lambs: {Iso(TupIn.PlusDays(90))}", 90),
        };
        return text;
    }

    private static string AsOf(LocalDate day, string text) => $"# as of {Iso(day)}\n{text}";

    private static string? Today(string text) => text.StartsWith("# as of ", StringComparison.Ordinal) ? text[8..18] : null;

    private static int Between(LocalDate one, LocalDate other) => Period.DaysBetween(one, other);

    private static string Iso(LocalDate day) => LocalDatePattern.Iso.Format(day);
}
