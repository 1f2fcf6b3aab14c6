using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Tools;

namespace ToolWear.Core.Shops;

/// <summary>What follows from entries of tools: they come, are stamped anew, go aside, are lent, looked for and scrapped.</summary>
internal static class ToolArms
{
    internal static Step Add(Shop shop, Entered entered, ToolAdded e)
    {
        Tool tool = e.Tool.WithOverall();
        if (shop.Marks.ContainsKey(tool.Mark))
        {
            return $"mark {tool.Mark} is taken: a mark is unique among the tools that are not scrapped";
        }

        if (tool.Refusal() is { } refusal)
        {
            return $"{tool.Mark}: {refusal}";
        }

        if (tool.MadeOn > entered.Day)
        {
            return Future(tool.MadeOn.Value, entered.Day);
        }

        ToolInShop added = new(entered.Number, tool, ToolState.InService, DateOnly.MinValue, null, []);
        return With(shop, added) with { Marks = shop.Marks.Add(tool.Mark, added.Id) };
    }

    /// <summary>The tool is as it is told now; a gauge mark that was read stays, and so does the day of what happened.</summary>
    internal static Step Correct(Shop shop, Entered entered, ToolCorrected e)
    {
        if (!shop.Marks.TryGetValue(e.Tool.Mark, out long id))
        {
            return shop.NoTool(e.Tool.Mark);
        }

        ToolInShop was = shop.ToolShelf[id];
        Tool tool = e.Tool.WithOverall();
        string? gone = was
            .Events.Select(each => (each.What as ToolMeasured)?.Gauge ?? (each.What as ToolReworked)?.Gauge)
            .FirstOrDefault(gauge => gauge is not null && tool.Gauge(gauge) is null);
        DateOnly first = was.Events.Select(shop.SaidOn).Append(entered.Day).Min();
        return tool.Refusal() is { } refusal ? $"{tool.Mark}: {refusal}"
            : gone is not null ? $"{tool.Mark} was read at {gone}: it keeps that gauge mark"
            : tool.MadeOn > first
                ? $"{tool.Mark} has entries of {first:yyyy-MM-dd}: it was made by then, not on {tool.MadeOn:yyyy-MM-dd}"
            : With(
                shop,
                was with
                {
                    // who started it anew has said that its heats before are not known
                    Tool = was.Events.Exists(each => each.What is ToolStartedHere)
                        ? tool with
                        {
                            Start = ToolStart.Unknown,
                        }
                        : tool,
                }
            );
    }

    internal static Step Remark(Shop shop, ToolRemarked e)
    {
        if (!shop.Marks.TryGetValue(e.From, out long id))
        {
            return shop.NoTool(e.From);
        }

        if (shop.Marks.ContainsKey(e.To))
        {
            return $"mark {e.To} is taken: a mark is unique among the tools that are not scrapped";
        }

        ToolInShop tool = shop.ToolShelf[id];
        return With(shop, tool with { Tool = tool.Tool with { Mark = e.To } }) with
        {
            Marks = shop.Marks.Remove(e.From).Add(e.To, id),
        };
    }

    /// <summary>From now on nobody knows the heats the tool worked before: earlier readings no longer count.</summary>
    internal static Step StartHere(Shop shop, Entered entered, ToolStartedHere e)
    {
        if (!shop.Marks.TryGetValue(e.Tool, out long id))
        {
            return shop.NoTool(e.Tool);
        }

        ToolInShop tool = shop.ToolShelf[id];
        return With(
            shop,
            tool with
            {
                Tool = tool.Tool with { Start = ToolStart.Unknown },
                Events = [.. tool.Events.Where(each => each.What is not ToolMeasured).Select(WithoutSizes), entered],
            }
        );
    }

    private static Entered WithoutSizes(Entered entered) =>
        entered.What is ToolReworked rework
            ? entered with
            {
                What = rework with { Gauge = null, Before = null, After = null },
            }
            : entered;

    internal static Step SetAside(Shop shop, Entered entered, ToolSetAside e) =>
        ChangeState(shop, entered, e.Tool, e.On, ToolState.InService, ToolState.SetAside, "set aside");

    internal static Step BringBack(Shop shop, Entered entered, ToolBroughtBack e) =>
        shop.TryFind(e.Tool, out ToolInShop? tool) && tool.Lent is { } lent
            ? $"{e.Tool} is lent to {FreeText.Shown(lent.To)}: take it back instead"
            : ChangeState(shop, entered, e.Tool, e.On, ToolState.SetAside, ToolState.InService, "brought back");

