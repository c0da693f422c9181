using System.Runtime.InteropServices;
using System.Runtime.InteropServices.JavaScript;
using System.Runtime.Versioning;
using System.Text.Json.Nodes;
using PaperFlock.Packs;
using PaperFlock.Packs.Screen;

[assembly: SupportedOSPlatform("browser")]

namespace PaperFlock.Page;

/// <summary>
/// All that the page may ask of the engine. Texts and days as <c>2026-11-25</c> in, JSON out; what each object holds is written beside the method of
/// <c>PaperFlock.Packs.Screen</c> that makes it, and as types in <c>page/engine.js</c>, which calls this from the page.
/// </summary>
/// <remarks>
/// What cannot be had is an object with one key, <c>trouble</c>, a sentence for the keeper; any exception is a fault of the program. A call answers from its
/// arguments alone, but for <see cref="Pdf"/>, which goes with the last pack; a plan is kept for as long as the next calls are about the same text and day.
/// While a pack is made the page is told how far it is, through <see cref="Progress"/>.
/// </remarks>
internal static partial class Engine
{
    private static OpenFlock? _open;
    private static ImmutableArray<PackDocument> _documents = [];

    private static void Main()
    {
        // Nothing to do until the page asks.
    }

    /// <summary>The fields of the form, and the sheets there are.</summary>
    [JSExport]
    internal static string Describe() => ScreenFlock.Describe().ToJsonString();

    /// <summary>A flock to look at: <c>text</c>, <c>name</c>, and <c>today</c>, the day it is looked at.</summary>
    [JSExport]
    internal static string Sample()
    {
        using var resource = typeof(Engine).Assembly.GetManifestResourceStream("hollin-bank.yaml")!;
        using var reader = new StreamReader(resource);
        return new JsonObject { ["text"] = reader.ReadToEnd(), ["name"] = "hollin-bank.yaml", ["today"] = "2026-11-25" }.ToJsonString();
    }

    [JSExport]
    internal static string Open(byte[] bytes, string name, string today) => Told(() => ScreenFlock.Open(bytes, name, today));

    [JSExport]
    internal static string Read(string text, string name, string today) => Told(() => ScreenFlock.Read(Flock(text, name, today)));

    [JSExport]
    internal static string Apply(string text, string name, string today, string edits) => Told(() =>
    {
        (_open, var shown) = ScreenFlock.Apply(text, name, today, edits);
        return shown;
    });

    [JSExport]
    internal static string ReadDay(string typed, string today) => Told(() => ScreenDay.Read(typed, today));

    [JSExport]
    internal static string Begin(string answers, string today) => Told(() => ScreenStart.Begin(answers, today));

    /// <param name="tupIn">As typed; empty for the usual day.</param>
    [JSExport]
    internal static string NextSeason(string text, string name, string today, string tupIn) => Told(() => ScreenNext.Begin(Flock(text, name, today), tupIn));

    [JSExport]
    internal static string Paste(string text, string name, string pasted, int tagColumn, int nameColumn) =>
        Told(() => ScreenPaste.Read(text, name, pasted, tagColumn, nameColumn));

    [JSExport]
    internal static string OpenList(byte[] bytes, string name) => Told(() => ScreenPaste.Open(bytes, name));

    [JSExport]
    internal static string Number(string text, string name, string ewes) => Told(() => ScreenStart.Number(text, name, ewes));

    [JSExport]
    internal static string ReadPlace(string typed, string today) => Told(() => ScreenPlace.Read(typed, today));

    [JSExport]
    internal static string Plan(string text, string name, string today) => Told(() => ScreenPlan.Of(Flock(text, name, today).Plan));

    [JSExport]
    internal static string WhyJob(string text, string name, string today, int index) => Told(() => ScreenPlan.WhyJob(Flock(text, name, today).Plan, index));

    [JSExport]
    internal static string WhyEwe(string text, string name, string today, int index) => Told(() => ScreenPlan.WhyEwe(Flock(text, name, today).Plan, index));

    [JSExport]
    internal static string Season(string text, string name, string today) => Told(() => ScreenSeason.Of(Flock(text, name, today).Plan));

    [JSExport]
    internal static string Pictures(string text, string name, string today, string sheets) => Told(() => ScreenPictures.Of(Flock(text, name, today).Plan, sheets));

    /// <summary>The jobs as a calendar file: <c>text</c> and <c>file</c>, its name.</summary>
    [JSExport]
    internal static string Calendar(string text, string name, string today) => Told(() => ScreenPlan.Calendar(Flock(text, name, today).Plan, name));

    /// <summary>The lambs born, for the flock book: <c>text</c> and <c>file</c>.</summary>
    [JSExport]
    internal static string Births(string text, string name, string today) => Told(() => ScreenPlan.Births(Flock(text, name, today).Plan, name));

    [JSExport]
    internal static string Issues(string text, string name, string today, byte[] earlier, string earlierName) =>
        Told(() => ScreenPack.Issues(Flock(text, name, today).Plan, new EarlierFile(earlierName, earlier)));

    /// <param name="earlier">The PDF of the newest issue; empty for none.</param>
    [JSExport]
    internal static string Pack(string text, string name, string today, string options, byte[] earlier, string earlierName) => Told(() =>
    {
        _documents = [];
        GC.Collect();
        (_documents, var said) = ScreenPack.Make(Flock(text, name, today).Plan, name, options, earlier.Length == 0 ? null : new EarlierFile(earlierName, earlier), Progress);
        return said;
    });

    [JSExport]
    internal static string Leaf(bool isTest, bool isLetter) => Told(() =>
    {
        (_documents, var said) = ScreenPack.Leaf(isTest, isLetter);
        return said;
    });

    /// <summary>A document of the last pack, or of the last leaf: where it lies, to be copied from there.</summary>
    [JSExport]
    [return: JSMarshalAs<JSType.MemoryView>]
    internal static ArraySegment<byte> Pdf(int document)
    {
        GC.Collect();
        var pages = _documents[document].Pages.Count();
        MemoryMarshal.TryGetArray(_documents[document].ToPdf(printed => Progress(printed, pages, "")), out var pdf);
        return pdf;
    }

    /// <summary>Steps done, steps there are, and the page code of the sheet that comes next; empty while pages are printed.</summary>
    [JSImport("globalThis.progress")]
    internal static partial void Progress(int done, int of, string sheet);

    private static OpenFlock Flock(string text, string name, string today) => _open = _open is { } open && open.Is(text, name, today) ? open : new OpenFlock(text, name, today);

    private static string Told(Func<JsonNode> answer)
    {
        try
        {
            return answer().ToJsonString();
        }
        catch (PackRequestException trouble)
        {
            return new JsonObject { ["trouble"] = ScreenWords.Of(trouble.Message) }.ToJsonString();
        }
    }
}
