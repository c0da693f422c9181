using PaperFlock.Flocks.Reading.Sections;

namespace PaperFlock.Flocks.Reading;

/// <summary>
/// The front door of the reader: the text of a flock file in, a flock or everything wrong with it out. Pure; what the
/// user got wrong is in the diagnostics and never an exception.
/// </summary>
public static class FlockReader
{
    /// <summary>4 MiB.</summary>
    public const int MostBytes = 4 * 1024 * 1024;

    /// <summary>Mistakes and warnings after which reading stops: somebody who has as many has the wrong file, or one slip that makes the rest.</summary>
    public const int MostFound = 1000;

    /// <summary>Entries of any list. A flock of some thousand ewes is read and printed; what has more is no flock of one keeper.</summary>
    public const int LongestList = 5000;

    /// <param name="shownPath">As messages show it; nothing is opened.</param>
    /// <param name="bytes">The file as it lies on the disk: UTF-8, a byte order mark allowed. Of a longer one, one byte over <see cref="MostBytes"/> is enough.</param>
    /// <param name="today">The day it is in a time zone: what is written down as seen must not lie after it. Null holds nothing against the calendar.</param>
    public static FlockReading Read(string shownPath, ReadOnlySpan<byte> bytes, Func<DateTimeZone, LocalDate>? today = null)
    {
        var bag = new DiagnosticBag();
        var source = FlockBytes.Decode(shownPath, bytes, bag);
        return bag.HasErrors ? new FlockReading(null, bag.ToSorted(), source) : Read(source, today);
    }

    /// <param name="today">The day it is in a time zone: what is written down as seen must not lie after it. Null holds nothing against the calendar.</param>
    public static FlockReading Read(SourceText source, Func<DateTimeZone, LocalDate>? today = null)
    {
        var bag = new DiagnosticBag(MostFound);
        try
        {
            FlockBytes.RefuseOddCharacters(source, bag);
            FlockBytes.RefuseOddSpaces(source, bag);
            var root = bag.HasErrors ? null : TreeBuilder.Build(source, bag);
            var flock = root is null ? null : Flock(root, today, bag);
            return new FlockReading(bag.HasErrors ? null : flock, bag.ToSorted(), source) { Root = root };
        }
        catch (BagFullException)
        {
            return new FlockReading(null, [FlockMessages.TooManyFound(MostFound), .. bag.ToSorted()], source);
        }
    }

    private static Flock? Flock(Node root, Func<DateTimeZone, LocalDate>? today, DiagnosticBag bag)
    {
        if (new Field("the file", Form.Section(""), SourceSpan.WholeFile, root, bag).AsSection() is not { } top)
        {
            return null;
        }

        top.Bag.Add(top.Require("paperflock") is { } field && field.AsScalar() is { } version && version.Text.Trim(' ') != "1"
            ? FlockMessages.FormatVersion(field.Span, version.Text)
            : null);
        var holding = HoldingReader.Read(top.RequireBelow("holding"));
        LocalDate? asOf = holding is null ? null : today?.Invoke(holding.TimeZone);
        var print = PrintReader.Read(top.Below("print"));
        var season = SeasonReader.Read(top.RequireBelow("season"), asOf);
        ImmutableArray<BreedDraft> breeds = [.. SeasonReader.Breeds(top)];
        var groups = GroupsReader.Read(top, season);
        var fields = FieldsReader.Read(top.Below("fields"));
        season = season with { Days = season.Made?.DaysOf([.. groups.Groups.Select(g => g.Made).OfType<TuppingGroup>()]) };
        var keeperDays = KeeperDaysReader.Read(top.Below("keeper-days"), season, holding);
        var housing = HousingReader.Read(top.Below("housing"));
        var practice = PracticeReader.Read(top.Below("practice"), season, housing.Lambing);
        var jobs = JobsReader.Read(top, season, housing.Lambing);
        var feeds = FeedsReader.Read(top.Below("feeds"));
        var ewes = new EwesReader(season, groups, breeds, asOf, bag).Read(top);

        WorkCheck.Of(jobs, ewes, keeperDays, season, practice, bag);

        // Past this point the nouns check themselves, and anything they refused would be a fault of the reader.
        return bag.HasErrors
            ? null
            : new Flock(
                holding!, print, season.Made!, [.. breeds.Select(b => b.Made)], [.. groups.Groups.Select(g => g.Made!)], keeperDays, practice, jobs, feeds, housing, ewes)
            {
                Fields = fields,
            };
    }
}
