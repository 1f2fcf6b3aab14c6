using System.Collections.Immutable;
using System.Runtime.InteropServices;
using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;

namespace ToolWear.Core.Planning;

/// <summary>A shop as it would be after something that has not happened. The ledger never hears of it.</summary>
public static class WhatIf
{
    /// <summary>Supposes that entries were made.</summary>
    /// <param name="shop">The shop as it is.</param>
    /// <param name="on">The shop's day.</param>
    /// <param name="supposed">What is supposed, in order.</param>
    /// <returns>The shop after it; or why one of the entries cannot be.</returns>
    public static Step After(Shop shop, DateOnly on, IEnumerable<LedgerEntry> supposed)
    {
        Shop after = shop;
        foreach (LedgerEntry entry in supposed)
        {
            Step step = after.After(new Entered(after.NextNumber, DateTimeOffset.UnixEpoch, on, entry));
            if (step.After is not { } next)
            {
                return step;
            }

            after = next;
        }

        return after;
    }
}

/// <summary>What is to be forged for one place in one of two plans.</summary>
/// <param name="Number">How many tools, zero or more.</param>
/// <param name="Days">The days to forge by, with how many, in order.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct PlaceSide(int Number, ImmutableArray<(DateOnly ForgeBy, int Number)> Days)
{
    internal static PlaceSide Of(IEnumerable<ForgeBatch> batches)
    {
        ImmutableArray<(DateOnly, int)> days = [.. batches.Select(batch => (batch.ForgeBy, batch.Number))];
        return new PlaceSide(days.Sum(day => day.Item2), days);
    }
}

/// <summary>One place in two plans.</summary>
/// <param name="Tools">The place.</param>
/// <param name="Now">As things are.</param>
/// <param name="Then">As they would be.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct PlaceInBoth(ToolPlace Tools, PlaceSide Now, PlaceSide Then)
{
    /// <summary>Whether number or days differ.</summary>
    public bool Differs => !Now.Days.SequenceEqual(Then.Days);
}

/// <summary>Two forge lists side by side: as things are, and as they would be.</summary>
/// <param name="Now">As they are.</param>
/// <param name="Then">As they would be.</param>
public sealed record TwoForgeLists(ForgeList Now, ForgeList Then)
{
    /// <summary>Each place for which one of the two forges something, by the first day in either.</summary>
    public ImmutableArray<PlaceInBoth> Places { get; } =
    [
        .. Now
            .Batches.Concat(Then.Batches)
            .OrderBy(batch => batch.ForgeBy)
            .Select(batch => batch.Tools)
            .Distinct()
            .Select(place => new PlaceInBoth(
                place,
                PlaceSide.Of(Now.Batches.Where(batch => batch.Tools == place)),
                PlaceSide.Of(Then.Batches.Where(batch => batch.Tools == place))
            )),
    ];
}
