using CsCheck;

namespace PaperFlock;

/// <summary>
/// Runs a property on random cases that are the same in every run, so that a fault nobody has made today is not found today. <c>CASES=1000</c> in
/// the environment tries more of them in each test, <c>CASES_FROM=5000</c> others; <c>CsCheck_Seed</c> tries the one a failed test has printed.
/// </summary>
/// <remarks>
/// CsCheck's own <c>Sample</c> takes a seed for its first case and draws the rest by the clock. These have its name and stand in a namespace round
/// all tests, where the compiler finds them before CsCheck's; a test calls <c>Sample</c> and is pinned.
/// </remarks>
internal static class RandomCases
{
    /// <summary>The number of the first case.</summary>
    public static int First { get; } = Variable("CASES_FROM") ?? 1;

    /// <summary>How many to try where a test has time for so many.</summary>
    public static int Count(int usual) => Variable("CASES") ?? usual;

    /// <summary>What the case of that number is drawn from.</summary>
    public static PCG Source(int number) => new((uint)number, 20261125);

    /// <param name="iter">Cases, where the environment does not say how many.</param>
    /// <param name="threads">At once; negative for as many as there are processors.</param>
    public static void Sample<T>(this Gen<T> gen, Action<T> holds, int iter = 100, int threads = -1)
    {
        if (Check.Seed is not null)
        {
            Check.Sample(gen, holds, iter: iter, threads: threads);
            return;
        }

        var tried = Parallel.For(First, First + Count(iter), new ParallelOptions { MaxDegreeOfParallelism = threads }, (number, loop) =>
        {
            if (!Holds(gen, holds, number))
            {
                loop.Break();
            }
        });
        if (tried.LowestBreakIteration is { } failed)
        {
            // CsCheck tries it again, looks for a smaller one, and says how to have that again.
            Check.Sample(gen, holds, seed: Source((int)failed).ToString(), iter: iter, threads: threads);
            throw new InvalidOperationException($"Case {failed.ToString(CultureInfo.InvariantCulture)} failed, and tried again did not.");
        }
    }

    public static void Sample<T1, T2>(this Gen<(T1, T2)> gen, Action<T1, T2> holds, int iter = 100, int threads = -1) =>
        gen.Sample(t => holds(t.Item1, t.Item2), iter, threads);

    public static void Sample<T1, T2, T3>(this Gen<(T1, T2, T3)> gen, Action<T1, T2, T3> holds, int iter = 100, int threads = -1) =>
        gen.Sample(t => holds(t.Item1, t.Item2, t.Item3), iter, threads);

    public static void Sample<T1, T2, T3, T4>(this Gen<(T1, T2, T3, T4)> gen, Action<T1, T2, T3, T4> holds, int iter = 100, int threads = -1) =>
        gen.Sample(t => holds(t.Item1, t.Item2, t.Item3, t.Item4), iter, threads);

    public static void Sample<T1, T2, T3, T4, T5>(
        this Gen<(T1, T2, T3, T4, T5)> gen, Action<T1, T2, T3, T4, T5> holds, int iter = 100, int threads = -1) =>
        gen.Sample(t => holds(t.Item1, t.Item2, t.Item3, t.Item4, t.Item5), iter, threads);

    public static void Sample<T1, T2, T3, T4, T5, T6>(
        this Gen<(T1, T2, T3, T4, T5, T6)> gen, Action<T1, T2, T3, T4, T5, T6> holds, int iter = 100, int threads = -1) =>
        gen.Sample(t => holds(t.Item1, t.Item2, t.Item3, t.Item4, t.Item5, t.Item6), iter, threads);

    public static void Sample<T>(this Gen<T> gen, Func<T, bool> holds, int iter = 100, int threads = -1) =>
        gen.Sample(t => Assert.True(holds(t)), iter, threads);

    public static void Sample<T1, T2>(this Gen<(T1, T2)> gen, Func<T1, T2, bool> holds, int iter = 100, int threads = -1) =>
        gen.Sample(t => Assert.True(holds(t.Item1, t.Item2)), iter, threads);

    public static void Sample<T1, T2, T3>(this Gen<(T1, T2, T3)> gen, Func<T1, T2, T3, bool> holds, int iter = 100, int threads = -1) =>
        gen.Sample(t => Assert.True(holds(t.Item1, t.Item2, t.Item3)), iter, threads);

    public static void Sample<T1, T2, T3, T4>(
        this Gen<(T1, T2, T3, T4)> gen, Func<T1, T2, T3, T4, bool> holds, int iter = 100, int threads = -1) =>
        gen.Sample(t => Assert.True(holds(t.Item1, t.Item2, t.Item3, t.Item4)), iter, threads);

    public static void Sample<T1, T2, T3, T4, T5>(
        this Gen<(T1, T2, T3, T4, T5)> gen, Func<T1, T2, T3, T4, T5, bool> holds, int iter = 100, int threads = -1) =>
        gen.Sample(t => Assert.True(holds(t.Item1, t.Item2, t.Item3, t.Item4, t.Item5)), iter, threads);

    private static bool Holds<T>(Gen<T> gen, Action<T> holds, int number)
    {
        try
        {
            holds(gen.Generate(Source(number), null, out _));
            return true;
        }
        catch (Exception)
        {
            return false;
        }
    }

    private static int? Variable(string name) =>
        Environment.GetEnvironmentVariable(name) is { Length: > 0 } text ? int.Parse(text, CultureInfo.InvariantCulture) : null;
}
