namespace PaperFlock.Planning.Lambing;

/// <param name="PenDays">Whole days she and her lambs hold a lambing pen, the day she lambs included; 0 outdoors.</param>
internal readonly record struct LambingEwe(DayDistribution Chances, int PenDays)
{
    /// <summary>She holds a pen if she lambed on this day or on one of the days before it that her litter stays in.
    /// She lambs once, so the chances of those days add.</summary>
    public double ChanceInPen(LocalDate night)
    {
        var chances = Chances;
        return Enumerable.Range(0, PenDays).Sum(back => chances.On(night.PlusDays(-back)));
    }
}
