namespace PaperFlock.Sheets.Guide;

/// <param name="InOrder">The steps are done one after another and are numbered.</param>
internal sealed record GuidePart(string Title, bool InOrder, ImmutableArray<string> Steps);

/// <summary>The words of the guide. They say the same as the README, for somebody with a binder and no computer.</summary>
internal static class GuideText
{
    public static ImmutableArray<GuidePart> Front() =>
    [
        new("Putting it together", InOrder: true,
        [
            "Print at actual size (100 %), never \u201cfit to page\u201d, on both sides unless the program said otherwise. Lay a ruler on the bar of the first page: it must be 100 mm.",
            "Punch at the ticks in the margin and file in the order of the register, sheet REG. Tick each sheet off there.",
            "Hang the leaves of the planner one below the other. The file that ends in -wall has them larger, for a printer that takes such paper.",
            "Print the cards on stiff paper. One cut down, one cut across, by the marks on the fronts.",
            "Logs go on a clipboard with a soft pencil. Pencil survives rain; ink runs.",
        ]),
    ];

    public static ImmutableArray<GuidePart> Back() =>
    [
        new("Every day", InOrder: true,
        [
            "Take the page of the log for today. Go at the times it says: they are worked out from the sun.",
            "Count them. All on their feet? All eating? Water, hay. Tick it; write what is odd, which ewe, what you did, whom you told.",
            "Feed by the chart of that group: find the week, then the large figure under morning or evening. It is for all of the group, not for one.",
            "Strike the day off on the planner, and do what stands in its row. Tick the job on JOBS.",
            "The last line of the log is for whoever comes next.",
        ]),
        new("Reading the planner", InOrder: false,
        [
            "A heavy box round a day: something is to be done, and the words beside the week say what. A hatched day: a sitter is in charge.",
            "Below the jobs stands who is most likely to lamb on which day. Sheet DUE has the days each may lamb on, and how many to expect in a night.",
        ]),
        new("Writing on it", InOrder: false,
        [
            "Ring or tick what is printed; write only what is not. A mistake: one line through it, initials, the day.",
            "What you found goes back into the flock file: the keeper types it in with the command enter, in the order of the sheet, and prints again what has changed.",
        ]),
        new("When some leaves are printed again", InOrder: false,
        [
            "Sheet CHG comes on top: go down it, take out, put in, tick. A bar in the margin stands beside each row that changed.",
            "The foot of a leaf says which issue it is and which it replaces. A leaf the register does not list, or with another issue, is out of date: bin it.",
        ]),
        new("When you are not sure", InOrder: false,
        [
            "Ring early. Sheet CALL says whom, in order, and what to say. Nobody minds being woken.",
            "The chart, the card and the plan are paper: they do not see the sheep. A ewe that is thin, dull, down or in trouble overrules them all, and so do the vet, the label and the law.",
            "Anyone who is pregnant or may be keeps away from lambing ewes, new lambs, afterbirth and soiled bedding.",
        ]),
        new("Words you may meet", InOrder: false,
        [
            "Tup: a ram at work. Raddle: the colour on his chest that marks a ewe he has served. Scan: lambs counted before they are born. Dag: to clip dirty wool from round the tail.",
            "On her back, or cast: a heavy ewe that has rolled over and cannot get up; it kills her if nobody comes. Trough group: ewes that are fed together because they carry as many lambs and lamb at about the same time.",
        ]),
    ];
}
