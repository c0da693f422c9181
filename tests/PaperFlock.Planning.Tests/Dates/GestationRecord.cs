namespace PaperFlock.Planning.Tests.Dates;

/// <summary>How long ewes whose matings were seen carried their lambs: the table in <c>gestation-1903.csv</c>, where its source stands.</summary>
internal sealed class GestationRecord
{
    /// <summary>Days printed as one row, both ends included.</summary>
    internal readonly record struct Row(int From, int To, int Ewes)
    {
        public IEnumerable<int> Days => Enumerable.Range(From, To - From + 1);
    }

    public Row[] Rows { get; } =
    [
        .. File.ReadLines(Path.Combine(AppContext.BaseDirectory, "Dates", "gestation-1903.csv"))
            .Where(line => !line.StartsWith('#'))
            .Select(line => line.Split(',').Select(n => int.Parse(n, CultureInfo.InvariantCulture)).ToArray())
            .Select(n => new Row(n[0], n[1], n[2])),
    ];

    public int Ewes => Rows.Sum(r => r.Ewes);

    /// <summary>Each day's share of all, a row's ewes spread evenly over its days.</summary>
    public IEnumerable<(int Day, double Share)> Days =>
        Rows.SelectMany(r => r.Days.Select(day => (day, (double)r.Ewes / r.Days.Count() / Ewes)));

    public double Mean => Days.Sum(d => d.Day * d.Share);

    public double StandardDeviation => Math.Sqrt(Days.Sum(d => Math.Pow(d.Day - Mean, 2) * d.Share));
}
