namespace PaperFlock.Flocks.Reading.Sections;

/// <summary>The ewes, one by one, and what must be true between them.</summary>
/// <param name="today">Null: nothing is held against the calendar.</param>
internal sealed class EwesReader(SeasonDraft season, GroupsDraft groups, ImmutableArray<BreedDraft> breeds, LocalDate? today, DiagnosticBag bag)
{
    /// <summary>Years; a ewe is seldom kept for lambs past ten. Common practice, no source.</summary>
    private const int OldAge = 16;

    /// <summary>By the year alone, as if born on New Year's Day: ewe lambs that go to the tup at all do so in autumn, those of spring at seven months. Common practice, no source.</summary>
    private const int YoungestMonths = 8;

    private readonly Dictionary<string, (int Line, bool IsLamb)> _tags = new(StringComparer.Ordinal);
    private readonly Dictionary<string, int> _names = new(StringComparer.OrdinalIgnoreCase);
    private readonly List<WeighedEwe> _weighed = [];

    public ImmutableArray<Ewe> Read(Section top)
    {
        if (top.Require("ewes") is not { } field || field.AsItems() is not { } items)
        {
            return [];
        }

        bag.Add(items.Count == 0 ? FlockMessages.NoEwes(field.KeySpan) : null);
        ImmutableArray<Ewe> ewes = [.. items.Select(i => i.AsSection()).OfType<Section>().Select(Ewe).OfType<Ewe>()];
        WeightCheck.Of(_weighed, breeds);
        if (ewes.Length == items.Count && groups.AreListed)
        {
            var used = ewes.Select(e => e.Group).ToHashSet(StringComparer.Ordinal);
            bag.AddRange(groups.Groups.Where(g => g.Made is not null && !used.Contains(g.Name)).Select(g => FlockMessages.EmptyGroup(g.Span, g.Name)));
        }

        return ewes;
    }

    private Ewe? Ewe(Section ewe)
    {
        var tag = Tag(ewe.Require("tag"), isLamb: false);
        var name = Name(ewe);
        var breed = Breed(ewe);
        var group = groups.Of(ewe, name ?? (ewe.Find("tag")?.Value as Scalar)?.Text ?? "this ewe");
        var gestation = breeds.FirstOrDefault(b => b.Made.Name == breed)?.Made.GestationDays ?? season.GestationDays;
        var mating = MatingRecord.Read(ewe, group?.Made, gestation, today);
        var losses = LossesReader.Read(ewe, mating, group?.Made, gestation, today);
        var read = new Ewe(tag ?? "?", group?.Name ?? "", ewe.Find("tag")?.Span ?? ewe.Span)
        {
            Name = name,
            Breed = breed,
            Born = Born(ewe, group?.Made, mating.ToTup),
            Weight = ewe.Find("weight")?.AsMass(),
            Condition = ewe.Find("condition")?.AsNumber(),
            Teeth = ewe.Find("teeth")?.AsChoice<Teeth>() ?? Teeth.Unchecked,
            Toes = ewe.Find("toes")?.AsChoice<Toes>() ?? Toes.Unchecked,
            Teats = ewe.Find("teats")?.AsChoice<Teats>() ?? Teats.Unchecked,
            History = [.. (ewe.Find("history")?.AsItems() ?? []).Select(i => i.AsChoice<PastTrouble>()).OfType<PastTrouble>().Distinct().Order()],
            Was = Was(ewe.Below("was")),
            Marks = mating.Marks,
            Scan = mating.Scan,
            ScanStage = mating.ScanStage,
            Lambed = mating.Lambed,
            Lambing = LambingReader.Read(ewe, mating.Scan),
            Lambs = [.. Lambs(ewe)],
            LostLambs = losses.LostLambs,
            Gone = losses.Gone,
            ToTup = mating.ToTup,
            Note = ewe.Find("note")?.AsNote(),
        };
        if (read.Weight is { } weight)
        {
            _weighed.Add(new(breed, weight.Kilograms, WeightCheck.IsGrowing(read.Born, group?.Made?.TupIn ?? season.TupIn), ewe.Find("weight")!));
        }

        return tag is not null && group is not null ? read : null;
    }

