using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;

namespace ToolWear.Core.Findings;

/// <summary>How long a tool goes between two dressings, by the shop's own reworks; until then as is common practice.</summary>
/// <param name="After">Weighted heats from one dressing to the next, above zero.</param>
/// <param name="Gone">Weighted heats since its last dressing, or since it was made.</param>
/// <param name="Learned">On how many dressings <paramref name="After"/> rests; 0 for common practice.</param>
public sealed record Dressing(double After, double Gone, int Learned)
{
    // the smith's own habit shows from the third time on
    private const int Enough = 3;

    /// <summary>Weighted heats until it is dressed; 0 where it is due.</summary>
    public double Until => Math.Max(0, After - Gone);

    /// <summary>Reckons it: by the tool's own dressings, else by those of its form.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="tool">The tool.</param>
    /// <returns>Null for a form that is not dressed by heats, and while neither practice nor the shop knows after how many.</returns>
    public static Dressing? Of(Shop shop, ToolInShop tool)
    {
        if (tool.Tool.Form.DressedAfter is not { } usual)
        {
            return null;
        }

        (double gone, List<double> between) = Walked(shop, tool);
        double[] learned =
        [
            .. (
                between.Count >= Enough
                    ? between
                    : shop
                        .Tools.Values.Where(each => each.Tool.Form == tool.Tool.Form)
                        .SelectMany(each => Walked(shop, each).Between)
            ).Order(),
        ];
        int n = learned.Length >= Enough ? learned.Length : 0;
        double after = n == 0 ? usual : (learned[(n - 1) / 2] + learned[n / 2]) / 2;
        return after <= 0 ? null : new(after, gone, n);
    }

    private static (double Gone, List<double> Between) Walked(Shop shop, ToolInShop tool)
    {
        double gone = 0;
        List<double> between = [];
        foreach ((_, Entered entered) in shop.HistoryOf(tool))
        {
            if (entered.What is HeatsWorked heats)
            {
                gone += shop.Weighted(tool.Tool, heats);
            }
            else if (entered.What is ToolReworked { What: Rework.Dressed } && gone > 0)
            {
                between.Add(gone);
                gone = 0;
            }
        }

        return (gone, between);
    }
}
