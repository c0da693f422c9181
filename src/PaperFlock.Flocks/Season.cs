using NodaTime;
using PaperFlock.Diagnostics;

namespace PaperFlock.Flocks;

/// <param name="TupIn">First day with the tup. Worked back from <c>lambing-from</c> where the file gives that instead.</param>
/// <param name="TupOut">Day the tup leaves; never before <paramref name="TupIn"/>.</param>
/// <param name="GestationDays">Where a breed gives no figure of its own.</param>
/// <param name="Span">Where the file says when the tup goes in.</param>
public sealed record Season(LocalDate TupIn, LocalDate TupOut, int GestationDays, SourceSpan Span);

/// <param name="GestationDays">Null: the season's figure.</param>
public sealed record Breed(string Name, int? GestationDays, Mass? MatureWeight);
