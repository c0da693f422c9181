namespace PaperFlock.Flocks.Reading;

/// <summary>
/// Every diagnostic of the flock file, by code. A code has one meaning for good: a new meaning gets a new code. 001 to
/// 019 are about the file and its YAML, 020 to 029 about keys and shapes, 030 to 049 about single values, 050 to 089
/// about values that do not agree, and from 090 on are warnings: 101 to 119 and 121 to 149 are those of the plan, the others the reader's.
/// </summary>
public static class FlockCodes
{
    /// <summary>The file is over 4 MiB.</summary>
    public const string TooLarge = "FLK001";

    /// <summary>The file is in UTF-16, as some editors save it.</summary>
    public const string Utf16 = "FLK002";

    /// <summary>A byte that is no UTF-8.</summary>
    public const string NotUtf8 = "FLK003";

    /// <summary>A character that is no text: NUL, another control character, an odd line break.</summary>
    public const string ForbiddenCharacter = "FLK004";

    /// <summary>The text is not YAML from here on.</summary>
    public const string Syntax = "FLK005";

    /// <summary>A tab used to indent.</summary>
    public const string TabIndent = "FLK006";

    /// <summary>A quote that does not close on its line, in a text that is not YAML.</summary>
    public const string UnclosedQuote = "FLK007";

    /// <summary>A bracket that never closes.</summary>
    public const string UnclosedBracket = "FLK008";

    /// <summary>Nothing but comments, if that.</summary>
    public const string EmptyFile = "FLK009";

    /// <summary>A second YAML document in the file.</summary>
    public const string SecondDocument = "FLK010";

    /// <summary>A YAML alias or anchor.</summary>
    public const string AliasOrAnchor = "FLK011";

    /// <summary>A YAML type tag, such as <c>!!str</c>.</summary>
    public const string TypeTag = "FLK012";

    /// <summary>The YAML merge key.</summary>
    public const string MergeKey = "FLK013";

    /// <summary>Lists and sections nested deeper than the format ever goes.</summary>
    public const string TooDeep = "FLK014";

    /// <summary>A list or a section where a key should be.</summary>
    public const string KeyIsNotAWord = "FLK015";

    /// <summary>A version of the format this program does not know.</summary>
    public const string FormatVersion = "FLK016";

    /// <summary>So many mistakes and warnings that reading stopped.</summary>
    public const string TooManyFound = "FLK018";

    /// <summary>Some other kind of file: a document, a spreadsheet, a web page.</summary>
    public const string OtherKindOfFile = "FLK019";

    /// <summary>A key that has no meaning where it stands.</summary>
    public const string UnknownKey = "FLK020";

    /// <summary>A key twice in one section.</summary>
    public const string DuplicateKey = "FLK021";

    /// <summary>Something required is not there.</summary>
    public const string Missing = "FLK022";

    /// <summary>A section was expected.</summary>
    public const string NotASection = "FLK023";

    /// <summary>A list was expected.</summary>
    public const string NotAList = "FLK024";

    /// <summary>One value was expected.</summary>
    public const string NotASingleValue = "FLK025";

    /// <summary>A list with too few or too many items.</summary>
    public const string WrongCount = "FLK026";

    /// <summary>A key that another key of its section makes pointless.</summary>
    public const string DoesNotApply = "FLK027";

    /// <summary>A list or a section with more entries than any has.</summary>
    public const string ListTooLong = "FLK028";

    /// <summary>A word that is none of those allowed.</summary>
    public const string UnknownWord = "FLK030";

    /// <summary>Not a number.</summary>
    public const string NotANumber = "FLK031";

    /// <summary>A fraction where only whole numbers count.</summary>
    public const string NotAWholeNumber = "FLK032";

    /// <summary>A quantity without its unit.</summary>
    public const string MissingUnit = "FLK033";

    /// <summary>A unit of no use for this quantity.</summary>
    public const string UnknownUnit = "FLK034";

    /// <summary>Negative, or absurd.</summary>
    public const string OutOfRange = "FLK035";

    /// <summary>Not a date as this format writes dates.</summary>
    public const string NotADate = "FLK036";

    /// <summary>A date that no calendar has.</summary>
    public const string NoSuchDate = "FLK037";

    /// <summary>Not a time of day as this format writes times.</summary>
    public const string NotATime = "FLK038";

    /// <summary>Text longer than its place on the paper.</summary>
    public const string TextTooLong = "FLK039";

    /// <summary>Text that is empty, or holds a character that cannot be printed.</summary>
    public const string UnprintableText = "FLK040";

    /// <summary>A time zone nobody has.</summary>
    public const string UnknownTimeZone = "FLK041";

    /// <summary>A first and a last the wrong way round.</summary>
    public const string WrongOrder = "FLK042";

    /// <summary>Neither true nor false.</summary>
    public const string NotTrueOrFalse = "FLK043";

