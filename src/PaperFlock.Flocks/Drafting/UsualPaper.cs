namespace PaperFlock.Flocks.Drafting;

/// <summary>Which paper the printers of a country hold.</summary>
public static class UsualPaper
{
    /// <summary>Unicode CLDR, supplemental measurement data, paper size US-Letter; from memory.</summary>
    private static readonly string[] LetterCountries = ["BZ", "CA", "CL", "CO", "CR", "GT", "MX", "NI", "PA", "PH", "PR", "SV", "US", "VE"];

    /// <param name="countryCode">ISO 3166.</param>
    public static Paper In(string? countryCode) => LetterCountries.Contains(countryCode, StringComparer.Ordinal) ? Paper.Letter : Paper.A4;
}
