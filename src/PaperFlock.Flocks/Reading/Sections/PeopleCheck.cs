namespace PaperFlock.Flocks.Reading.Sections;

/// <summary>Whether names and telephone numbers speak of the same people: a number under the wrong name is rung in the worst hour.</summary>
internal static class PeopleCheck
{
    /// <summary>Those of an emergency call; a number has no fewer.</summary>
    private const int FewestFigures = 3;

    /// <summary>A number with its country's code ends as the one without.</summary>
    private const int FiguresThatCount = 8;

    /// <summary>Whether one may be written for the other: <c>Nell</c> for <c>Nell Ashworth</c>, never <c>Jack Ashworth</c>.</summary>
    public static bool AreOne(string? one, string? other)
    {
        var (a, b) = (Words(one), Words(other));
        return a.Count > 0 && b.Count > 0 && (a.IsSubsetOf(b) || b.IsSubsetOf(a));
    }

    public static bool IsKeeper(Contact contact) => contact.Role.Equals("keeper", StringComparison.OrdinalIgnoreCase);

    /// <summary>Reports words where a number should be.</summary>
    public static void Number(Field? field, string? phone, string whose)
    {
        if (field is not null && phone is not null && Figures(phone).Length < FewestFigures)
        {
            field.Bag.Add(FlockMessages.PhoneWithoutNumber(field.Span, phone, whose));
        }
    }

    /// <param name="holding">Null where it could not be read, and that is reported.</param>
    public static void Sitter(Section absence, string? sitter, string? phone, Holding? holding)
    {
        Number(absence.Find("phone"), phone, sitter ?? "the sitter");
        if (holding is null || sitter is null)
        {
            return;
        }

        if (AreOne(sitter, holding.Keeper) || holding.Contacts.Any(c => IsKeeper(c) && AreOne(sitter, c.Name)))
        {
            absence.Bag.Add(FlockMessages.SitterIsKeeper(absence.Find("sitter")!.Span, sitter));
        }
        else if (phone is not null && holding.Contacts.Where(c => AreOne(sitter, c.Name) && c.Phone is not null).Select(c => c.Phone!).ToList() is { Count: > 0 } known
            && !known.Any(number => AreAlike(number, phone)))
        {
            absence.Bag.Add(FlockMessages.TwoNumbers(absence.Find("phone")!.Span, sitter, known[0], phone));
        }
    }

    private static bool AreAlike(string one, string other) => Ending(one) == Ending(other);

    private static string Ending(string phone) => Figures(phone) is var figures && figures.Length > FiguresThatCount ? figures[^FiguresThatCount..] : figures;

    private static string Figures(string phone) => new([.. phone.Where(char.IsDigit)]);

    private static HashSet<string> Words(string? name) => (name ?? "").Split([' ', '.', ','], StringSplitOptions.RemoveEmptyEntries).ToHashSet(StringComparer.OrdinalIgnoreCase);
}
