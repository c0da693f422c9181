using PaperFlock.Flocks.Reading;
using PaperFlock.Layout;
using PaperFlock.Packs.Calendar;
using PaperFlock.Packs.Explain;
using PaperFlock.Packs.Figures;
using PaperFlock.Sheets.Guide;
using PaperFlock.Sheets.Issues;
using PaperFlock.Sheets.TestPage;

namespace PaperFlock.Packs;

/// <summary>
/// The front door of this room, and all that a command line or a page needs of those below it: the bytes of a flock file and a day in, documents and
/// what is to be said out. Every step is a pure function; there is no disk here, no terminal, no clock. What the user got wrong is a diagnostic or a
/// <see cref="PackRequestException"/>; any other exception is a fault of the program.
/// </summary>
/// <remarks>
/// In order: <see cref="Read"/> the file, <see cref="Plan"/> it for a day, see what is remembered of an <see cref="Earlier"/> issue, <see cref="Make"/> the next
/// one (or, where it is the same, that one again), and turn each of its documents into a PDF with <see cref="PackDocument.ToPdf"/>, or paint its pages. <see cref="Changes"/> says what is in it; an issue
/// that is only to be talked about is made and not printed.
/// </remarks>
public static class PackMaker
{
    /// <param name="shownPath">What diagnostics call the file; nothing is opened.</param>
    /// <param name="bytes">As it lies on the disk; of one longer than <see cref="FlockReader.MostBytes"/>, one byte over that is enough.</param>
    /// <param name="today">The day it is in a time zone: what is written down as seen must not lie after it.</param>
    public static FlockReading Read(string shownPath, ReadOnlySpan<byte> bytes, Func<DateTimeZone, LocalDate> today) => FlockReader.Read(shownPath, bytes, today);

    /// <param name="asOf">Today at the holding, or the day that stands in for it. Of no account where the file has errors.</param>
    /// <param name="forPaper">The words in the file are going to be printed: say which characters cannot be.</param>
    public static PlannedFlock Plan(FlockReading reading, LocalDate asOf, bool forPaper)
    {
        var plan = reading.Flock is { } flock ? SeasonPlanner.Plan(flock, asOf) : null;
        var found = new DiagnosticBag();
        found.AddRange([.. reading.Diagnostics, .. plan is null ? [] : WarningText.Of(plan), .. forPaper ? Unprintable(reading) : []]);
        return new PlannedFlock(found.HasErrors ? null : plan, found.ToSorted(), reading.Source);
    }

    /// <summary>Where a file, though it can be read, has characters that cannot be printed.</summary>
    public static ImmutableArray<Diagnostic> Unprintable(FlockReading reading) => [.. reading.MissingCharacters(FirstMissing)];

    /// <summary>What stands at the foot of its pages, such as "HB-2027".</summary>
    public static string IdOf(SeasonPlan plan) => PackComposer.IdOf(plan);

    /// <summary>What is remembered of this pack in the files that lie where it is going to, by their names: see <see cref="PackFileNames.MayRemember"/>.</summary>
    public static EarlierIssue Earlier(SeasonPlan plan, IEnumerable<EarlierFile> files) => EarlierIssue.Newest(plan, files);

    /// <summary>The next issue of a pack, or some sheets of it. Making one files nothing: which is in the binder the keeper says, see <see cref="Filed"/>.</summary>
    /// <param name="before">The newest issue there has been, and the one to compare with; null for none.</param>
    /// <exception cref="PackRequestException">Nothing is known to compare with, the plan says nothing about some of the days, or those sheets have nothing to say.</exception>
    /// <exception cref="SheetException">Something does not fit an empty page.</exception>
    public static Pack Make(SeasonPlan plan, PackRequest request, EarlierIssue? before)
    {
        before ??= EarlierIssue.None;
        request = SheetChoice.WithCardsByTag(request, plan);
        if (request.Changed && before.Record is null)
        {
            throw new PackRequestException($"no earlier issue of {plan.Flock.Holding.Name} {PackComposer.IdOf(plan)} was found: nothing was written");
        }

        if (request.Days is { } days && (days.Start < plan.From || days.End > plan.To))
        {
            throw new PackRequestException(
                $"the plan of this flock runs from {ScreenText.Day(plan.From)} to {ScreenText.Day(plan.To)}, and {ScreenText.Day(days.Start < plan.From ? days.Start : days.End)} is outside it: nothing was written");
        }

        var issue = PackComposer.Compose(plan, FontLibrary.Measurer, request, before.Record, before.Since, before.LastNumber);
        if (!issue.Missing.IsEmpty)
        {
            throw new PackRequestException(SheetChoice.UnknownLeaves(issue));
        }

        var documents = PackBinding.Bind(issue.Pack, plan.Flock, request.Split);
        if (documents.IsEmpty && issue.Outcome is not { IsNothing: true })
        {
            throw new PackRequestException("your flock gives those sheets nothing to say: nothing was written");
        }

        return new Pack(issue.Record is { } record && !documents.IsEmpty ? documents.SetItem(0, documents[0].With(EarlierIssue.Attachment(record))) : documents, issue);
    }

