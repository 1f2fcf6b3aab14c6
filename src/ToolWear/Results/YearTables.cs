using System.Collections.Immutable;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Planning.Years;
using ToolWear.Core.Tools;
using ToolWear.Core.Wear.Lifetimes;

namespace ToolWear.Results;

/// <summary>A year of the shop.</summary>
internal static class YearTables
{
    /// <summary>How long tools lasted, by place and steel.</summary>
    /// <param name="year">The year.</param>
    /// <returns>A row for each form, place and steel.</returns>
    public static Table Lives(ShopYear year) =>
        new(
            [
                new(null, "Tools"),
                new("form", null),
                new("place", null),
                new("steel", "Steel"),
                new("in_use", "In use"),
                new("added", "New"),
                new("scrapped", "Scrapped"),
                new("worn_out", "Worn out"),
                new("ended", "Ended by then"),
                new("median_heats", "Half last"),
                new("median_lo95", "from"),
                new("median_hi95", "to"),
                new("why", null),
            ],
            [.. year.Tools.Select(Row)]
        );

    /// <summary>What ended tools.</summary>
    /// <param name="year">The year.</param>
    /// <returns>A row for each cause.</returns>
    public static Table Causes(ShopYear year) =>
        new(
            [new("cause", "Cause"), new("scrapped", "Tools")],
            [
                .. year.Causes.Select(each =>
                    (ImmutableArray<Cell>)[Cell.Of(ToolScrapped.CauseWords.Word(each.Cause)), Cell.Of(each.Tools)]
                ),
            ]
        );

    /// <summary>What was forged.</summary>
    /// <param name="year">The year.</param>
    /// <returns>A row for each pattern.</returns>
    public static Table Heads(ShopYear year) =>
        new(
            [
                new("pattern", "Pattern"),
                new("sessions", "Sessions"),
                new("heads", "Heads"),
                new("uncounted", "Not counted in"),
                new("cost_a_head", "A head"),
                new("cost_a_head_lo90", "from"),
                new("cost_a_head_hi90", "to"),
                new("true_cost_a_head", "True a head"),
            ],
            [.. year.Heads.Select(Row)]
        );

    /// <summary>How much was measured.</summary>
    /// <param name="year">The year.</param>
    /// <returns>The figures.</returns>
    public static Calculated Measured(ShopYear year) =>
        new([
            new("readings", "Readings", Cell.Of(year.Measured.Readings)),
            new("looked_over", "Looked over", Cell.Of(year.Measured.Findings)),
            new("heats", "Heats worked", Cell.Of(year.Measured.Heats)),
            new("heats_read", "A reading followed", Cell.Of(year.Measured.Followed)),
            new("share_read", "In 100 heats", Cell.Of(year.Measured.Share, Words.InHundred)),
        ]);

    private static ImmutableArray<Cell> Row(YearOfTools tools)
    {
        string place = tools.Place == Place.None ? "" : Places.Words.Word(tools.Place);
        MedianLife? life = tools.Life as MedianLife;
        NotEnoughData? missing = tools.Life as NotEnoughData;
        return
        [
            Cell.Of($"{place} {tools.Form}".TrimStart()),
            Cell.Of(tools.Form),
            Cell.Of(place),
            Cell.Of(tools.Steel),
            Cell.Of(tools.InUse),
            Cell.Of(tools.Added),
            Cell.Of(tools.Scrapped),
            Cell.Of(tools.WornOut),
            Cell.Of(tools.Ended),
            life is null ? Cell.Of(null, none: Words.NotEnough(missing!)) : Cell.Of(life.Heats, Words.About),
            Cell.Of(life?.Low95, Words.About),
            Cell.Of(life?.High95, Words.About),
            Cell.Of(missing is null ? null : Words.Missing(missing)),
        ];
    }

    private static ImmutableArray<Cell> Row(YearOfHeads heads)
    {
        Estimate? cost = heads.Cost?.CostAHead as Estimate;
        return
        [
            Cell.Of(heads.Pattern, none: Words.NoPatternNamed),
            Cell.Of(heads.Sessions),
            Cell.Of((double?)heads.Heads),
            Cell.Of(heads.Uncounted),
            Cell.Of(cost?.Value, Words.Money),
            Cell.Of(cost?.Low90, Words.Money),
            Cell.Of(cost?.High90, Words.Money),
            Cell.Of(heads.Cost?.TrueCostAHead, Words.Money),
        ];
    }
}
