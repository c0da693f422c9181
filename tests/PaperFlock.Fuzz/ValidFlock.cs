using System.Text;

namespace PaperFlock.Fuzz;

/// <summary>Flock files with nothing wrong in them, from what the reader promises to take.</summary>
internal static class ValidFlock
{
    private static readonly string[] Zones = ["Europe/London", "Pacific/Auckland", "America/New_York", "Pacific/Kiritimati", "Pacific/Pago_Pago"];

    /// <summary>Tags as written: none of them is a number, a truth or a time here.</summary>
    private static readonly string[] Tags = ["no", "on", "0123", "12:30", "1e3", "0x1F", "ZZ 0123456", "-7", "2026-08-10", "\"null\"", "'~'", "Daisy", "true", ".5", "1_000"];

    public static string Make(Random random)
    {
        var text = new StringBuilder();
        text.Append("paperflock: 1\nholding:\n  name: Hollin Bank\n");
        Write(text, $"  location: {{latitude: {random.Next(-66, 67)}.{random.Next(100):00}, longitude: {random.Next(-179, 180)}.{random.Next(100):00}}}\n");
        Write(text, $"  time-zone: {Zones[random.Next(Zones.Length)]}\n");
        var tupIn = new DateOnly(2000, 1, 1).AddDays(random.Next(365 * 98));
        Write(text, $"season:\n  tup-in: {tupIn:yyyy-MM-dd}\n");
        if (random.Next(2) == 0)
        {
            Write(text, $"  tup-out: {tupIn.AddDays(random.Next(17, 60)):yyyy-MM-dd}\n");
        }

        text.Append("ewes:\n");
        for (var (at, ewes) = (0, random.Next(1, 40)); at < ewes; at++)
        {
            // The first few as they stand, then numbered: no two ewes may share a tag.
            var tag = at < Tags.Length ? Tags[at] : $"ZZ {at:0000000}";
            Write(text, $"  - tag: {tag}\n");
            if (random.Next(3) == 0)
            {
                Write(text, $"    scan: {random.Next(1, 4)}\n");
            }
        }

        var made = text.ToString();
        return random.Next(4) switch
        {
            0 => made.ReplaceLineEndings("\r\n"),
            1 => "\ufeff" + made,
            _ => made,
        };
    }

    private static void Write(StringBuilder text, FormattableString line) => text.Append(line.ToString(CultureInfo.InvariantCulture));
}
