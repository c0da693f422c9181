using System.Collections.Concurrent;
using CsCheck;

namespace PaperFlock.Diagnostics.Tests;

/// <summary>The random cases of every test project are pinned; see <see cref="RandomCases"/>.</summary>
public sealed class RandomCasesTests
{
    [Fact]
    public void Cases_are_the_same_each_time_and_of_every_kind()
    {
        Assert.SkipWhen(Check.Seed is not null, "One case is given, and the rest are drawn by the clock to make it smaller.");
        var (one, other) = (Draw(), Draw());
        Assert.Equal(one, other);
        Assert.Equal(Enumerable.Range(0, 10), one.Select(pair => pair.Tens).Distinct().Order());
        Assert.Equal(Enumerable.Range(0, 10), one.Select(pair => pair.Ones).Distinct().Order());

        static (int Tens, int Ones)[] Draw()
        {
            var drawn = new ConcurrentBag<(int Tens, int Ones)>();
            Gen.Select(Gen.Int[0, 9], Gen.Int[0, 9]).Sample((tens, ones) => drawn.Add((tens, ones)));
            return [.. drawn.Order()];
        }
    }

    [Fact]
    public void A_case_that_fails_is_shown_with_the_way_to_have_it_again()
    {
        var failure = Assert.Throws<CsCheckException>(() => Gen.Int[0, 99].Sample(number => number < 50));
        Assert.Contains("CsCheck_Seed=", failure.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_case_that_fails_once_and_not_again_is_a_failure_too()
    {
        var before = 0;
        var failure = Assert.Throws<InvalidOperationException>(() => Gen.Int[0, 99].Sample(_ => Interlocked.Increment(ref before) != 1, threads: 1));
        Assert.EndsWith("tried again did not.", failure.Message, StringComparison.Ordinal);
    }
}
