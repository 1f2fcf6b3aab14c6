using System.Collections.Immutable;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;

namespace ToolWear.Storage.Tests.Csv;

/// <summary>The histories of a shop's tools as lines, so that two shops can be compared whatever their entries' numbers and marks.</summary>
internal static class Histories
{
    /// <summary>Heats, readings, reworks, findings and ends, each with its day, its session and its stage.</summary>
    public static IReadOnlyList<string> Of(Shop shop) =>
        [.. shop.Tools.Values.SelectMany((tool, i) => Lines(shop, tool).Select(line => $"{i}: {line}"))];

    /// <summary>Set aside and brought back: in their own order, since export may move them within a day.</summary>
    public static IReadOnlyList<string> StatesOf(Shop shop) =>
        [
            .. shop.Tools.Values.SelectMany(
                (tool, i) =>
                    shop.HistoryOf(tool)
                        .Where(each =>
                            each.Entered.What is ToolSetAside or ToolBroughtBack or ToolLent or ToolTakenBack
                        )
                        .Select(each => $"{i}: {Plain(each.Entered.What)}")
                        .Append($"{i}: {tool.State} {tool.StateOn:O} {tool.Tool.Start}")
            ),
        ];

    private static List<string> Lines(Shop shop, ToolInShop tool)
    {
        List<string> lines = [];
        double weighted = 0;
        HeatsWorked? last = null;
        foreach ((HistoryPlace place, Entered entered) in shop.HistoryOf(tool))
        {
            if (entered.What is ToolStartedHere or ToolSetAside or ToolBroughtBack or ToolLent or ToolTakenBack)
            {
                continue;
            }

            string about = About(shop, place);
            if (entered.What is HeatsWorked heats)
            {
                weighted += shop.Weighted(tool.Tool, heats);
                bool joins =
                    last is not null && (last.Session, last.Work, last.How) == (heats.Session, heats.Work, heats.How);
                last = joins ? heats with { Heats = heats.Heats + last!.Heats } : heats;
                if (joins)
                {
                    lines.RemoveAt(lines.Count - 1);
                }

                lines.Add($"{about} {last.Session} {last.Work} {last.Heats} {last.How} {weighted:R}");
            }
            else
            {
                last = null;
                lines.Add($"{about} {Plain(entered.What)} {weighted:R}");
            }
        }

        return lines;
    }

    private static string About(Shop shop, HistoryPlace place) =>
        $"{place.Day:O} {shop.Sessions.Values.FirstOrDefault(session => session.Opening == place.Opening)?.Name} {place.Stage}";

    /// <summary>The entry without its tool's mark, which may have changed.</summary>
    private static string Plain(LedgerEntry what) =>
        what switch
        {
            ToolMeasured e => (e with { Tool = default }).ToString(),
            ToolReworked e => (e with { Tool = default }).ToString(),
            ToolLookedOver e => (e with { Tool = default }).ToString(),
            ToolScrapped e => (e with { Tool = default, Into = null }).ToString(),
            ToolSetAside e => (e with { Tool = default }).ToString(),
            ToolBroughtBack e => (e with { Tool = default }).ToString(),
            ToolLent e => (e with { Tool = default }).ToString(),
            ToolTakenBack e => (e with { Tool = default }).ToString(),
            ToolLookedFor e => (e with { Tool = default }).ToString(),
            _ => what.ToString(),
        };
}
