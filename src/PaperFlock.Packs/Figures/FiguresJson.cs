using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace PaperFlock.Packs.Figures;

/// <summary>The plan as other programs read it. Keys are never renamed; more may be added.</summary>
internal static class FiguresJson
{
    private static readonly FiguresContext Context = new(new JsonSerializerOptions
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        WriteIndented = true,
        NewLine = "\n",
        // The figures are read by people too: a name with an accent stays a name. Nothing here goes into a web page.
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    });

    /// <returns>One indented object, LF between lines, no line break at the end.</returns>
    public static string Of(SeasonPlan plan) => JsonSerializer.Serialize(FiguresBuilder.Of(plan), Context.PlanFigures);
}

/// <summary>Serialisers made when the program is built, so that nothing is looked up while it runs.</summary>
[JsonSerializable(typeof(PlanFigures))]
internal sealed partial class FiguresContext : JsonSerializerContext;
