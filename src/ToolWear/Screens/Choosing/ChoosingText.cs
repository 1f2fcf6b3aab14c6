using System.Collections.Immutable;
using ToolWear.Core.Deeds;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Core.Wear;
using ToolWear.Pens;
using ToolWear.Results.Tools;
using ToolWear.Screens.Drawing;
using ToolWear.Screens.ToolRack;

namespace ToolWear.Screens.Choosing;

/// <summary>The text of choosing tools and pattern.</summary>
public static class ChoosingText
{
    private const int MostPattern = 24;
    private const int Mark = 5;
    private const int What = 14;
    private const int Work = 26;
    private const int Steel = 37;
    private const int Verdict = 48;

    /// <summary>What can be chosen: what was offered first, then the tools of the pattern, then the rest of the rack.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="pattern">The pattern, null for none.</param>
    /// <param name="offered">What was offered, in the order of its keys.</param>
    /// <returns>A row for each tool and work.</returns>
    public static ImmutableArray<BoardTool> Candidates(Shop shop, string? pattern, ImmutableArray<BoardTool> offered) =>
        [
            .. offered
                .Where(each => shop.Tools[each.Tool].State == ToolState.InService)
                .Concat(
                    ToolRackText
                        .InService(shop)
                        .SelectMany(tool => LastTime.Works(shop, tool, pattern))
                        .OrderByDescending(each => each.IsOfPattern)
                        .Select(each => each.Tool)
                )
                .Distinct(),
        ];

    /// <summary>How many rows of the list fit.</summary>
    /// <param name="width">Columns.</param>
    /// <param name="room">Rows of the body.</param>
    /// <param name="shop">The shop.</param>
    /// <param name="board">What is chosen.</param>
    /// <returns>Rows, at least one.</returns>
    public static int RowsFor(int width, int room, Shop shop, Board board)
    {
        int cautions = Cautions(width, shop, board).Length;
        return Math.Max(1, room - 1 - (cautions + 6 <= room ? cautions : 0));
    }

    /// <summary>Draws it.</summary>
    /// <param name="body">Where to.</param>
    /// <param name="shop">The shop.</param>
    /// <param name="board">What is chosen.</param>
    /// <param name="candidates">What can be chosen.</param>
    /// <param name="place">Where one is in the list.</param>
    /// <param name="forecasts">The forecasts, null while there are none.</param>
    public static void Draw(
        Picture body,
        Shop shop,
        Board board,
        ImmutableArray<BoardTool> candidates,
        ListPlace place,
        ShopForecasts? forecasts
    )
    {
        string? pattern = board.Pattern is { } name ? Shortened.In(name, MostPattern) : null;
        body.Put(0, 0, Words.PatternChosen(pattern, board.Chosen.Length, shop.Sessions.IsEmpty), Ink.Strong);
        int rows = RowsFor(body.Width, body.Height, shop, board);
        for (int i = place.First; i < Math.Min(candidates.Length, place.First + rows); i++)
        {
            int y = 1 + i - place.First;
            DrawRow(body, y, shop, board, candidates[i], forecasts);
            if (i == place.Chosen)
            {
                body.Tint(y, Ink.Chosen);
            }
        }

        int at = 1 + rows;
        foreach (string line in Cautions(body.Width, shop, board))
        {
            body.Put(0, at++, line, Ink.Warn);
        }
    }

    private static void DrawRow(
        Picture body,
        int y,
        Shop shop,
        Board board,
        BoardTool candidate,
        ShopForecasts? forecasts
    )
    {
        ToolInShop tool = shop.Tools[candidate.Tool];
        int key = board.Chosen.IndexOf(candidate);
        body.Put(
            0,
            y,
            key < 0 ? " ."
                : key < Board.MostRows ? $"[{key + 1}]"
                : "[ ]",
            Ink.Key
        );
        body.Put(3, y, board.Together.Contains(candidate) ? "+" : "", Ink.Key);
        body.Put(Mark, y, tool.Mark.Text, Ink.Strong, What - Mark - 1);
        body.Put(What, y, RackTable.PlaceOrForm(tool.Tool), Ink.Plain, Work - What - 1);
        body.Put(Work, y, Works.Words.Word(candidate.Work), Ink.Plain, Steel - Work - 1);
        body.Put(Steel, y, tool.Tool.Steel ?? Words.UnknownSteel, Ink.Plain, Verdict - Steel - 1);
        if (forecasts?.VerdictOf(candidate.Tool) is { } judged)
        {
            Ink ink = judged.Verdict < Core.Wear.Verdicts.Verdict.LookItOver ? Ink.Warn : Ink.Plain;
            body.Put(Verdict, y, body.Width >= 100 ? $"{judged.Word}: {judged.Why}" : judged.Word, ink);
        }
    }

    private static ImmutableArray<string> Cautions(int width, Shop shop, Board board)
    {
        ImmutableArray<Tool> tools = [.. board.Chosen.Select(each => shop.Tools[each.Tool].Tool).Distinct()];
        bool isBlind = board.Chosen.Any(each => each.Work is Core.Tools.Work.Slitting or Core.Tools.Work.Opening);
        string text = string.Join(
            '\n',
            new[]
            {
                Words.SteelsTonight(tools),
                Words.OneLine(Words.HammerCaution),
                Words.SteelCaution(tools),
                isBlind ? Words.OneLine(Words.BlindHoleCaution) : "",
            }.Where(each => each.Length > 0)
        );
        return tools.IsEmpty ? [] : [.. Picture.Wrap(text, Math.Max(10, width))];
    }
}
