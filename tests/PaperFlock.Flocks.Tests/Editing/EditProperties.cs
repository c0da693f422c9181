using System.Text.RegularExpressions;
using CsCheck;
using NodaTime.Text;
using PaperFlock.Diagnostics;
using PaperFlock.Flocks.Editing;

namespace PaperFlock.Flocks.Tests.Editing;

/// <summary>Random changes of random layouts: the change is made, and nothing else is.</summary>
public sealed class EditProperties
{
    private static readonly string[] Days = ["2026-08-12", "2026-08-14", "2026-08-21", "2026-09-01", "2026-09-10"];

    private static readonly string[] Notes = ["Quiet", "Needs a quiet corner", "it's \"Bold\", she said", "note: with a colon", "see #4 [left] {right}"];

    [Fact]
    public void One_change_changes_one_thing() => Gen.Int[0, int.MaxValue].Sample(OneChange, iter: 2000, threads: 2);

    [Fact]
    public void Many_changes_in_a_row_leave_every_comment() => Gen.Int[0, int.MaxValue].Sample(ManyChanges, iter: 60, threads: 2);

    private static void OneChange(int seed)
    {
        var random = new Random(seed);
        var file = Open(new RandomLayout(seed).Write(Ewes(random)));
        var (change, expected) = AnyChange(random, file.Flock, inOrder: true);
        var edit = file.Apply(change);
        Assert.Equal("", Errors(edit));
        var changed = edit.File!;

        Assert.Equal(Dump.Of(expected), Dump.Of(changed.Flock));
        Assert.Equal(Comments(file.Text), Comments(changed.Text));
        Assert.Equal(Breaks(file.Text), Breaks(changed.Text));
        Assert.Equal(file.ToBytes()[0], changed.ToBytes()[0]);
        var (gone, come) = LinesChanged(file.Text, changed.Text);
        if (change is AddToList { Key: "ewes" } added)
        {
            // The line of the one before may get a comma.
            Assert.InRange(gone, 0, 1);
            Assert.InRange(come, 1, 1 + (8 * added.Items.Length));
        }
        else
        {
            // A note may stand over as many lines as it has words, a list with its brackets over three, another value on the line after its key.
            Assert.InRange(gone, 0, change is SetKey { Key: "note" } or ClearKey { Key: "note" } ? 9 : change is RemoveFromList ? 3 : 2);
            Assert.InRange(come, 0, 1);
        }
    }

    private static void ManyChanges(int seed)
    {
        var random = new Random(seed);
        var file = Open(new RandomLayout(seed).Write(Ewes(random)));
        var comments = Comments(file.Text);
        for (var i = 0; i < 20; i++)
        {
            var (change, expected) = AnyChange(random, file.Flock, inOrder: false);
            var edit = file.Apply(change);
            Assert.Equal("", Errors(edit));
            file = edit.File!;
            Assert.Equal(Dump.Of(expected), Dump.Of(file.Flock));
        }

        Assert.Equal(comments, Comments(file.Text));
    }

    private static List<(string Key, object Value)[]> Ewes(Random random) =>
        [.. Enumerable.Range(0, random.Next(1, 5)).Select(i => Ewe(random, i))];

    private static (string Key, object Value)[] Ewe(Random random, int i)
    {
        List<(string Key, object Value)> keys = [("tag", $"ZZ 0123456 0010{i.ToString(CultureInfo.InvariantCulture)}")];
        Maybe("name", $"Ewe {i.ToString(CultureInfo.InvariantCulture)}");
        Maybe("teeth", "sound");
        Maybe("scan", random.Next(0, 5).ToString(CultureInfo.InvariantCulture));
        Maybe("marks", Days.Where(_ => random.Next(2) == 0).ToArray());
        Maybe("condition", "3.5");
        Maybe("lambed", "");
        Maybe("note", Notes[random.Next(Notes.Length)]);
        var array = keys.ToArray();
        if (random.Next(3) == 0)
        {
            random.Shuffle(array);
        }

        return array;

        void Maybe(string key, object value)
        {
            if (random.Next(2) == 0)
            {
                keys.Add((key, value is string && random.Next(6) == 0 ? "" : value));
            }
        }
    }

