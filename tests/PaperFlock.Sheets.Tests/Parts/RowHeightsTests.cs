using CsCheck;
using PaperFlock.Sheets.WallPlanner;

namespace PaperFlock.Sheets.Tests.Parts;

public sealed class RowHeightsTests
{
    private static readonly Gen<(double Natural, bool Busy)[]> Rows = Gen.Select(Gen.Double[5, 60], Gen.Bool).Array[1, 60];

    [Fact]
    public void Rows_fill_their_room_exactly_and_none_gets_less_than_it_needs() =>
        Gen.Select(Rows, Gen.Double[0, 500]).Sample((rows, spare) =>
        {
            var (natural, busy) = Split(rows);
            var room = natural.Sum() + spare;
            var filled = RowHeights.Fill(natural, busy, room);
            Assert.Equal(room, filled.Sum(), 6);
            Assert.All(filled.Zip(natural), p => Assert.True(p.First >= p.Second - 1e-9));
        });

    [Fact]
    public void A_busy_row_gets_at_least_what_a_quiet_one_of_its_height_gets() =>
        Gen.Select(Rows, Gen.Double[0, 500]).Sample((rows, spare) =>
        {
            var (natural, busy) = Split([.. rows.Select(r => (20.0, r.Busy))]);
            var filled = RowHeights.Fill(natural, busy, natural.Sum() + spare);
            var (loud, quiet) = (filled.Where((_, i) => busy[i]).ToArray(), filled.Where((_, i) => !busy[i]).ToArray());
            Assert.True(loud.Length == 0 || quiet.Length == 0 || loud.Min() >= quiet.Max() - 1e-9);
        });

    [Fact]
    public void Rows_that_need_all_their_room_stay_as_they_are() => Assert.Equal([10, 20], RowHeights.Fill([10, 20], [true, false], 30).ToArray());

    [Fact]
    public void No_rows_fill_nothing() => Assert.Empty(RowHeights.Fill([], [], 100));

    [Fact]
    public void The_cut_falls_between_two_rows_and_both_halves_are_full() =>
        Gen.Select(Rows, Gen.Double[50, 900], Gen.Double[50, 900]).Sample((rows, upper, lower) =>
        {
            var (natural, busy) = Split(rows);
            if (RowHeights.FillHalves(natural, busy, upper, lower) is not { } filled)
            {
                Assert.False(CanBeDivided(natural, upper, lower));
                return;
            }

            Assert.True(CanBeDivided(natural, upper, lower));
            Assert.Equal(natural.Length, filled.Length);
            Assert.All(filled.Zip(natural), p => Assert.True(p.First >= p.Second - 1e-9));
            var sums = filled.Select((_, i) => filled[..(i + 1)].Sum()).ToArray();
            Assert.Contains(sums, s => Math.Abs(s - upper) < 1e-6);
            Assert.True(Math.Abs(sums[^1] - upper - lower) < 1e-6 || Math.Abs(sums[^1] - upper) < 1e-6);
        });

    [Fact]
    public void The_fairest_cut_is_taken() => Assert.Equal([10, 10, 10, 10], RowHeights.FillHalves([10, 10, 10, 10], [false, false, false, false], 20, 20)!.Value.ToArray());

    private static bool CanBeDivided(ImmutableArray<double> natural, double upper, double lower) =>
        Enumerable.Range(1, natural.Length).Any(n => natural[..n].Sum() <= upper && natural[n..].Sum() <= lower);

    private static (ImmutableArray<double> Natural, ImmutableArray<bool> Busy) Split((double Natural, bool Busy)[] rows) =>
        ([.. rows.Select(r => r.Natural)], [.. rows.Select(r => r.Busy)]);
}
