using System.Collections.Immutable;
using ToolWear.Core.Ledger;

namespace ToolWear.Core.Shops;

/// <summary>A tool that is lent out.</summary>
/// <param name="Tool">The tool.</param>
/// <param name="Lent">To whom and since when.</param>
/// <param name="DaysOut">Days since then, zero or more.</param>
public sealed record Loan(ToolInShop Tool, ToolLent Lent, int DaysOut)
{
    /// <summary>The loans of a shop.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="today">The shop's day.</param>
    /// <returns>The one that is out longest first.</returns>
    public static ImmutableArray<Loan> All(Shop shop, DateOnly today) =>
        [
            .. shop
                .Tools.Values.Where(tool => tool.Lent is not null)
                .Select(tool => new Loan(tool, tool.Lent!, Math.Max(0, today.DayNumber - tool.Lent!.On.DayNumber)))
                .OrderByDescending(loan => loan.DaysOut)
                .ThenBy(loan => loan.Tool.Mark.Text, StringComparer.Ordinal),
        ];
}
