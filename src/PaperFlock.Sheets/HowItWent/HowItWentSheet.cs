namespace PaperFlock.Sheets.HowItWent;

/// <summary>When the last has lambed: what came of the season, how good the dates were, and who should not go to the tup again.</summary>
internal static class HowItWentSheet
{
    public static readonly SheetDefinition Definition = new("year", "YEAR", SheetUse.Binder)
    {
        Lives = "binder",
        Purpose = "how the season went; who is not to go to the tup again, and why",
        Make = Make,
    };

    /// <summary>More are counted and not named: the sheet has one side.</summary>
    private const int MostNamed = 12;

    private static ImmutableArray<Sheet> Make(SheetContext context)
    {
        var outcome = context.Plan.Outcome;
        if (!outcome.IsOver)
        {
            return [];
        }

        var body = Block.Column(
            9,
            [
                Figures(context, outcome),
                Block.BoldThen("The dates.", Forecast(outcome), TypeScale.Body),
                .. Others(outcome),
                .. outcome.NotAgain.IsEmpty ? Array.Empty<Element>() : [NotAgain(context, outcome.NotAgain)],
                Block.Notes(context.WriteIn.TableRow),
            ]);
        return [Binder.Upright(context, Definition, "How the season went", "", body)];
    }

    private static Table Figures(SheetContext context, SeasonOutcome outcome)
    {
        (string What, string Number)[] figures =
        [
            ("ewes to lamb", Number(outcome.ToLamb)),
            ("lambed", Number(outcome.Lambings.Length)),
            ("lost their lambs", Number(outcome.LostLambs.Length)),
            ("scanned empty", Number(outcome.Empty.Length)),
            ("gone", Number(outcome.Gone.Length)),
            ("lambs scanned", Number(outcome.LambsScanned)),
            ("born alive", Number(outcome.BornAlive)),
            ("born dead", Number(outcome.BornDead)),
            ("helped by hand", Number(outcome.Helped(LambingHelp.Hand))),
            ("helped by the vet", Number(outcome.Helped(LambingHelp.Vet))),
            ("lambs reared", ""),
            ("lost after birth", ""),
        ];
        return new Table(
            [Track.Share(2), Track.Share(), Track.Share(2), Track.Share()],
            [],
            [.. figures.Chunk(2).Select(pair => new TableRow([.. pair.SelectMany(f => new[] { Block.Cell(f.What, TypeScale.Body) with { Scope = HeaderScope.Row }, Figure(f.Number) })], context.WriteIn.TableRow))])
        { Name = "what came of it" };
    }

    /// <summary>Blank where only the keeper knows.</summary>
    private static TableCell Figure(string number) => number.Length == 0 ? Block.Blank() : Block.Cell(number, TypeScale.Cap(Face.TextBold, 5), TextAlign.Centre);

    private static string Forecast(SeasonOutcome outcome)
    {
        var (lambed, inside) = (outcome.Lambings.Length, outcome.InsideSpan);
        var outside = outcome.Lambings.Where(l => !l.IsInsideSpan).Select(l => $"{l.Ewe.Ewe.CallName} {English.CountLoose(Math.Abs(l.DaysLate), "day", "days")} {(l.DaysLate < 0 ? "early" : "late")}").ToArray();
        return Block.Sentences(
            $"{inside} of {lambed} lambed in the days that 9 in 10 should; the likely day was out by {Amounts.Figure(Math.Round((decimal)outcome.MeanDaysOut!.Value, 1), "0.#")} days on average.",
            outside.Length == 0 ? "" : English.Sentence($"outside: {Named(outside)}"),
            outcome.Uncounted == 0 ? "" : $"Of {English.CountLoose(outcome.Uncounted, "lambing", "lambings")} nobody wrote down the lambs.");
    }

    private static IEnumerable<Element> Others(SeasonOutcome outcome)
    {
        (string What, string[] Who)[] lists =
        [
            ("Lost their lambs:", [.. outcome.LostLambs.Select(e => $"{e.Ewe.CallName}, {DateText.Long(e.Ewe.LostLambs!.Value)}")]),
            ("Gone:", [.. outcome.Gone.Select(e => $"{e.Ewe.CallName}, {LossText.Why(e.Ewe.Gone!.Why)} {DateText.Long(e.Ewe.Gone.On)}")]),
            ("Scanned empty:", [.. outcome.Empty.Select(e => e.Ewe.CallName)]),
            ("Lambs by tup:", [.. BySire(outcome)]),
        ];
        return lists.Where(l => l.Who.Length > 0).Select(l => Block.BoldThen(l.What, English.Sentence(Named(l.Who)), TypeScale.Body));
    }

    /// <summary>Only where there is more than one; who may be of either is told apart.</summary>
    private static IEnumerable<string> BySire(SeasonOutcome outcome)
    {
        var sires = outcome.Lambings.Where(l => !l.Ewe.Sires.IsEmpty).GroupBy(l => l.Ewe.CertainSire ?? "of either").ToArray();
        return sires.Length < 2 ? [] : sires.Select(g => $"{g.Key} {g.Sum(l => l.Ewe.Ewe.BornAlive ?? 0)} alive of {English.CountLoose(g.Count(), "ewe", "ewes")}");
    }

    private static string Named(string[] names) =>
        string.Join("; ", names.Take(MostNamed)) + (names.Length > MostNamed ? $"; and {names.Length - MostNamed} more" : "");

    private static Column NotAgain(SheetContext context, ImmutableArray<EwePlan> ewes) => Block.Column(
        4,
        Block.Heading("Not to the tup again"),
        new Table(
            [Track.Fixed(Mm(60)), Track.Share(), Track.Fixed(Mm(42))],
            [Block.Heads(2..3, "ewe", "why", "circle")],
            [
                .. ewes.Take(MostNamed).Select(e => new TableRow(
                    [Block.Cell(Who.Of(e)), Block.Cell(TupAdviceText.Reason(e), TypeScale.Body), Block.Cell("keep   cull   sell", TypeScale.Body, TextAlign.Centre)],
                    context.WriteIn.TableRow,
                    About: RowKey.Of(e.Ewe))),
            ])
        { Name = "not to the tup again", RowHeaders = true },
        Block.Text(ewes.Length > MostNamed ? $"And {ewes.Length - MostNamed} more, in the flock file." : "What was found is from the flock file: look at each again before she goes.", TypeScale.Label));

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
