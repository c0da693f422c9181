using PaperFlock.Sheets.Tests.PaperRules;

namespace PaperFlock.Sheets.Tests.WorstCases;

/// <summary>
/// Units, papers, planners, gloves, bindings and ways to turn the sheet together. Not every combination of the 1440:
/// every pair of planner with paper, and of each other setting with the paper and with duplex, stands in some line.
/// </summary>
public sealed class PrintSettingsTests
{
    private static readonly string[] Units = ["metric", "imperial", "both"];
    private static readonly string[] Bindings = ["two-hole", "four-hole", "three-hole", "none"];
    private static readonly string[] Turns = ["long-edge", "short-edge", "single-sided"];
    private static readonly string[] Papers = ["A4", "Letter"];
    private static readonly string[] Planners = ["A4", "A3", "A2", "Letter", "Tabloid"];

    public static TheoryData<string> Settings
    {
        get
        {
            var data = new TheoryData<string>();
            var n = 0;
            foreach (var paper in Papers)
            {
                foreach (var planner in Planners)
                {
                    foreach (var turn in Turns)
                    {
                        // Strides prime to the numbers of choices walk through their pairs.
                        data.Add($"paper: {paper}\nplanner: {planner}\nduplex: {turn}\nunits: {Units[(n + (n / 3)) % 3]}\nbinding: {Bindings[(n + (n / 4)) % 4]}\ngloves: {(n % 2 == 0 ? "true" : "false")}\nweek-starts: {(n % 5 == 0 ? "Sunday" : "Monday")}");
                        n++;
                    }
                }
            }

            return data;
        }
    }

    [Theory]
    [MemberData(nameof(Settings))]
    public void Every_way_of_printing_keeps_every_rule(string settings)
    {
        var flock = new FlockText
        {
            Print = settings,
            Groups = ["{name: Orchard, tup: Bramley}", "{name: Paddock, tup-in: 2026-08-24}"],
            Away = ["{from: 2026-12-27, to: 2027-01-02, sitter: Tom Birkett, phone: 01632 960 303}"],
            Contacts = ["{role: Vet, name: Fell Gate Vets, phone: 01632 960 202}"],
            Pens = ["{name: North bay, length: 6 m, width: 4.8 m, trough: 9 m}"],
            Housing = "lambing-pens: 2",
            Ewes = FlockText.Many(7, n => $"group: {(n % 2 == 0 ? "Orchard" : "Paddock")}, scan: {n % 4}, weight: {60 + n} kg, note: \"Number {n} is not to be hurried at the gate\""),
        };
        PaperCheck.Keeps(flock.On(new(2026, 12, 20)));
    }
}