    private static Step ChangeState(
        Shop shop,
        Entered entered,
        ToolMark mark,
        DateOnly on,
        ToolState from,
        ToolState to,
        string how
    )
    {
        if (Refused(shop, entered, mark, on, out ToolInShop tool) is { } refusal)
        {
            return refusal;
        }

        if (tool.State != from)
        {
            return $"{mark} is {ToolStates.Words.Word(tool.State)}, so it cannot be {how}";
        }

        if (on < tool.StateOn)
        {
            return $"{mark} changed its state on {tool.StateOn:yyyy-MM-dd} last: give that day or a later one";
        }

        ToolInShop after = tool.With(entered) with { State = to, StateOn = on, Lent = entered.What as ToolLent };
        return With(shop, after);
    }

    internal static Step Scrap(Shop shop, Entered entered, ToolScrapped e)
    {
        if (Refused(shop, entered, e.Tool, e.On, out ToolInShop tool) is { } refusal)
        {
            return refusal;
        }

        if (e.Cause == ScrapCause.MadeInto != e.Into is not null)
        {
            return "the cause made-into goes with the mark of the tool it was made into, and only with it";
        }

        if (e.Into is { } into && (into == e.Tool || !shop.TryFind(into, out _)))
        {
            return into == e.Tool ? $"{into} cannot be made into itself" : shop.NoTool(into);
        }

        DateOnly last = tool.Events.Select(shop.SaidOn).Append(tool.StateOn).Max();
        if (e.On < last)
        {
            return $"{e.Tool} still has entries of {last:yyyy-MM-dd}: it cannot have been scrapped on {e.On:yyyy-MM-dd}";
        }

        ToolInShop after = tool.With(entered) with
        {
            State = ToolState.Scrapped,
            StateOn = e.On,
            Scrapped = e,
            Lent = null,
        };
        return With(shop, after) with
        {
            Marks = shop.Marks.Remove(e.Tool),
            MarksGone = shop.MarksGone.SetItem(e.Tool, tool.Id),
        };
    }

    /// <summary>Why nothing can be entered of a tool on a day: unknown, not made yet, scrapped by then, in the future.</summary>
    internal static string? Refused(Shop shop, Entered entered, ToolMark mark, DateOnly on, out ToolInShop tool)
    {
        bool found = shop.TryFind(mark, out ToolInShop? known);
        tool = known!;
        return !found ? shop.NoTool(mark)
            : on > entered.Day ? Future(on, entered.Day)
            : on < tool.Tool.MadeOn
                ? $"{mark} was made on {tool.Tool.MadeOn:yyyy-MM-dd}: nothing can have happened to it on {on:yyyy-MM-dd}"
            : tool.State == ToolState.Scrapped
            && entered.What is not HeatsWorked
            && (
                on > tool.StateOn
                || entered.What is ToolScrapped or ToolSetAside or ToolBroughtBack or ToolLent or ToolTakenBack
            )
                ? $"{mark} was scrapped on {tool.StateOn:yyyy-MM-dd}"
            : null;
    }

    /// <summary>The shop with a tool as it is now; this same one while its shelf is open.</summary>
    internal static Shop With(Shop shop, ToolInShop tool) =>
        shop.ToolShelf.With(tool.Id, tool) is var after && after == shop.ToolShelf
            ? shop
            : shop with
            {
                ToolShelf = after,
            };

    internal static string Future(DateOnly on, DateOnly today) =>
        $"{on:yyyy-MM-dd} lies in the future: today is {today:yyyy-MM-dd} by this computer's clock";

    internal static Step Lend(Shop shop, Entered entered, ToolLent e) =>
        string.IsNullOrWhiteSpace(e.To)
            ? $"{e.Tool}: say who has it"
            : ChangeState(shop, entered, e.Tool, e.On, ToolState.InService, ToolState.SetAside, "lent");

    internal static Step TakeBack(Shop shop, Entered entered, ToolTakenBack e) =>
        shop.TryFind(e.Tool, out ToolInShop? tool) && tool.State != ToolState.Scrapped && tool.Lent is null
            ? $"{e.Tool} is not lent out"
            : ChangeState(shop, entered, e.Tool, e.On, ToolState.SetAside, ToolState.InService, "taken back");

    internal static Step LookFor(Shop shop, Entered entered, ToolLookedFor e) =>
        Refused(shop, entered, e.Tool, e.On, out ToolInShop tool) is { } refusal
            ? refusal
            : With(shop, tool.With(entered));
}
