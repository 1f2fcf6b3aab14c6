using System.Collections.Immutable;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Shops;

namespace ToolWear.Results;

/// <summary>Entries of the ledger.</summary>
internal static class LedgerTable
{
    private static readonly ImmutableArray<Column> Columns =
    [
        new("entry", "Entry"),
        new("entered_on", "Entered on"),
        new("tools", "Tools"),
        new("what", "What"),
        new("crossed_out_by", "Crossed out by"),
        new("why", "Why"),
    ];

    /// <summary>Makes the table.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="entries">The entries.</param>
    /// <param name="units">The unit for people; files say sizes in mm.</param>
    /// <returns>A row for each, in their order.</returns>
    public static Table Of(Shop shop, IEnumerable<Entered> entries, LengthUnit units) =>
        new(Columns, [.. entries.Select(entered => Row(shop, entered, units))]);

    private static ImmutableArray<Cell> Row(Shop shop, Entered entered, LengthUnit units)
    {
        Entered? by = shop.CrossedOut.GetValueOrDefault(entered.Number);
        return
        [
            Cell.Of(entered.Number),
            Cell.Of(entered.Day),
            Cell.Of(string.Join(' ', entered.What.Tools.Distinct()), none: ""),
            Cell.Of(EntryWords.Of(entered.What, LengthUnit.Mm), EntryWords.Of(entered.What, units)),
            by is null ? Cell.Of(null, none: "") : Cell.Of(by.Number),
            Cell.Of((by?.What as EntryCrossedOut)?.Why, none: ""),
        ];
    }
}