    private static LastSeason? Was(Section was)
    {
        var (scan, alive) = (was.Find("scan")?.AsWhole(), was.Find("lambs-alive")?.AsWhole());
        was.Bag.Add(alive > 0 && (scan == 0 || alive > scan + 1) ? FlockMessages.LambsDoNotAddUp(was.Find("lambs-alive")!.Span, alive.Value, scan!.Value) : null);
        return (scan ?? alive) is not null ? new(scan, alive) : null;
    }

    private IEnumerable<Lamb> Lambs(Section ewe)
    {
        foreach (var entry in ewe.ListBelow("lambs"))
        {
            var (sex, tag, weight) = (entry.Require("sex")?.AsChoice<LambSex>(), Tag(entry.Find("tag"), isLamb: true), entry.Find("weight")?.AsMass());
            WeightCheck.Lamb(entry.Find("weight"), weight);
            if (sex is { } known)
            {
                yield return new Lamb(known, tag, weight);
            }
        }
    }

    /// <summary>A tag as typed, of a ewe or of a lamb: no two of either are alike.</summary>
    private string? Tag(Field? at, bool isLamb)
    {
        if (at is not { } field || field.AsText() is not { } tag)
        {
            return null;
        }

        bag.Add(tag.Any(char.IsLetterOrDigit) ? null : FlockMessages.NothingToRead(field.Span, tag));
        var (line, onLamb) = _tags.GetValueOrDefault(TagKey.Of(tag));
        return _tags.TryAdd(TagKey.Of(tag), (field.Span.Line, isLamb)) ? tag : field.Refuse<string>(FlockMessages.DuplicateTag(field.Span, tag, line, onLamb));
    }

    private string? Name(Section ewe)
    {
        if (ewe.Find("name") is not { } field || field.AsText() is not { } name)
        {
            return null;
        }

        bag.Add(_names.TryAdd(name, field.Span.Line) ? null : FlockMessages.SameName(field.Span, name, _names[name]));
        return name;
    }

    /// <summary>A breed need not be listed, but a slip of a listed one would quietly lose its figures.</summary>
    private string? Breed(Section ewe) =>
        ewe.Find("breed") is not { } field || field.AsText() is not { } breed ? null
        : breeds.Any(b => b.Made.Name == breed) || NearestWord.Find(breed, breeds.Select(b => b.Made.Name)) is not { } nearest ? breed
        : field.Refuse<string>(FlockMessages.BreedSlip(field.Span, breed, nearest));

    private int? Born(Section ewe, TuppingGroup? group, bool? toTup)
    {
        var field = ewe.Find("born");
        var born = field?.AsWhole();
        if (born is not { } year || (group?.TupIn ?? season.TupIn) is not { } tupIn)
        {
            return born;
        }

        // The oldest sheep on record lived into their twenties, and a ewe lamb of five months may take the tup; both from memory, no source.
        if (new LocalDate(Math.Max(1, year), 1, 1) > tupIn.PlusMonths(-5) || year < tupIn.Year - 25)
        {
            return field!.Refuse<int?>(FlockMessages.BornImpossible(field.Span, year, tupIn.Year));
        }

        var earliest = new LocalDate(year, 1, 1);
        bag.Add(
            earliest > tupIn.PlusYears(-1).PlusMonths(-5) && (ewe.Find("was") ?? ewe.Find("history")) is { Value: not Sequence { Items.IsEmpty: true } } past
                ? FlockMessages.TooYoungForAPast(past.KeySpan, past.Name, year)
            : toTup is false ? null
            : earliest > tupIn.PlusMonths(-YoungestMonths) ? FlockMessages.AgeUnlikely(field!.Span, year, years: null)
            : tupIn.Year - year >= OldAge ? FlockMessages.AgeUnlikely(field!.Span, year, tupIn.Year - year)
            : null);
        return born;
    }
}
