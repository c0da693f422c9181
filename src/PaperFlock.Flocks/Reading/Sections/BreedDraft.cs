namespace PaperFlock.Flocks.Reading.Sections;

/// <param name="MatureWeight">Where the file gives it; null where it does not.</param>
internal sealed record BreedDraft(Breed Made, Field? MatureWeight);
