using ToolWear.Core.Ledger;
using ToolWear.Core.Sections;
using static ToolWear.DemoMaker.Written;

namespace ToolWear.DemoMaker;

/// <summary>What lies in the invented stock rack; prices a kg in shop money.</summary>
internal static class Bars
{
    /// <summary>The bars. The finish drift and the slitter both want the short H13.</summary>
    public static IEnumerable<LedgerEntry> InRack =>
        [
            Round("mild 32 a", "mild", 32, 3000, "M1", 2.5m),
            Round("mild 32 b", "mild", 32, 3000, "M1", 2.5m),
            Round("4140 32", "4140", 32, 1800, "K4", 5),
            Round("4140 38", "4140", 38, 1200, "K5", 5),
            Round("H13 28", "H13", 28, 500, "W2", 18),
            Round("axle 30", "5160", 30, 600, "unknown lot", null),
        ];

    private static BarDescribed Round(
        string bar,
        string steel,
        decimal diameter,
        decimal length,
        string lot,
        decimal? price
    ) => new(bar, steel, SectionKind.Round, Mm(diameter), null, Mm(length), lot, price);
}
