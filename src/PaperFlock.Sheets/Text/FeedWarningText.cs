namespace PaperFlock.Sheets;

/// <summary>What is odd about the rations, in words, each with its numbers and what to change.</summary>
internal static class FeedWarningText
{
    private const int MostNamed = 4;

    public static (string Code, string Message, string Advice) Words(FeedWarning warning, Amounts amounts)
    {
        // On screen lines may break anywhere, and people search for what they see.
        string Kg(decimal kilograms) => amounts.Plain(kilograms).Replace('\u00a0', ' ');
        var (number, against) = (warning.Number, warning.Against);
        return warning.Kind switch
        {
            FeedWarningKind.NoRation => ("FLK140",
                $"no ration can be made for {Names(warning)}: she may have {Amounts.Figure(number * 1000, "0")} g a day and her need asks for {Kg(against)}",
                "check her `weight`, and `intake` and `largest-feed` under feeds; ask the vet"),
            FeedWarningKind.NeedNotMet => ("FLK121",
                $"{warning.Chart}: {Mega(number)} MJ a day is all that can be fed safely, and she needs {Mega(against)}",
                "better forage, or the vet: have it analysed and write its `energy`; more nuts are not printed"),
            FeedWarningKind.CeilingTooLow => ("FLK122",
                $"{warning.Chart}: your figure a lamb gives her {Mega(number)} MJ a day in the last weeks, and she needs {Mega(against)}",
                "raise `per-lamb`, or leave out `per-lamb` and `method`, or find better forage"),
            FeedWarningKind.ForageCannotCarry => ("FLK123",
                $"{warning.Chart}: forage alone gives {Mega(number)} MJ a day, and she needs {Mega(against)}",
                "write a `concentrate`, or have the forage analysed and write its `energy` and `intake`"),
            FeedWarningKind.LevelTooMuch => ("FLK139",
                $"{warning.Chart}: your figure a lamb, level for six weeks, is {Kg(number)} a ewe where the energy sum asks for {Kg(against)}",
                "write `method: stepped`: your figure is then reached in the last weeks and not from the start"),
            FeedWarningKind.OverEnergySum => ("FLK124",
                $"{warning.Chart}: {Kg(number)} a day where the energy sum asks for {Kg(against)}, half as much again or more",
                "lower `per-lamb`, or write `method: stepped`: too much makes big lambs and hard births"),
            FeedWarningKind.UnderEnergySum => ("FLK125",
                $"{warning.Chart}: {Kg(number)} a day where the energy sum asks for {Kg(against)}, under three quarters",
                "raise `per-lamb`, or leave out `per-lamb` and `method`: too little brings twin lamb disease"),
            FeedWarningKind.OverAPoundALamb => ("FLK126",
                $"{warning.Chart}: {Kg(number)} a lamb a day, more than a pound",
                "this forage is poor: have it analysed and write its `energy`, or find better"),
            FeedWarningKind.KilogramForAPound => ("FLK127",
                $"{Kg(number)} a lamb a day is far over the usual pound ({Kg(against)})",
                "write `per-lamb: 1 lb` if pounds were meant"),
            FeedWarningKind.MuchConcentrate => ("FLK128",
                $"{warning.Chart}: {Amounts.Figure(number * 100, "0")} % of what she eats is concentrate, and more than 60 % is never printed",
                "better forage lets her do with less: have it analysed"),
            FeedWarningKind.ManyFeeds => ("FLK129",
                $"{warning.Chart}: {Amounts.Figure(number, "0")} feeds a day",
                "raise `largest-feed`, 0.5 kg at most, or find better forage"),
            FeedWarningKind.ShortOfProtein => ("FLK130",
                $"{warning.Chart}: the ration gives {Amounts.Figure(number, "0")} g of protein a day and she needs {Amounts.Figure(against, "0")}",
                "ask the feed merchant or vet about a concentrate with more, and write its `protein`"),
            FeedWarningKind.LargestFeedHeld => ("FLK131",
                $"a feed of {Kg(number)} is too much at one time: {Kg(against)} is printed at most",
                "write `largest-feed: 0.5 kg` or less"),
            FeedWarningKind.LambedHeld => ("FLK132",
                $"{Kg(against)} a day with lambs at foot is more than the lightest of them may have: {Kg(number)} is printed",
                "lower the figure under `lambed`, and check the weights of your ewes"),
            FeedWarningKind.Joined when number < against => ("FLK133",
                $"{Names(warning)} would eat alone, so she is fed by {warning.Chart}: {Kg(number)} a day at the worst where her own kind would have {Kg(against)}",
                "watch her condition; feed her apart only where others can see her"),
            FeedWarningKind.Joined => ("FLK134",
                $"{Names(warning)} would eat alone, so she is fed by {warning.Chart}: {Kg(number)} a day where her own kind would have {Kg(against)}",
                "watch that she does not get fat"),
            FeedWarningKind.Shared => ("FLK135",
                $"{warning.Chart}: {Names(warning)} {(warning.Ewes.Length == 1 ? "shares a trough with others and gets" : "share a trough and get")} {Kg(number)} a day at the worst where {FeedText.Kind(warning.Of ?? FeedKind.Mixed).ToLowerInvariant()} would have {Kg(against)}",
                "part them: another pen, a longer `trough`, or `parted: by-lambs`"),
            FeedWarningKind.ScoopTooLarge => ("FLK136",
                $"{warning.Chart}: half a scoop is {Kg(against)} and the smallest feed {Kg(number)}",
                "a smaller `scoop`, or a spring balance and `scales: yes`"),
            FeedWarningKind.ScoopOverTrough => ("FLK141",
                $"{warning.Chart}: half a scoop is {Kg(against)}, and all who eat there get {Kg(number)} at most at one feed",
                "a smaller `scoop`, or check the figure: it is what one level scoop holds"),
            FeedWarningKind.ScoopInexact => ("FLK137",
                $"{warning.Chart}: in half scoops {Kg(against)} becomes {Kg(number)}, more than a tenth out",
                "a smaller `scoop`, or a spring balance and `scales: yes`"),
            _ => ("FLK138",
                $"{warning.Chart}: no weight for {Names(warning)}, so {amounts.Weight(number).Replace('\u00a0', ' ')} is taken",
                "write her `weight`, or a `mature-weight` under breeds: what is safe to feed goes by it"),
        };
    }

    private static string Names(FeedWarning warning)
    {
        var named = warning.Ewes.Take(MostNamed).Select(e => e.CallName).ToList();
        if (warning.Ewes.Length > MostNamed)
        {
            named.Add(English.CountLoose(warning.Ewes.Length - MostNamed, "other", "others"));
        }

        return English.List(named);
    }

    private static string Mega(decimal energy) => Amounts.Figure(energy, "0.0");
}
