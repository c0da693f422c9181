namespace PaperFlock.Cli;

/// <summary>Asks which ewe is meant where the end of a tag is that of several.</summary>
internal static class WhichEwe
{
    /// <returns>Null where nobody is meant.</returns>
    public static Ewe? Ask(string typed, ImmutableArray<Ewe> ewes, Host host)
    {
        host.Out.WriteLine($"`{typed}` is the end of {ewes.Length} tags:");
        host.WriteBelow(ewes.Select((ewe, i) => FormattableString.Invariant($"{i + 1}  {ewe.Tag}  {ewe.Name}").TrimEnd()));

        return host.Ask(
            "Which? Type its number, or press Enter for none. > ",
            answer => int.TryParse(answer, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? ewes.ElementAtOrDefault(number - 1) : null,
            answer => $"there is no number `{answer}`");
    }
}
