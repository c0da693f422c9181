using PaperFlock.Languages;
using PaperFlock.Layout;
using PaperFlock.Layout.Elements;
using PaperFlock.Sheets.House;
using static PaperFlock.Layout.Units;

namespace PaperFlock.Sheets.CallSheet;

/// <summary>What is seen, what to do at once, whom to ring, how soon: worst first. No medical limits: those are the vet's to write in.</summary>
internal static class SignTable
{
    // For the translator: A speaker who knows the work must check this before it is used: people and animals are hurt if it is wrong.
    private static (string See, string Do, string Ring, bool Now, string Soon)[] Signs(Language language) =>
    [
        (language.Say("Bag out early, or bleeding"), language.Say("Keep her quiet and alone. Do not pull."), language.Say("Vet"), true, language.Say("NOW")),
        (language.Say("Something hanging from her that is not a lamb"), language.Say("Pen her, keep it clean and her quiet."), language.Say("Vet"), true, language.Say("NOW")),
        (language.Say("Straining, and nothing comes"), language.Say("Note the time. Look every 10 minutes, do not crowd her."), language.Say("Vet, then keeper"), true, language.Say("NOW, past the vet\u2019s limit below")),
        (language.Say("Down, and will not rise"), language.Say("Prop her on her brisket, out of the wind. Nothing by mouth."), language.Say("Vet"), true, language.Say("NOW")),
        (language.Say("On her back"), language.Say("Roll her up, hold her till she stands, watch her walk off."), language.Say("Keeper"), false, language.Say("once she is up; vet if she goes down again")),
        (language.Say("A cold, limp lamb"), language.Say("Out of the wind, dry it. Ring before you feed it."), language.Say("Vet or keeper"), true, language.Say("NOW")),
        (language.Say("Off her feed, dull, standing apart"), language.Say("Pen her with water and hay. Take her name."), language.Say("Vet"), false, language.Say("within the hour")),
        (language.Say("Very thin"), language.Say("Write down who. Do not change the feed yourself."), language.Say("Keeper"), false, language.Say("today")),
        (language.Say("Anything else that worries you"), language.Say("Write down what you see and when."), language.Say("Keeper"), false, language.Say("today; vet if it gets worse")),
    ];

    private static readonly TextStyle Plain = new(Face.Text, 13);
    private static readonly TextStyle Bold = new(Face.TextBold, 13);

    public static Element Of(Language language) => Ink.Column(
        4,
        Ink.Text(language.Say("If you see this"), Fount.Heading),
        new Table(
            [Track.Share(1.05), Track.Share(1.4), Track.Fixed(Mm(24)), Track.Share(0.85)],
            [new TableRow([Ink.Cell(language.Say("see"), Fount.Label), Ink.Cell(language.Say("do now"), Fount.Label), Ink.Cell(language.Say("ring"), Fount.Label), Ink.Cell(language.Say("how soon"), Fount.Label)])],
            [
                .. Signs(language).Select(s => new TableRow(
                    [Ink.Cell(s.See, Bold), Ink.Cell(s.Do, Plain), Ink.Cell(s.Ring, Bold), Ink.Cell(s.Soon, s.Now ? Bold : Plain)],
                    Layout.Units.Mm(16))),
            ])
        { Name = "signs" });
}
