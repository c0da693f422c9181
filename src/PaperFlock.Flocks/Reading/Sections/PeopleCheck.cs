namespace PaperFlock.Flocks.Reading.Sections;

/// <summary>Whether names and telephone numbers speak of the same people: a number under the wrong name is rung in the worst hour.</summary>
internal static class PeopleCheck
{
    /// <summary>Those of an emergency call; a number has no fewer.</summary>
    private const int FewestFigures = 3;

    /// <summary>A number of a village; with fewer figures nobody can be dialled but in an emergency. Common knowledge, no source.</summary>
    private const int FewestOfATown = 6;

    /// <summary>With the code of its district, or of its country, before it. Common knowledge, no source.</summary>
    private const int FewestWithACode = 8;

    /// <summary>A number with its country's code ends as the one without.</summary>
    private const int FiguresThatCount = 8;

    /// <summary>Whether one may be written for the other: <c>Nell</c> for <c>Nell Ashworth</c>, never <c>Jack Ashworth</c>.</summary>
    public static bool AreOne(string? one, string? other)
    {
        var (a, b) = (Words(one), Words(other));
        return a.Count > 0 && b.Count > 0 && (a.IsSubsetOf(b) || b.IsSubsetOf(a));
    }

    /// <summary>Reports words where a number should be, letters among its figures, and half a number.</summary>
    public static void Number(Field? field, string? phone, string whose)
    {
        if (field is null || phone is null)
        {
            return;
        }

        var figures = Figures(phone).Length;
        field.Bag.Add(
            figures < FewestFigures ? FlockMessages.PhoneWithoutNumber(field.Span, phone, whose)
            : phone.Any(char.IsLetter) ? FlockMessages.PhoneWithLetters(field.Span, phone, whose, InFigures(phone))
            : figures > FewestFigures && figures < (phone[0] is '0' or '+' ? FewestWithACode : FewestOfATown) ? FlockMessages.PhoneCutShort(field.Span, phone, whose, figures)
            : null);
    }

    /// <summary>Reports a number that two have, and two numbers that one has, at the later of the two.</summary>
    public static void Among(IReadOnlyList<(Contact Contact, Section Entry)> contacts)
    {
        for (var i = 1; i < contacts.Count; i++)
        {
            var ((role, name, phone, note), entry) = contacts[i];
            if (phone is null || Figures(phone).Length < FewestFigures)
            {
                continue;
            }

            var earlier = contacts.Take(i).Select(c => c.Contact).Where(c => c.Phone is not null && Figures(c.Phone).Length >= FewestFigures).ToList();
            var at = entry.Find("phone")!.Span;
            entry.Bag.Add(
                earlier.Find(c => AreAlike(c.Phone!, phone) && !AreOne(c.Name ?? c.Role, name ?? role)) is { } other
                    ? FlockMessages.OneNumberForTwo(at, phone, name ?? role, other.Name ?? other.Role)
                // A note says which to ring when: at home, out of hours.
                : note is null && name is not null && earlier.FindAll(c => AreOne(c.Name, name)) is [var first, ..] same && same.All(c => c.Note is null && !AreAlike(c.Phone!, phone))
                    ? FlockMessages.TwoNumbersOfOne(at, name, first.Phone!)
                : null);
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

        var known = holding.Contacts.Where(c => AreOne(sitter, c.Name)).Select(c => c.Phone).OfType<string>().ToList();
        absence.Bag.Add(
            AreOne(sitter, holding.Keeper) || holding.Contacts.Any(c => c.IsKeeper && AreOne(sitter, c.Name)) ? FlockMessages.SitterIsKeeper(absence.Find("sitter")!.Span, sitter)
            : phone is not null && known.Count > 0 && !known.Exists(number => AreAlike(number, phone)) ? FlockMessages.TwoNumbers(absence.Find("phone")!.Span, sitter, known[0], phone)
            : null);
    }

    private static bool AreAlike(string one, string other) => Ending(one) == Ending(other);

    private static string Ending(string phone) => Figures(phone) is var figures && figures.Length > FiguresThatCount ? figures[^FiguresThatCount..] : figures;

    /// <summary>With the figures that its letters look like; null where they look like none.</summary>
    private static string? InFigures(string phone)
    {
        var typed = string.Concat(phone.Select(c => c switch { 'O' or 'o' => '0', 'I' or 'l' => '1', _ => c }));
        return typed.Any(char.IsLetter) ? null : typed;
    }

    private static string Figures(string phone) => new([.. phone.Where(char.IsDigit)]);

    private static HashSet<string> Words(string? name) => (name ?? "").Split([' ', '.', ','], StringSplitOptions.RemoveEmptyEntries).ToHashSet(StringComparer.OrdinalIgnoreCase);
}
