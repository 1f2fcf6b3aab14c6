using System.Collections.Immutable;
using ToolWear.Core.Deeds;
using ToolWear.Core.Findings;
using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Core.Wear;
using ToolWear.Results.Tools;
using ToolWear.Screens.Drawing;

namespace ToolWear.Screens.Hammer;

/// <summary>The text and the large figures of the tally.</summary>
internal static class HammerText
{
    private const string HeadsDone = "Heads:";

    /// <summary>Draws the tally.</summary>
    /// <param name="body">Where to.</param>
    /// <param name="shop">The shop.</param>
    /// <param name="session">The session.</param>
    /// <param name="board">What stands at the hammer.</param>
    /// <param name="forecasts">The forecasts of before, null where there are none.</param>
    public static void Draw(Picture body, Shop shop, string session, Board board, ShopForecasts? forecasts)
    {
        string[] below =
        [
            .. Below(body.Width, shop, session, board).SelectMany(line => Picture.Wrap(line, Math.Max(10, body.Width))),
        ];
        int room = Math.Max(0, body.Height - below.Length);
        Panels.Draw(body, room, [.. Facts(shop, session, board, forecasts)]);
        for (int i = 0; i < below.Length; i++)
        {
            body.Put(0, room + i, below[i]);
        }
    }

    /// <summary>How many more heats of its work a tool should do today: up to where its verdict would be "near its limit".</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="forecasts">The forecasts of before.</param>
    /// <param name="pattern">The pattern's name, null for none.</param>
    /// <param name="at">The tool and its work.</param>
    /// <returns>Whole heats as worked; null where no forecast speaks.</returns>
    public static int? MoreToday(Shop shop, ShopForecasts? forecasts, string? pattern, BoardTool at)
    {
        if (forecasts?.Find(at.Tool) is not { } forecast)
        {
            return null;
        }

        Tool tool = shop.Tools[at.Tool].Tool;
        double since = shop.Tools[at.Tool]
            .Events.Where(entered => entered.Number > forecasts.Shop.Ledger.Count)
            .Select(entered => entered.What)
            .OfType<HeatsWorked>()
            .Sum(heats => shop.Weighted(tool, heats));
        return forecast.EnoughOf(shop.WeightOf(tool, at.Work, pattern), since);
    }

    private static IEnumerable<PanelFacts> Facts(Shop shop, string session, Board board, ShopForecasts? forecasts)
    {
        foreach (BoardTool tool in board.Chosen.Take(Board.MostRows))
        {
            ToolInShop known = shop.Tools[tool.Tool];
            string? wrong = LookedOver.Of(shop, known).Forbids is { } found ? FindingWords.NotToBeUsed(found) : null;
            string set = board.Together.Contains(tool) ? " +" : "";
            yield return new PanelFacts(
                known.Mark.Text,
                $"{RackTable.PlaceOrForm(known.Tool)}, {Works.Words.Word(tool.Work)}{set}",
                Board.Tallied(shop, session, tool).ToString(),
                wrong is null ? MoreToday(shop, forecasts, shop.Sessions[session].Opened.Pattern, tool) : null,
                wrong ?? (Dressing.Of(shop, known) is { } dressing ? FindingWords.DressShortly(dressing) : null)
            );
        }
    }

    private static IEnumerable<string> Below(int width, Shop shop, string session, Board board)
    {
        ImmutableArray<BoardRow> rows = board.Rows(shop);
        string shared = string.Join(
            "   ",
            rows.Select((row, i) => (row, i))
                .Where(each => each.row.IsShared)
                .Select(each => Share(each.i + 1, [.. Marks(shop, each.row.Tools)]))
        );
        if (shared.Length > 0)
        {
            yield return shared;
        }

        if (board.Together.Length > 1)
        {
            yield return SetOf([.. Marks(shop, board.Together)]);
        }

        ImmutableArray<PatternStage> stages = LastTime.Stages(shop, board.Pattern);
        if (!stages.IsEmpty)
        {
            IEnumerable<string> items = stages
                .Take(HammerScreen.MostStages)
                .Select((stage, i) => $"{(char)('a' + i)} {stage.Name} {HeadsAt(shop, session, stage)}");
            foreach (string line in Picture.Flow([HeadsDone, .. items], width))
            {
                yield return line;
            }
        }
    }

    private static int HeadsAt(Shop shop, string session, PatternStage stage) =>
        shop.Sessions[session].HeadsByStage.GetValueOrDefault(stage.Name);

    private static IEnumerable<string> Marks(Shop shop, ImmutableArray<BoardTool> tools) =>
        tools.Select(tool => shop.Tools[tool.Tool].Mark.Text);

    private static string Share(int key, ImmutableArray<string> marks) =>
        $"{key} {string.Join(" and ", marks)} share a heat";

    private static string SetOf(ImmutableArray<string> marks) => $"Space: a heat to {string.Join(" + ", marks)}";
}
