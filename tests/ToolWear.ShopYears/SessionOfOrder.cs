using System.Collections.Immutable;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Planning;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;

namespace ToolWear.ShopYears;

/// <summary>A session at the hammer on one order: head by head, stage by stage, the most used tool first.</summary>
internal sealed class SessionOfOrder(
    Shop shop,
    OrderDescribed order,
    List<TrueTool> tools,
    DateOnly today,
    Chance chance,
    double severity,
    double spread
)
{
    private readonly Dictionary<(TrueTool Tool, Work Work), double> worked = [];

    /// <summary>The place where no tool was left; null where the session was not stopped.</summary>
    public ToolPlace? Missing { get; private set; }

    /// <summary>Forges heads until they are done or a tool is missing.</summary>
    /// <returns>The heads done.</returns>
    public int Forge(int heads)
    {
        ImmutableArray<HeatsAHead> stages = HeatsAHead.Of(shop)[order.Pattern];
        for (int done = 0; done < heads; done++)
        {
            foreach (HeatsAHead stage in stages)
            {
                if (stage.Tools is { } place && stage.Weighted > 0 && !Work(stage, place))
                {
                    Missing = place;
                    return done;
                }
            }
        }

        return heads;
    }

    /// <summary>What is written down of it.</summary>
    public IEnumerable<LedgerEntry> Entries(string name, int heads, double readShare)
    {
        yield return new SessionOpened(name, today, order.Pattern, Care.Usual, null, null);
        foreach (((TrueTool tool, Work work), double heats) in worked)
        {
            int halves = Math.Max(1, (int)Math.Round(2 * heats));
            yield return new HeatsWorked(name, tool.Tool.Mark, work, Heats.OfHalves(halves), HeatsHow.Counted);
        }

        yield return new SessionClosed(name, heads);
        TrueTool[] used = [.. worked.Keys.Select(each => each.Tool).Distinct()];
        foreach (TrueTool tool in used)
        {
            foreach (LedgerEntry entry in After(tool, name, readShare))
            {
                yield return entry;
            }
        }

        if (heads > 0)
        {
            yield return heads == order.Heads
                ? order with
                {
                    State = OrderState.Done,
                }
                : order with
                {
                    Heads = order.Heads - heads,
                };
        }
    }

    // what is done is read at its end and scrapped; of the rest most are read the morning after
    private IEnumerable<LedgerEntry> After(TrueTool tool, string name, double readShare)
    {
        if (tool.IsDone || chance.Uniform() < readShare)
        {
            foreach ((string gauge, double mm) in tool.Read(chance))
            {
                yield return new ToolMeasured(tool.Tool.Mark, gauge, today, name, Length.FromMm(mm), null, null, null);
            }
        }

        if (tool.IsDone)
        {
            ScrapCause cause = tool.IsCracked ? ScrapCause.Cracked : ScrapCause.Worn;
            yield return new ToolScrapped(tool.Tool.Mark, today, cause, null, null);
            tools.Remove(tool);
        }
    }

    private bool Work(HeatsAHead stage, ToolPlace place)
    {
        double left = stage.Weighted * Math.Max(0.2, 1 + chance.Normal(spread));
        while (left > 1e-9)
        {
            // they stand in the order in which they were hung there
            TrueTool? tool = tools.Find(each =>
                ToolPlace.Of(each.Tool) == place && each.ReadyOn <= today && !each.IsDone
            );
            if (tool is null)
            {
                return false;
            }

            double given = tool.Work(left, severity);
            left -= given;
            (TrueTool, Work) key = (tool, stage.Stage.Work ?? tool.Tool.MainWork);
            worked[key] = worked.GetValueOrDefault(key) + (given / stage.Weight);
        }

        return true;
    }
}
