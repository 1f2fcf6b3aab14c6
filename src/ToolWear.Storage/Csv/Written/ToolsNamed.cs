using System.Collections.Immutable;
using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;

namespace ToolWear.Storage.Csv.Written;

/// <summary>Which tool an entry meant that names one by the mark of its time: marks change hands.</summary>
internal static class ToolsNamed
{
    /// <summary>The tools meant by "made into" and by measured eyes.</summary>
    /// <param name="shop">The shop.</param>
    /// <returns>The tools' numbers by the number of the entry.</returns>
    public static ImmutableDictionary<long, long> In(Shop shop)
    {
        Dictionary<ToolMark, long> inUse = [];
        Dictionary<ToolMark, long> gone = [];
        Dictionary<long, long> named = [];
        foreach (Entered entered in shop.Ledger.Where(each => !shop.CrossedOut.ContainsKey(each.Number)))
        {
            switch (entered.What)
            {
                case ToolAdded e:
                    inUse[e.Tool.Mark] = entered.Number;
                    break;
                case ToolRemarked e when inUse.Remove(e.From, out long tool):
                    inUse[e.To] = tool;
                    break;
                case ToolScrapped e:
                    if (e.Into is { } into)
                    {
                        named[entered.Number] = Find(into);
                    }

                    if (inUse.Remove(e.Tool, out long scrapped))
                    {
                        gone[e.Tool] = scrapped;
                    }

                    break;
                default:
                    break;
            }
        }

        return shop.EyeMakers.AddRange(named);

        long Find(ToolMark mark) => inUse.TryGetValue(mark, out long tool) ? tool : gone[mark];
    }
}