    /// <summary>Text in curly quotes, which would be printed.</summary>
    public const string CurlyQuotes = "FLK044";

    /// <summary>A character that prints nothing, in a text that does.</summary>
    public const string UnseenCharacter = "FLK045";

    /// <summary>One date stated in two ways.</summary>
    public const string StatedTwice = "FLK050";

    /// <summary>The tup leaves before he comes.</summary>
    public const string TupOutBeforeTupIn = "FLK051";

    /// <summary>An ear tag on two ewes.</summary>
    public const string DuplicateTag = "FLK052";

    /// <summary>Two groups, breeds or pens of one name.</summary>
    public const string DuplicateName = "FLK053";

    /// <summary>A ewe in a group that is not there.</summary>
    public const string UnknownGroup = "FLK054";

    /// <summary>A ewe that could be in any of several groups.</summary>
    public const string NoGroupGiven = "FLK055";

    /// <summary>A ewe's breed that is a slip of one with figures of its own.</summary>
    public const string BreedSlip = "FLK056";

    /// <summary>A raddle mark on a day her tup was not there.</summary>
    public const string MarkOutsideStay = "FLK057";

    /// <summary>A raddle mark written down twice.</summary>
    public const string MarkTwice = "FLK058";

    /// <summary>Marks, a scan or a lambing of a ewe that did not go to the tup.</summary>
    public const string NotMated = "FLK059";

    /// <summary>An early or late scan with nothing counted.</summary>
    public const string ScanStageWithoutScan = "FLK060";

    /// <summary>A lambing too soon or too late to come of this mating.</summary>
    public const string LambedImpossible = "FLK061";

    /// <summary>A year of birth that no ewe at this tupping can have.</summary>
    public const string BornImpossible = "FLK062";

    /// <summary>An absence that ends before it begins.</summary>
    public const string AbsenceBackwards = "FLK063";

    /// <summary>Two absences on one day.</summary>
    public const string AbsencesOverlap = "FLK064";

    /// <summary>An own job with no place in time, or several.</summary>
    public const string JobPlacement = "FLK065";

    /// <summary>A date nowhere near the season.</summary>
    public const string FarFromSeason = "FLK066";

    /// <summary>Something seen on a day that has not come.</summary>
    public const string AfterToday = "FLK070";

    /// <summary>A scan before any lamb of this mating could be counted.</summary>
    public const string ScannedTooSoon = "FLK071";

    /// <summary>More lambs than a ewe can have.</summary>
    public const string TooManyLambs = "FLK072";

    /// <summary>A place in the sea: latitude and longitude are both nought.</summary>
    public const string NoLandThere = "FLK073";

    /// <summary>No scales, and no scoop to measure with.</summary>
    public const string ScalesWithoutScoop = "FLK080";

    /// <summary>Warning: two ewes answer to one name.</summary>
    public const string SameName = "FLK090";

    /// <summary>Warning: a contact that cannot be rung.</summary>
    public const string NoPhone = "FLK091";

    /// <summary>Warning: a remark that may have been meant as text.</summary>
    public const string TakenForRemark = "FLK092";

    /// <summary>Warning: a character that no typeface has.</summary>
    public const string MissingCharacter = "FLK120";

    /// <summary>Warning: a season a year and more from today.</summary>
    public const string AnotherSeason = "FLK150";

    /// <summary>Warning: a scan that came too soon after her last mark.</summary>
    public const string ScannedSoonAfterMark = "FLK151";

    /// <summary>Warning: a lambing that does not fit her marks or the tup's stay.</summary>
    public const string LambedUnlikely = "FLK152";

    /// <summary>Warning: a ewe scanned empty has lambed.</summary>
    public const string EmptyYetLambed = "FLK153";

    /// <summary>Warning: lambs born that are not those counted, by more than a scanner errs.</summary>
    public const string LambsDoNotAddUp = "FLK154";

    /// <summary>Warning: a lambing without a lamb.</summary>
    public const string LambedNothing = "FLK155";

    /// <summary>Warning: a group with no ewe in it.</summary>
    public const string EmptyGroup = "FLK156";

    /// <summary>Warning: a tup with two groups at once.</summary>
    public const string TupInTwoGroups = "FLK157";

    /// <summary>Warning: fewer rounds for heavy ewes than for others.</summary>
    public const string FewerHeavyRounds = "FLK158";

    /// <summary>Warning: the keeper is away on every free day of the season.</summary>
    public const string NoFreeDay = "FLK159";

    /// <summary>Warning: more hours of work than a day has.</summary>
    public const string TooMuchWork = "FLK160";

    /// <summary>Warning: latitude and longitude are not where the time zone is kept.</summary>
    public const string PlaceOutsideZone = "FLK161";

    /// <summary>Warning: a grid reference far from latitude and longitude.</summary>
    public const string GridReferenceElsewhere = "FLK162";
}