    /// <summary>A change, and the flock it should make of this one.</summary>
    /// <param name="inOrder">The marks stand in the file in the order of their days, so that their places are known.</param>
    private static (FlockChange Change, Flock Expected) AnyChange(Random random, Flock flock, bool inOrder)
    {
        var i = random.Next(flock.Ewes.Length);
        var (ewe, place) = (flock.Ewes[i], FlockPlace.Ewe(i));
        var count = random.Next(0, 6);
        var free = Days.Where(d => !ewe.Marks.Contains(LocalDatePattern.Iso.Parse(d).Value)).ToArray();
        var note = Notes[random.Next(Notes.Length)];
        switch (random.Next(10))
        {
            case 0:
                return (new SetKey(place, "scan", FlockValue.Word(count.ToString(CultureInfo.InvariantCulture))), With(ewe with { Scan = count }));
            case 1:
                return (new SetKey(place, "lambed", FlockValue.Word("2027-01-09")), With(ewe with { Lambed = new(2027, 1, 9) }));
            case 2:
                return (new SetKey(place, "note", FlockValue.Text(note)), With(ewe with { Note = note }));
            case 3:
                return (new SetKey(place, "toes", FlockValue.Word("lame")), With(ewe with { Toes = Toes.Lame }));
            case 4:
                return (new ClearKey(place, "note"), With(ewe with { Note = null }));
            case 5:
                return (new ClearKey(place, "scan"), With(ewe with { Scan = null }));
            case 6 when free.Length > 0:
                var day = free[random.Next(free.Length)];
                return (new AddToList(place, "marks", FlockValue.Word(day)), With(ewe with { Marks = [.. ewe.Marks.Append(LocalDatePattern.Iso.Parse(day).Value).Order()] }));
            case 7 when inOrder && !ewe.Marks.IsEmpty:
                var at = random.Next(ewe.Marks.Length);
                return (new RemoveFromList(place, "marks", at), With(ewe with { Marks = ewe.Marks.RemoveAt(at) }));
            case 8:
                return (new SetKey(place, "condition", FlockValue.Word("2.5")), With(ewe with { Condition = 2.5m }));
            default:
                var tag = $"00{random.Next(100, 1_000_000).ToString(CultureInfo.InvariantCulture)}";
                return flock.Ewes.Any(e => e.Tag == tag)
                    ? (new ClearKey(place, "teats"), flock)
                    : (AddToList.Ewes(FlockValue.Section(("tag", FlockValue.Text(tag)), ("note", FlockValue.Text(note)), ("scan", FlockValue.Word("1")))),
                        flock with { Ewes = flock.Ewes.Add(New(flock, tag, note)) });
        }

        Flock With(Ewe changed) => flock with { Ewes = flock.Ewes.SetItem(i, changed) };
    }

    private static Ewe New(Flock flock, string tag, string note) =>
        flock.Ewes[0] with
        {
            Tag = tag,
            Name = null,
            Breed = null,
            Born = null,
            Weight = null,
            Condition = null,
            Teeth = Teeth.Unchecked,
            Toes = Toes.Unchecked,
            Teats = Teats.Unchecked,
            Marks = [],
            Scan = 1,
            ScanStage = null,
            Lambed = null,
            ToTup = null,
            Note = note,
        };

    private static string[] Comments(string text) => [.. Regex.Matches(text, "# c[0-9]+").Select(m => m.Value)];

    private static string[] Breaks(string text) => [.. Regex.Matches(text, "\r\n|\n|\r").Select(m => m.Value).Distinct()];

    /// <summary>How many lines of each text, empty ones aside, are left when those alike at the beginning and at the end are taken off.</summary>
    private static (int Gone, int Come) LinesChanged(string before, string after)
    {
        var (a, b) = (before.Split(["\r\n", "\n", "\r"], StringSplitOptions.None), after.Split(["\r\n", "\n", "\r"], StringSplitOptions.None));
        var head = a.Zip(b).TakeWhile(p => p.First == p.Second).Count();
        var tail = a.Skip(head).Reverse().Zip(b.Skip(head).Reverse()).TakeWhile(p => p.First == p.Second).Count();
        return (Written(a[head..^tail]), Written(b[head..^tail]));

        static int Written(string[] lines) => lines.Count(l => l.Trim().Length > 0);
    }

    private static string Errors(FlockEdit edit) =>
        DiagnosticRenderer.Render(edit.Source, [.. edit.Diagnostics.Where(d => d.Severity == Severity.Error)]);

    private static FlockFile Open(byte[] bytes)
    {
        var file = FlockFile.Open("flock.yaml", bytes, out var reading);
        Assert.True(file is not null, DiagnosticRenderer.Render(reading.Source, reading.Diagnostics) + "\n" + reading.Source.Text);
        return file;
    }
}
