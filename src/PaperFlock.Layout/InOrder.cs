using System.Collections.Immutable;
using System.Runtime.ExceptionServices;

namespace PaperFlock.Layout;

/// <summary>Work done on all cores whose outcome does not show it.</summary>
public static class InOrder
{
    /// <summary>What each of the works makes, in the order of the works.</summary>
    /// <inheritdoc cref="Select" path="/remarks"/>
    public static ImmutableArray<TMade> All<TMade>(IReadOnlyList<Func<TMade>> works) => Select(works, work => work());

    /// <summary>What <paramref name="make"/> makes of each item, in the order of the items. It must be a pure function of the item.</summary>
    /// <remarks>Where it throws, the exception of the first item that has one is thrown, as if one had been done after another.</remarks>
    public static ImmutableArray<TMade> Select<TItem, TMade>(IReadOnlyList<TItem> items, Func<TItem, TMade> make)
    {
        var made = new TMade[items.Count];
        var faults = new ExceptionDispatchInfo?[items.Count];
        Parallel.For(0, items.Count, (i, loop) =>
        {
            try
            {
                made[i] = make(items[i]);
            }
            catch (Exception e)
            {
                faults[i] = ExceptionDispatchInfo.Capture(e);
                // Those before it are still done: one of them may have a fault too.
                loop.Break();
            }
        });
        Array.Find(faults, f => f is not null)?.Throw();
        return [.. made];
    }
}
