using System.Collections.Immutable;
using ToolWear.Core.Eyes.Slits;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Shops;

namespace ToolWear.Core.Findings;

/// <summary>How long a tool goes between two dressings, by the shop's own reworks; until then as is common practice.</summary>
/// <param name="After">Weighted heats from one dressing to the next, above zero.</param>
/// <param name="Gone">Weighted heats since its last dressing, or since it was made.</param>
/// <param name="Learned">On how many dressings <paramref name="After"/> rests; 0 for common practice.</param>
/// <param name="Takes">What is gone from one dressing to the next, by the name of the gauge mark; without those of which
/// fewer than three sizes after a dressing are on record, and those that dressing brings back.</param>
public sealed record Dressing(
    double After,
    double Gone,
    int Learned,
    ImmutableDictionary<string, DressingHistory> Takes
)
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
        ToolInShop[] alike = [.. shop.Tools.Values.Where(each => each.Tool.Form == tool.Tool.Form)];
        double[] learned = Own(between, () => alike.SelectMany(each => Walked(shop, each).Between));
        int n = learned.Length;
        double after = n == 0 ? usual : (learned[(n - 1) / 2] + learned[n / 2]) / 2;
        IEnumerable<KeyValuePair<string, DressingHistory>> takes =
            from gauge in tool.Tool.GaugeMarks
            let mm = Own(Taken(shop, tool, gauge.Name), () => alike.SelectMany(each => Taken(shop, each, gauge.Name)))
            where mm.Length > 0 && mm.Average() > 0
            select KeyValuePair.Create(gauge.Name, new DressingHistory(mm.Length, mm.Average(), after, gone));
        return after <= 0 ? null : new(after, gone, n, takes.ToImmutableDictionary());
    }

    // in order; by the tool itself where it says enough, else by its form; none where that says too little
    private static double[] Own(List<double> own, Func<IEnumerable<double>> alike)
    {
        double[] all = [.. (own.Count >= Enough ? own : alike()).Order()];
        return all.Length >= Enough ? all : [];
    }

    // from the size after one dressing to that after the next: what the work in between took is in it
    private static List<double> Taken(Shop shop, ToolInShop tool, string gauge)
    {
        List<double> taken = [];
        if (tool.Tool.GaugeMarks.FirstOrDefault(each => each.Name == gauge) is not { } mark)
        {
            return taken;
        }

        Length? before = tool.Tool.Start.IsUnknown ? null : mark.Start;
        foreach ((_, Entered entered) in shop.HistoryOf(tool))
        {
            if (entered.What is ToolReworked { After: { } after } rework && rework.Gauge == gauge)
            {
                if (rework.What == Rework.Dressed && before is { } from)
                {
                    taken.Add(mark.WearTo(from, after).Mm);
                }

                before = after;
            }
        }

        return taken;
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
