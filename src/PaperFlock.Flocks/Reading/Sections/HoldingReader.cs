using PaperFlock.Flocks.Places;

namespace PaperFlock.Flocks.Reading.Sections;

internal static class HoldingReader
{
    /// <returns>Null when something required cannot be had; it has been reported.</returns>
    public static Holding? Read(Section holding)
    {
        var name = holding.Require("name")?.AsText();
        var (location, latitude) = Location(holding);
        var zone = holding.Require("time-zone") is { } field ? Zone(field, location) : null;
        var keeper = holding.Find("keeper")?.AsText();
        var gridReference = holding.Find("grid-reference")?.AsText();
        var postcode = holding.Find("postcode")?.AsText();
        var listed = Contacts(holding, keeper).ToList();
        ImmutableArray<Contact> contacts = [.. listed.Select(c => c.Contact)];
        PeopleCheck.Among(listed);
        holding.Bag.Add(holding.Find("contacts") is { Value: Sequence { Items: { IsEmpty: false } items } } all && contacts.Length == items.Length && !contacts.Any(c => c.IsVet)
            ? FlockMessages.NoVet(all.KeySpan)
            : null);

        var (find, signal, sickPen) = (holding.Find("find")?.AsText(), holding.Find("signal")?.AsText(), holding.Find("sick-pen")?.AsText());
        if (gridReference is not null)
        {
            PlaceCheck.GridReference(location, zone, holding.Find("grid-reference")!, gridReference);
        }

        if (location is not null && zone is not null && !PlaceCheck.IsPossible(location, zone, latitude!.Span, holding.Bag))
        {
            return null;
        }

        return name is not null && zone is not null
            ? new Holding(name, keeper, location, zone, gridReference, postcode, contacts) { Code = Code(holding), Find = find, Signal = signal, SickPen = sickPen }
            : null;
    }

    /// <summary>It stands in the names of leaves, of which each is one word.</summary>
    private static string? Code(Section holding) =>
        holding.Find("code") is { } field && field.AsText() is { } code
            ? code.All(char.IsAsciiLetterOrDigit) ? code.ToUpperInvariant() : field.Refuse<string>(FlockMessages.NotACode(field.Span, code))
            : null;

    /// <returns>With the field of the latitude, where messages about the place stand.</returns>
    private static (Place? Place, Field? Latitude) Location(Section holding)
    {
        holding.Bag.Add(holding.IsThere && !holding.IsGiven("location") && !holding.IsMistyped("location") ? FlockMessages.NoLocation(holding.Span) : null);

        var location = holding.Below("location");
        var (latitude, longitude) = (location.Require("latitude"), location.Require("longitude"));
        var areSwapped = AreSwapped(latitude, longitude);
        var place = (areSwapped ? null : latitude?.AsNumber(), longitude?.AsNumber()) is ({ } north, { } east) ? new Place(north, east, null) : null;
        return (location.IsCutByComma ? null : place, latitude);
    }

    /// <summary>A latitude that only a longitude can be, and beside it a longitude that may be a latitude; reported.</summary>
    private static bool AreSwapped(Field? latitude, Field? longitude)
    {
        if (latitude?.Value is Scalar { Text: var first } && longitude?.Value is Scalar { Text: var second }
            && NumberValues.TryParse(first, out var north) && NumberValues.TryParse(second, out var east)
            && Math.Abs(north) is > 90 and <= 180 && Math.Abs(east) <= 90)
        {
            latitude.Bag.Add(FlockMessages.LatitudeTooLarge(latitude.Span, north, east));
            return true;
        }

        return false;
    }

    private static IEnumerable<(Contact Contact, Section Entry)> Contacts(Section holding, string? keeper)
    {
        var isKeeperRead = false;
        foreach (var entry in holding.ListBelow("contacts"))
        {
            var role = entry.Require("role")?.AsText();
            var contact = new Contact(role ?? "?", entry.Find("name")?.AsText(), entry.Find("phone")?.AsText(), entry.Find("note")?.AsText());
            if (role is not null)
            {
                entry.Bag.Add(entry.IsGiven("phone") || entry.IsMistyped("phone") ? null : FlockMessages.NoPhone(entry.Span, role));
                PeopleCheck.Number(entry.Find("phone"), contact.Phone, role);
                // The first number of the keeper's is the one printed beside the keeper's name.
                if (!isKeeperRead && contact.Phone is not null && (contact.IsKeeper || PeopleCheck.AreOne(keeper, contact.Name)))
                {
                    isKeeperRead = true;
                    entry.Bag.Add(keeper is not null && contact.Name is not null && !PeopleCheck.AreOne(keeper, contact.Name)
                        ? FlockMessages.KeeperOfTwoNames(entry.Find("name")!.Span, keeper, contact.Name)
                        : null);
                }

                yield return (contact, entry);
            }
        }
    }

    /// <param name="place">Null where it is not known.</param>
    private static DateTimeZone? Zone(Field field, Place? place)
    {
        if (field.AsWord() is not { } name)
        {
            return null;
        }

        var zones = DateTimeZoneProviders.Tzdb;
        // Only names in the list: the provider would also make up zones such as UTC+05, which know no summer time.
        return zones.Ids.Contains(name) ? zones[name] : field.Refuse<DateTimeZone>(FlockMessages.UnknownTimeZone(field.Span, name, NearestZone(name, zones.Ids, place)));
    }

    /// <summary>A slip of a whole name, else the one whose town alone was given: <c>London</c>.</summary>
    private static string? NearestZone(string name, IReadOnlyCollection<string> ids, Place? place) =>
        // British Summer Time is half of a zone; elsewhere the letters are of Bangladesh.
        name.Equals("BST", StringComparison.OrdinalIgnoreCase) && place is not null && PlaceZones.IsInGreatBritain(place) ? "Europe/London"
        : NearestWord.Find(name, ids)
        ?? ids.FirstOrDefault(id => id.EndsWith($"/{name.Replace(' ', '_')}", StringComparison.OrdinalIgnoreCase));
}
