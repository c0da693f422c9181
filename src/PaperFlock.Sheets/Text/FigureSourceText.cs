namespace PaperFlock.Sheets;

/// <summary>Where a figure comes from.</summary>
public static class FigureSourceText
{
    public static string Of(FigureSource source) => source switch
    {
        FigureSource.FlockFile => "the flock file",
        FigureSource.FlockFileMatings => "gestation length and mating dates of the flock file",
        FigureSource.CommonPractice => "common practice",
        FigureSource.AbortionVaccine => "Sheep Veterinary Society: from 4 months to 4 weeks before the tup; the label and the vet come first",
        FigureSource.LookOver => "ADAS and Teagasc advice: score 2.5 to 3 in the last weeks before lambing",
        FigureSource.TupCheck => "Otago Daily Times farm advice: 8 to 10 weeks before mating; Teagasc: sperm take 5 to 7 weeks to make",
        FigureSource.EweCondition => "common practice; Teagasc: a ewe takes 8 to 10 weeks to gain one condition score",
        FigureSource.RaddleChange => "common practice; published advice runs from 14 to 17 days",
        FigureSource.Scanning => "common practice; Teagasc: best 80 to 90 days after the ram is turned out",
        FigureSource.Booster => "Teagasc, reported by Agriland: 4 to 6 weeks before lambing; the label and the vet come first",
        FigureSource.WinterShearing => "Teagasc, reported by Agriland: shorn ewes stay housed for at least 8 weeks",
        FigureSource.HousingRoom =>
            "floor: DEFRA PB5162, pregnant ewes on straw (lowland 1.2 to 1.4 m², hill 1.0 to 1.2 m², winter-shorn a tenth less), with lambs 2.2 m², hill 2.0 m²; "
            + "trough: Teagasc, sheep housing space requirements (400, 500, 600 mm at 50, 70, 90 kg)",
        _ => throw new ArgumentOutOfRangeException(nameof(source)),
    };
}
