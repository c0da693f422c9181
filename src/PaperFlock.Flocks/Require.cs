using System.Runtime.CompilerServices;

namespace PaperFlock.Flocks;

/// <summary>
/// What the domain nouns hold true of themselves. The reader has told the user of every such fault before a noun is
/// made, so an exception from here is a fault of the program.
/// </summary>
internal static class Require
{
    /// <summary>Both ends included.</summary>
    public static T Within<T>(T value, T least, T most, [CallerArgumentExpression(nameof(value))] string? name = null)
        where T : IComparable<T>
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(value, least, name);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(value, most, name);
        return value;
    }

    /// <summary>Both ends included; nothing said is allowed.</summary>
    public static T? WithinIfGiven<T>(T? value, T least, T most, [CallerArgumentExpression(nameof(value))] string? name = null)
        where T : struct, IComparable<T> =>
        value is { } given ? Within(given, least, most, name) : null;

    public static T NotBefore<T>(T value, T other, [CallerArgumentExpression(nameof(value))] string? name = null)
        where T : IComparable<T>
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(value, other, name);
        return value;
    }

    /// <summary>More than nothing, and no more than <paramref name="most"/>: what is divided by.</summary>
    public static decimal Positive(decimal value, decimal most, [CallerArgumentExpression(nameof(value))] string? name = null)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(value, name);
        return Within(value, 0, most, name);
    }

    public static string Text(string value, [CallerArgumentExpression(nameof(value))] string? name = null)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(value, name);
        return value;
    }

    /// <summary>Of a mass or a length, neither of which is ever negative: more than nothing.</summary>
    public static T Some<T>(T value, [CallerArgumentExpression(nameof(value))] string? name = null)
        where T : struct, IEquatable<T>
    {
        ArgumentOutOfRangeException.ThrowIfEqual(value, default, name);
        return value;
    }

    public static T? SomeIfGiven<T>(T? value, [CallerArgumentExpression(nameof(value))] string? name = null)
        where T : struct, IEquatable<T> =>
        value is { } given ? Some(given, name) : null;

    public static ImmutableArray<T> Made<T>(ImmutableArray<T> values, [CallerArgumentExpression(nameof(values))] string? name = null) =>
        values.IsDefault ? throw new ArgumentException("An array must be made, if only empty.", name) : values;

    public static ImmutableArray<T> NotEmpty<T>(ImmutableArray<T> values, [CallerArgumentExpression(nameof(values))] string? name = null) =>
        values.IsDefaultOrEmpty ? throw new ArgumentException("At least one is needed.", name) : values;

    /// <summary>Each no earlier than the one before it.</summary>
    public static ImmutableArray<T> Ordered<T, TKey>(
        ImmutableArray<T> values, Func<T, TKey> key, [CallerArgumentExpression(nameof(values))] string? name = null)
        where TKey : IComparable<TKey>
    {
        var isRising = Made(values, name).Zip(values.Skip(1)).All(two => key(two.First).CompareTo(key(two.Second)) <= 0);
        return isRising ? values : throw new ArgumentException("Out of order.", name);
    }

    /// <summary>No two alike, by ordinal comparison.</summary>
    public static ImmutableArray<T> Unique<T>(
        ImmutableArray<T> values, Func<T, string> key, [CallerArgumentExpression(nameof(values))] string? name = null)
    {
        var twice = Made(values, name).GroupBy(key, StringComparer.Ordinal).FirstOrDefault(alike => alike.Count() > 1);
        return twice is null ? values : throw new ArgumentException($"`{twice.Key}` is there twice.", name);
    }
}
