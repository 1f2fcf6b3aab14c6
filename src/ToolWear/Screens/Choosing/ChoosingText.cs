using System.Collections.Immutable;
using ToolWear.Core.Deeds;
using ToolWear.Core.Findings;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Core.Wear;
using ToolWear.Pens;
using ToolWear.Results.Tools;
using ToolWear.Screens.Drawing;
using ToolWear.Screens.ToolRack;
using ToolWear.Wording;

namespace ToolWear.Screens.Choosing;

/// <summary>The text of choosing tools and pattern.</summary>
internal static class ChoosingText
{
    private const int MostPattern = 24;

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
        body.Put(0, 0, PatternChosen(pattern, board.Chosen.Length, shop.Sessions.IsEmpty), Ink.Strong);
        ImmutableArray<string> cautions = CautionsOf(body.Width, shop, board);
        int height = body.Height - 1 - (cautions.Length + 6 <= body.Height ? cautions.Length : 0);
        int y = body.PutList(
            1,
            height,
            candidates.Length,
            place,
            width => Columns(shop, board, candidates, forecasts, width)
        );
        foreach (string line in cautions)
        {
            body.Put(0, y++, line, Ink.Warn);
        }
    }

    private static IReadOnlyList<ListColumn> Columns(
        Shop shop,
        Board board,
        ImmutableArray<BoardTool> candidates,
        ShopForecasts? forecasts,
        int width
    )
    {
        ToolInShop Of(int row) => shop.Tools[candidates[row].Tool];
        Judged? VerdictOf(int row) => forecasts?.VerdictOf(candidates[row].Tool);
        string Key(int row) =>
            board.Chosen.IndexOf(candidates[row]) switch
            {
                < 0 => " .",
                var key and < Board.MostRows => $"[{key + 1}]",
                _ => "[ ]",
            };
        return
        [
            new("", 3, Key, _ => Ink.Key),
            new("", 1, row => board.Together.Contains(candidates[row]) ? "+" : "", _ => Ink.Key),
            new("", 8, row => Of(row).Mark.Text, _ => Ink.Strong),
            new("", 11, row => RackTable.PlaceOrForm(Of(row).Tool)),
            new("", 10, row => Works.Words.Word(candidates[row].Work)),
            new("", 10, row => Of(row).Tool.Steel ?? Cautions.UnknownSteel),
            new(
                "",
                Math.Max(0, width - 49),
                row =>
                    VerdictOf(row) is not { } judged ? ""
                    : width >= 99 ? $"{judged.Shown}: {judged.Why}"
                    : judged.Shown,
                row => VerdictOf(row) is { Verdict: < Verdict.LookItOver } ? Ink.Warn : Ink.Plain
            ),
        ];
    }

    private static ImmutableArray<string> CautionsOf(int width, Shop shop, Board board)
    {
        ImmutableArray<Tool> tools = [.. board.Chosen.Select(each => shop.Tools[each.Tool].Tool).Distinct()];
        bool isBlind = board.Chosen.Any(each => each.Work is Core.Tools.Work.Slitting or Core.Tools.Work.Opening);
        string text = string.Join(
            '\n',
            new[]
            {
                Cautions.SteelsTonight(tools),
                Cautions.HammerCaution,
                Cautions.SteelCaution(tools),
                isBlind ? Cautions.BlindHoleCaution : "",
            }.Where(each => each.Length > 0)
        );
        return tools.IsEmpty ? [] : [.. Picture.Wrap(text, Math.Max(10, width))];
    }

    private static string PatternChosen(string? pattern, int tools, bool isFirst) =>
        $"Pattern: {pattern ?? "none"}    "
        + (
            tools == 0 ? "no tool chosen yet: press Space on one"
            : isFirst ? $"{tools} chosen"
            : $"{tools} chosen, as last time where there was one"
        );
}
