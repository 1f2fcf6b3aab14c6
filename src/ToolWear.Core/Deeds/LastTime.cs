using System.Collections.Immutable;
using ToolWear.Core.Findings;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Core.Wear;
using ToolWear.Core.Wear.Verdicts;

namespace ToolWear.Core.Deeds;

/// <summary>What stood at the hammer last time, read from the ledger, and what to offer where nothing did.</summary>
public static class LastTime
{
    /// <summary>The pattern of the last session, null where there was none.</summary>
    /// <param name="shop">The shop.</param>
    /// <returns>Its name.</returns>
    public static string? Pattern(Shop shop) => Sessions(shop).LastOrDefault()?.Opened.Pattern;

    /// <summary>The board to offer for a pattern: as in its last session, else the tools to use next.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="pattern">The pattern, null for none.</param>
    /// <param name="forecasts">The forecasts, null while there are none.</param>
    /// <returns>The board; only tools that are in service and may be offered.</returns>
    public static Board Of(Shop shop, string? pattern, ShopForecasts? forecasts)
    {
        Session? last = Sessions(shop).LastOrDefault(session => session.Opened.Pattern == pattern);
        Board board = last is null
            ? Board.Empty
            : InSession(shop, last).Without(tool => !MayBeNext(shop, forecasts, tool));
        return (board.Chosen.IsEmpty ? board with { Chosen = Next(shop, pattern, forecasts) } : board) with
        {
            Pattern = pattern,
        };
    }

    /// <summary>The board of a session that goes on: what was chosen for it, and what was tallied besides; where nobody
    /// chose, its own tallies and what was offered for it.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="open">The session.</param>
    /// <param name="forecasts">The forecasts, null while there are none.</param>
    /// <returns>The board.</returns>
    public static Board GoingOn(Shop shop, Session open, ShopForecasts? forecasts)
    {
        Board own = InSession(shop, open);
        if (open.Opened.AtHammer is { } chosen)
        {
            (BoardTool Tool, bool IsInSet)[] there =
            [
                .. from each in chosen
                let tool = shop.TryFind(each.Tool, out ToolInShop? found) ? found : null
                where tool is { State: ToolState.InService }
                select (new BoardTool(tool.Id, each.Work), each.Together),
            ];
            return own with
            {
                Chosen = [.. there.Select(each => each.Tool).Union(own.Chosen).Take(Board.MostRows)],
                Together = [.. there.Where(each => each.IsInSet).Select(each => each.Tool).Union(own.Together)],
            };
        }

        Board offered = Of(shop, open.Opened.Pattern, forecasts);
        return own with
        {
            Pattern = open.Opened.Pattern,
            Chosen = [.. own.Chosen.Union(offered.Chosen).Take(Board.MostRows)],
            Together = own.Together.IsEmpty ? offered.Together : own.Together,
        };
    }

    /// <summary>What a tool can be tallied as under a pattern: the works of its stages, else its main work.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="tool">The tool.</param>
    /// <param name="pattern">The pattern, null for none.</param>
    /// <returns>At least one; those of the pattern say so.</returns>
    public static ImmutableArray<(BoardTool Tool, bool IsOfPattern)> Works(Shop shop, ToolInShop tool, string? pattern)
    {
        ImmutableArray<(BoardTool, bool)> works =
        [
            .. Stages(shop, pattern)
                .Where(stage => Fits(stage, tool.Tool))
                .Select(stage => (new BoardTool(tool.Id, stage.Work ?? tool.Tool.MainWork), true))
                .Distinct(),
        ];
        return works.IsEmpty ? [(new BoardTool(tool.Id, tool.Tool.MainWork), false)] : works;
    }

    /// <summary>The stages of a pattern.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="pattern">The pattern, null for none.</param>
    /// <returns>Its stages, none where there is no such pattern.</returns>
    public static ImmutableArray<PatternStage> Stages(Shop shop, string? pattern) =>
        pattern is not null && shop.Patterns.TryGetValue(pattern, out PatternDescribed? described)
            ? described.Stages
            : [];

    /// <summary>Whether a tool is of the sort that a stage uses.</summary>
    /// <param name="stage">The stage.</param>
    /// <param name="tool">The tool.</param>
    /// <returns>True where form, place and eye agree.</returns>
    public static bool Fits(PatternStage stage, Tool tool) =>
        stage.Form == tool.Form && stage.Place == tool.Place && (stage.Eye is null || stage.Eye == tool.Eye);

    // the forecasts may be those of before: what was found since counts at once
    private static bool MayBeNext(Shop shop, ShopForecasts? forecasts, long tool) =>
        ShopVerdicts.WithoutForecast(shop, shop.Tools[tool]).MayBeNext
        && forecasts?.VerdictOf(tool)?.Reasons.Any(each => each.Verdict is Verdict.PastItsLimit or Verdict.NearItsLimit)
            != true;

    private static IEnumerable<Session> Sessions(Shop shop) =>
        shop.Sessions.Values.OrderBy(session => (session.On, session.Opening));

    private static Board InSession(Shop shop, Session session)
    {
        ImmutableArray<(ToolInShop Tool, Entered Entered, HeatsWorked Heats)> tallied =
        [
            .. from tool in shop.Tools.Values
            where tool.State == ToolState.InService
            from entered in tool.Events
            let heats = entered.What as HeatsWorked
            where heats?.Session == session.Name && heats.How == HeatsHow.Counted
            orderby entered.Number
            select (tool, entered, heats),
        ];
        return new Board(
            session.Opened.Pattern,
            [.. tallied.Select(each => new BoardTool(each.Tool.Id, each.Heats.Work)).Distinct().Take(Board.MostRows)],
            [.. Set(shop, session, [.. tallied.Select(each => (each.Tool.Id, each.Entered, each.Heats))])]
        );
    }

    /// <summary>The tools that got a whole heat at one key press: their entries bear one moment.</summary>
    private static IEnumerable<BoardTool> Set(
        Shop shop,
        Session session,
        ImmutableArray<(long Tool, Entered Entered, HeatsWorked Heats)> tallied
    )
    {
        // what was imported bears one moment altogether, its opening too
        DateTimeOffset opened = shop.Ledger[(int)session.Opening - 1].At;
        return tallied
                .Where(each => each.Entered.At > opened && each.Heats.Heats == Heats.Of(1))
                .GroupBy(each => each.Entered.At)
                .LastOrDefault(heat => heat.Skip(1).Any())
                ?.Select(each => new BoardTool(each.Tool, each.Heats.Work))
            ?? [];
    }

    private static ImmutableArray<BoardTool> Next(Shop shop, string? pattern, ShopForecasts? forecasts)
    {
        ImmutableHashSet<long> next = forecasts is null ? [] : NextToTake.Of(forecasts);
        IEnumerable<BoardTool?> each =
            from stage in Stages(shop, pattern)
            let fitting = shop
                .Tools.Values.Where(tool => tool.State == ToolState.InService && Fits(stage, tool.Tool))
                .Where(tool => MayBeNext(shop, forecasts, tool.Id))
                .OrderByDescending(tool => next.Contains(tool.Id))
                .ThenBy(tool => tool, RackOrder.Instance)
                .FirstOrDefault()
            select fitting is null ? null : (BoardTool?)new BoardTool(fitting.Id, stage.Work ?? fitting.Tool.MainWork);
        return [.. each.OfType<BoardTool>().Distinct().Take(Board.MostRows)];
    }
}
