using System.Collections.Immutable;

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
    internal static ImmutableArray<TMade> Select<T, TMade>(IReadOnlyList<T> all, Func<T, int, TMade> make) =>
        all.Count < Large ? [.. all.Select(make)] : [.. all.AsParallel().AsOrdered().Select(make)];
}
