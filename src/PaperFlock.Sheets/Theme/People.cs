namespace PaperFlock.Sheets.Theme;

/// <summary>Who looks after the flock, and who is rung about it.</summary>
internal static class People
{
    private static readonly string[] Titles = ["Dr", "Miss", "Mr", "Mrs", "Ms"];

    /// <summary>"Nell", or "the keeper" where the file names nobody.</summary>
    public static string Keeper(Flock flock) => flock.Holding.Keeper is { } name ? First(name) : "the keeper";

    /// <summary>The first of two names.</summary>
    public static string First(string name) => name.Split(' ') is [var first, _] && !Titles.Contains(first.TrimEnd('.')) ? first : name;

    public static bool IsKeeper(Contact contact, Flock flock) => contact.IsKeeper || (flock.Holding.Keeper is { } keeper && Same(contact.Name, keeper));

    /// <summary>A number to ring, in one piece; a line to write on where the file has none.</summary>
    public static string Phone(Flock flock, Func<Contact, bool> whose) =>
        flock.Holding.Contacts.FirstOrDefault(c => c.Phone is not null && whose(c))?.Phone?.Replace(' ', '\u00a0') ?? "______________";

    public static bool Same(string? one, string other) => string.Equals(one, other, StringComparison.OrdinalIgnoreCase);
}
