using System.Text;
using NodaTime;

namespace PaperFlock.Sheets.Tests.WorstCases;

/// <summary>A flock file made from parts; what is null or empty is left out, as a keeper would.</summary>
internal sealed record FlockText
{
    public string Holding { get; init; } = "name: Hollin Bank";

    public string Place { get; init; } = "location: {latitude: 54.46, longitude: -2.74}\ntime-zone: Europe/London";

    public string Print { get; init; } = "";

    public string Season { get; init; } = "tup-in: 2026-08-10";

    public string[] Breeds { get; init; } = [];

    public string[] Groups { get; init; } = [];

    public string Free { get; init; } = "";

    public string[] Away { get; init; } = [];

    public string Practice { get; init; } = "";

    public string[] Jobs { get; init; } = [];

    public string Feeds { get; init; } = "";

    public string[] Pens { get; init; } = [];

    public string Housing { get; init; } = "";

    public string[] Contacts { get; init; } = [];

    public IEnumerable<string> Ewes { get; init; } = [Ewe(1)];

    /// <summary>A ewe as a flow mapping; <paramref name="more"/> are further keys.</summary>
    public static string Ewe(int number, string more = "", string? name = null, string? tag = null) =>
        string.Create(CultureInfo.InvariantCulture, $"{{tag: \"{tag ?? $"ZZ 0123456 {number:00000}"}\"{(name is null ? "" : $", name: \"{name}\"")}{(more.Length > 0 ? ", " + more : "")}}}");

    /// <summary>Ewes from 1 on, the keys of each chosen by its number.</summary>
    public static IEnumerable<string> Many(int count, Func<int, string>? more = null, Func<int, string?>? name = null) =>
        Enumerable.Range(1, count).Select(n => Ewe(n, more?.Invoke(n) ?? "", name is null ? $"Ewe {n.ToString(CultureInfo.InvariantCulture)}" : name(n)));

    public override string ToString()
    {
        var text = new StringBuilder("paperflock: 1\n");
        text.Append(CultureInfo.InvariantCulture, $"holding:\n  {Indented(Holding)}\n  {Indented(Place)}\n");
        List(text, "contacts", Contacts, "  ");
        Section(text, "print", Print);
        Section(text, "season", Season);
        List(text, "breeds", Breeds);
        List(text, "groups", Groups);
        if (Away.Length > 0 || Free.Length > 0)
        {
            text.Append(CultureInfo.InvariantCulture, $"keeper-days:\n{(Free.Length > 0 ? $"  {Free}\n" : "")}");
            List(text, "away", Away, "  ");
        }

        Section(text, "practice", Practice);
        List(text, "jobs", Jobs);
        Section(text, "feeds", Feeds);
        if (Pens.Length > 0 || Housing.Length > 0)
        {
            text.Append(CultureInfo.InvariantCulture, $"housing:\n{(Housing.Length > 0 ? $"  {Indented(Housing)}\n" : "")}");
            List(text, "pens", Pens, "  ");
        }

        List(text, "ewes", [.. Ewes]);
        return text.ToString();
    }

    public Composed On(LocalDate asOf) => Composed.Fresh(ToString(), asOf);

    private static string Indented(string lines) => lines.ReplaceLineEndings("\n  ");

    private static void Section(StringBuilder text, string key, string lines)
    {
        if (lines.Length > 0)
        {
            text.Append(CultureInfo.InvariantCulture, $"{key}:\n  {Indented(lines)}\n");
        }
    }

    private static void List(StringBuilder text, string key, string[] entries, string indent = "")
    {
        if (entries.Length > 0)
        {
            text.Append(CultureInfo.InvariantCulture, $"{indent}{key}:\n");
            foreach (var entry in entries)
            {
                text.Append(CultureInfo.InvariantCulture, $"{indent}  - {entry}\n");
            }
        }
    }
}
