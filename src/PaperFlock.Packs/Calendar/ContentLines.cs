namespace PaperFlock.Packs.Calendar;

/// <summary>
/// The lines of an iCalendar file (RFC 5545): each <c>NAME:value</c>, folded at 75 octets, ended by CRLF. Written by hand, because the library
/// that knows the format finds its types by reflection and so cannot go into the native program; it reads ours in the tests.
/// </summary>
internal sealed class ContentLines
{
    /// <summary>RFC 5545, section 3.1: a line should be no longer, its end not counted.</summary>
    private const int MostOctets = 75;

    private readonly StringBuilder _text = new();

    public void Add(string name, string value)
    {
        var octets = 0;
        foreach (var rune in $"{name}:{value}".EnumerateRunes())
        {
            if (octets + rune.Utf8SequenceLength > MostOctets)
            {
                // The blank that marks a continuation counts, and no character is cut in two.
                _text.Append("\r\n ");
                octets = 1;
            }

            _text.Append(rune.ToString());
            octets += rune.Utf8SequenceLength;
        }

        _text.Append("\r\n");
    }

    /// <summary>A value of the type TEXT (section 3.3.11).</summary>
    public void AddText(string name, string text) => Add(name, Escaped(text));

    /// <summary>A whole day: a date without a time or a zone (section 3.3.4).</summary>
    public void AddDay(string name, LocalDate day) => Add($"{name};VALUE=DATE", Digits(day));

    /// <summary>The first moment of a day, UTC (section 3.3.5).</summary>
    public void AddMoment(string name, LocalDate day) => Add(name, $"{Digits(day)}T000000Z");

    public void AddNumber(string name, int number) => Add(name, number.ToString(CultureInfo.InvariantCulture));

    public byte[] ToBytes() => Encoding.UTF8.GetBytes(_text.ToString());

    private static string Digits(LocalDate day) => day.ToString("uuuuMMdd", CultureInfo.InvariantCulture);

    /// <summary>Control characters have no place in a text, and no way to be written.</summary>
    private static string Escaped(string text) => string.Concat(text.ReplaceLineEndings("\n").Where(c => c == '\n' || !char.IsControl(c)).Select(c => c switch
    {
        '\\' or ';' or ',' => $@"\{c}",
        '\n' => @"\n",
        _ => c.ToString(),
    }));
}
