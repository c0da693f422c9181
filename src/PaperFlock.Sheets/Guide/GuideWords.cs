using System.Collections.Immutable;
using PaperFlock.Languages;

namespace PaperFlock.Sheets.Guide;

/// <param name="InOrder">The steps are done one after another and are numbered.</param>
internal sealed record GuidePart(string Title, bool InOrder, ImmutableArray<string> Steps);

/// <summary>The words of the guide. They say the same as the README, for somebody with a binder and no computer.</summary>
internal static class GuideWords
{
    public static ImmutableArray<GuidePart> Front(Language language) =>
    [
        new(language.Say("Putting it together"), InOrder: true,
        [
            language.Say("Print at actual size (100 %), never \u201cfit to page\u201d, on both sides unless the program said otherwise. Lay a ruler on the bar of the first page: it must be 100 mm."),
            language.Say("Punch at the ticks in the margin and file in the order of the register, sheet REG. Tick each sheet off there."),
            language.Say("Glue the planner from its tiles: leave the first whole, cut the others at the marks, lay them over the strip of their neighbour. Or have it printed whole from the file that ends in -wall."),
            language.Say("Print the cards on stiff paper. One cut down, one cut across, by the marks on the fronts."),
            language.Say("Logs go on a clipboard with a soft pencil. Pencil survives rain; ink runs."),
        ]),
    ];

    public static ImmutableArray<(string Code, string Lives, string Use)> Sheets(Language language) =>
    [
        ("REG", language.Say("binder, first"), language.Say("which sheets there are and which issue of each is right")),
        ("HAND", language.Say("binder"), language.Say("read through together before the keeper goes, read back, signed by both")),
        ("CALL", language.Say("by the telephone"), language.Say("where this is, whom to ring, what to say; what is urgent and what is not")),
        ("WALL", language.Say("wall"), language.Say("the season: what is done on which day, rounds a day, feed, when lambs are due")),
        ("JOBS", language.Say("binder"), language.Say("every job, why it is on that day, the last day it is any use")),
        ("TTT", language.Say("binder"), language.Say("before the tup: teeth, toes, teats; ring what you find")),
        ("RADL", language.Say("clipboard"), language.Say("which raddle colour from which day; the day each ewe was marked")),
        ("SCAN", language.Say("clipboard"), language.Say("at the scanner\u2019s crate: ring the lambs counted")),
        ("FEED", language.Say("over the bins"), language.Say("what goes into each trough at each feed, for all of the group together")),
        ("STOR", language.Say("binder"), language.Say("what to have in, and by when to order it; the lambing kit")),
        ("HOUS", language.Say("binder"), language.Say("who goes in which pen, and whether there is room")),
        ("LOG", language.Say("clipboard"), language.Say("each round: when it should be, when it was, what was found, what is left for tomorrow")),
        ("LAMB", language.Say("lambing shed"), language.Say("a row a ewe in the order they are expected")),
        ("CARD", language.Say("pocket, box"), language.Say("a ewe: who she is, when she is due, what is done to her; her lambing on the back")),
        ("SAFE", language.Say("binder"), language.Say("what can hurt people and sheep, and what only the vet decides")),
    ];

    // For the translator: A speaker who knows the work must check this before it is used: people and animals are hurt if it is wrong.
    public static ImmutableArray<GuidePart> Back(Language language) =>
    [
        new(language.Say("Every day"), InOrder: true,
        [
            language.Say("Take the page of the log for today. Go at the times it says: they are worked out from the sun."),
            language.Say("Count them. All on their feet? All eating? Water, hay. Tick it; write what is odd, which ewe, what you did, whom you told."),
            language.Say("Feed by the chart of that group: find the week, then the large figure under morning or evening. It is for all of the group, not for one."),
            language.Say("Strike the day off on the planner, and do what stands in its row. Tick the job on JOBS."),
            language.Say("The last line of the log is for whoever comes next."),
        ]),
        new(language.Say("Reading the planner"), InOrder: false,
        [
            language.Say("A heavy box round a day: something is done, and the words beside the week say what. A band over a day: a sitter has the pack."),
            language.Say("A hatched bar: as many ewes as may be expected to lamb that day. The thin line beside it runs from a number that is too low one time in ten to one that is too high one time in ten."),
        ]),
        new(language.Say("Writing on it"), InOrder: false,
        [
            language.Say("Ring or tick what is printed; write only what is not. A mistake: one line through it, initials, the day."),
            language.Say("What you found goes back into the flock file: the keeper types it in with the command enter, in the order of the sheet, and prints again what has changed."),
        ]),
        new(language.Say("When some leaves are printed again"), InOrder: false,
        [
            language.Say("Sheet CHG comes on top: go down it, take out, put in, tick. A bar in the margin stands beside each row that changed."),
            language.Say("The foot of a leaf says which issue it is and which it replaces. A leaf the register does not list, or with another issue, is out of date: bin it."),
        ]),
        new(language.Say("When you are not sure"), InOrder: false,
        [
            language.Say("Ring early. Sheet CALL says whom, in order, and what to say. Nobody minds being woken."),
            language.Say("The chart, the card and the plan are paper: they do not see the sheep. A ewe that is thin, dull, down or in trouble overrules them all, and so do the vet, the label and the law."),
            language.Say("Anyone who is pregnant or may be keeps away from lambing ewes, new lambs, afterbirth and soiled bedding."),
        ]),
        new(language.Say("Words you may meet"), InOrder: false,
        [
            language.Say("Tup: a ram at work. Raddle: the colour on his chest that marks a ewe he has served. Scan: lambs counted before they are born. Dag: to clip dirty wool from round the tail."),
            language.Say("On her back, or cast: a heavy ewe that has rolled over and cannot get up; it kills her if nobody comes. Trough group: ewes that are fed together because they carry as many lambs and lamb at about the same time."),
        ]),
    ];
}
