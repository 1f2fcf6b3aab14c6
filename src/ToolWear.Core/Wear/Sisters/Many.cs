using System.Collections.Immutable;
using System.Runtime.InteropServices;

namespace ToolWear.Core.Wear.Sisters;

/// <summary>Work on each of many tools, several at a time where that is worth the trouble.</summary>
internal static class Many
{
    // kinds are forecast beside each other already; inside one only a large kind gains from it
    private const int Large = 64;

    /// <summary>Makes something of each.</summary>
    /// <param name="all">The tools.</param>
    /// <param name="make">Makes it, from the tool and its place.</param>
    /// <returns>What was made, in order.</returns>
    /// <remarks>A loop whose caller does all that nobody else takes: where it runs under a lock that other threads of
    /// the pool wait for, a query that waits for free threads would stand still until the pool makes new ones.</remarks>
    internal static ImmutableArray<TMade> Select<T, TMade>(IReadOnlyList<T> all, Func<T, int, TMade> make)
    {
        TMade[] made = new TMade[all.Count];
        if (all.Count < Large)
        {
            for (int i = 0; i < made.Length; i++)
            {
                made[i] = make(all[i], i);
            }
        }
        else
        {
            Parallel.For(0, made.Length, i => made[i] = make(all[i], i));
        }

        return ImmutableCollectionsMarshal.AsImmutableArray(made);
    }
}
