using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;

namespace ToolWear.Storage.Csv.Written;

/// <summary>
/// Moves "set aside" and "brought back" where heats would be refused in between: a tool that was brought back worked on
/// the same day, or heats were remembered late.
/// </summary>
internal static class StatesInOrder
{
    /// <summary>Moves them, as little as will do; where they stand in the histories is not changed by it.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="events">The events in the order of the histories, rearranged here.</param>
    public static void Arrange(Shop shop, List<RankedEvent> events)
    {
        (int At, int Shift)[] order = [.. Enumerable.Range(0, events.Count).Select(at => (at, 0))];
        IEnumerable<IGrouping<long, int>> tools = Enumerable
            .Range(0, events.Count)
            .Where(at => events[at].Tool != 0)
            .GroupBy(at => events[at].Tool);
        foreach (int[] tool in tools.Select(tool => tool.ToArray()))
        {
            if (Array.Exists(tool, at => events[at].What is ToolSetAside or ToolLent))
            {
                ArrangeOne(shop, events, tool, order);
            }
        }

        RankedEvent[] arranged =
        [
            .. Enumerable.Range(0, events.Count).OrderBy(at => order[at]).Select(at => events[at]),
        ];
        events.Clear();
        events.AddRange(arranged);
    }

    private static void ArrangeOne(Shop shop, List<RankedEvent> events, int[] tool, (int At, int Shift)[] order)
    {
        int aside = -1;
        for (int i = 0; i < tool.Length; i++)
        {
            switch (events[tool[i]].What)
            {
                case ToolSetAside or ToolLent:
                    aside = tool[i];
                    break;
                case ToolBroughtBack or ToolTakenBack:
                    aside = -1;
                    break;
                case HeatsWorked heats when aside >= 0 && shop.Sessions[heats.Session].On > events[aside].Place.Day:
                    int back = Array.Find(tool[i..], at => events[at].What is ToolBroughtBack or ToolTakenBack);
                    if (back > 0)
                    {
                        order[back] = (tool[i], -1);
                    }
                    else
                    {
                        order[aside] = (LastHeats(events, tool), 1);
                    }

                    aside = -1;
                    break;
                case ToolScrapped:
                    return;
                default:
                    break;
            }
        }
    }

    private static int LastHeats(List<RankedEvent> events, int[] tool) =>
        tool.TakeWhile(at => events[at].What is not ToolScrapped).Last(at => events[at].What is HeatsWorked);
}