    /// <summary>The PDF of an issue, which now says that one is in the binder. Its pages are the same.</summary>
    /// <param name="pdf">The newest, with <paramref name="record"/> in it.</param>
    /// <param name="number">Of an issue in the record.</param>
    /// <returns>Null where the PDF is not as it was written.</returns>
    public static byte[]? Filed(ReadOnlyMemory<byte> pdf, IssueRecord record, int number) => EarlierIssue.Filed(pdf, record, number);

    /// <summary>What has changed since the issue before, and why every leaf is printed where only changed ones were asked for. Nothing of a pack that was asked for whole.</summary>
    /// <param name="dryRun">The issue is not printed: say what it would be, every leaf and every row that says something else.</param>
    /// <returns>A line each.</returns>
    public static IEnumerable<string> Changes(Pack pack, EarlierIssue before, bool dryRun) => IssueText.Of(pack, before, dryRun);

    /// <summary>A leaf that shows what a printer does to a page.</summary>
    public static PackDocument TestPage(Paper paper) => PackBinding.Leaf(PrinterTest.Compose(paper, FontLibrary.Measurer));

    /// <summary>A leaf that says how to use a pack.</summary>
    public static PackDocument Guide(Paper paper) => PackBinding.Leaf(UserGuide.Compose(paper, FontLibrary.Measurer));

    /// <summary>The jobs by date, the days the ewes are handled, and when each ewe is due.</summary>
    public static IEnumerable<DatesTable> Dates(SeasonPlan plan) => DatesTable.Of(plan);

    /// <summary>Why the plan says what it says of a day, a job or a ewe.</summary>
    /// <param name="words">A date, a job's title or id, a ewe's name, her tag or the end of it.</param>
    /// <exception cref="PackRequestException">Nothing of the plan is meant, or too much.</exception>
    public static IEnumerable<Explanation> Explain(SeasonPlan plan, string words)
    {
        var meant = Meant.By(words, plan);
        return
        [
            .. meant.Days.Select(d => DayExplainer.Of(d, plan)),
            .. meant.Jobs.Select(j => JobExplainer.Of(j, plan)),
            .. meant.Ewes.Select(e => EweExplainer.Of(e, plan)),
        ];
    }

    /// <summary>Every figure of the plan as JSON, LF between lines and none at the end.</summary>
    public static string Figures(SeasonPlan plan) => FiguresJson.Of(plan);

    /// <summary>The lambs born, for the flock book: rows for a spreadsheet (RFC 4180), in UTF-8 with a mark at its head, without which some take it for something else.</summary>
    public static byte[] Births(SeasonPlan plan) => [.. Encoding.UTF8.Preamble, .. Encoding.UTF8.GetBytes(BirthsTable.Of(plan))];

    /// <summary>Whether such a list of births may be replaced by one of that flock, whatever its season: no other is ever lost by chance.</summary>
    /// <returns>Null where it may; else what it is, to follow its name.</returns>
    public static string? WhyNotReplaceBirths(ReadOnlySpan<byte> there, SeasonPlan plan) => BirthsTable.WhyNotReplace(Encoding.UTF8.GetString(there), plan.Flock.Holding);

    /// <summary>The jobs as an iCalendar file (RFC 5545).</summary>
    public static byte[] Calendar(SeasonPlan plan) => JobCalendar.Of(plan);

    /// <summary>A tag is set in the mono face, all other words in the text face; the bold faces have the same characters.</summary>
    private static string? FirstMissing(string text, bool isTag) => FontLibrary.FirstMissing(text, isTag ? Face.Mono : Face.Text);
}
