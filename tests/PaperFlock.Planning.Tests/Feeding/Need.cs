using PaperFlock.Planning.Feeding;

namespace PaperFlock.Planning.Tests.Feeding;

/// <summary>What a ewe needs as worked out here, at the metabolisability of the trade's tables, to be held against what others print.</summary>
internal static class Need
{
    /// <summary>The metabolisability usually met in worked tables of the trade, where no diet is stated.</summary>
    public const double TableMetabolisability = 0.60;

    /// <returns>MJ a day.</returns>
    /// <param name="daysBefore">Days before she lambs.</param>
    public static double Of(
        double weight, int lambs, double daysBefore, Walking where = Walking.Housed, decimal? condition = null) =>
        new EweNeed(weight, lambs, condition).Energy(ConceptusGrowth.TermDay - daysBefore, where, TableMetabolisability);

    /// <summary>Mean over so many days up to lambing, that day being the last of them.</summary>
    public static double MeanOfLast(int days, double weight, int lambs, Walking where = Walking.Housed, decimal? condition = null) =>
        Mean(weight, lambs, days - 1, 0, where, condition);

    /// <param name="from">Days before she lambs, of the first day.</param>
    /// <param name="to">Days before she lambs, of the last day, included.</param>
    public static double Mean(
        double weight, int lambs, int from, int to, Walking where = Walking.Housed, decimal? condition = null) =>
        Enumerable.Range(to, from - to + 1).Average(before => Of(weight, lambs, before, where, condition));
}
