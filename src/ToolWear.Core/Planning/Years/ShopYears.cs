using System.Collections.Immutable;
using ToolWear.Core.Wear.Ranges;

namespace ToolWear.Core.Planning.Years;

/// <summary>Every year of a shop.</summary>
/// <param name="All">The years, the first one first; at least one.</param>
public sealed record ShopYears(ImmutableArray<ShopYear> All)
{
    /// <summary>Gathers every year that the records speak of.</summary>
    /// <param name="lives">The lives of the shop's tools, which costs rest on.</param>
    /// <param name="today">The shop's day.</param>
    /// <param name="steps">Watches and stops it.</param>
    /// <returns>The years.</returns>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static ShopYears Of(ShopLives lives, DateOnly today, Steps steps = default)
    {
        ToolingCosts costs = ToolingCosts.Of(lives, steps);
        ImmutableArray<KeptRanges> ranges = lives.Ranges;
        ImmutableArray<int> years = ShopYear.Years(lives.Shop, today);
        ImmutableArray<ShopYear>.Builder all = ImmutableArray.CreateBuilder<ShopYear>(years.Length);
        foreach (int year in years)
        {
            all.Add(ShopYear.Of(lives.Shop, costs, year) with { Ranges = ranges });
            steps.At(all.Count, years.Length);
        }

        return new ShopYears(all.MoveToImmutable());
    }
}
