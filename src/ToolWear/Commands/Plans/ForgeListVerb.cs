using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using ToolWear.Commands.Calls;
using ToolWear.Core.Ledger;
using ToolWear.Core.Planning;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Doors;
using ToolWear.Pens;
using ToolWear.Results;
using ToolWear.Results.Plans;
using ToolWear.Sheets;
using ToolWear.Wording;

namespace ToolWear.Commands.Plans;

/// <summary>forge-list: what to forge, how many, when, from which bar; and what if things were different.</summary>
internal static class ForgeListVerb
{
    private static readonly Option<double?> Sure = Said.Sure(
        "--sure",
        "how sure, a share such as 0.9; usually the shop's own"
    );
    private static readonly Option<string?> Until = Said.Day(
        "--until",
        "the last session day that counts; usually all open orders"
    );
    private static readonly Option<double?> IfSure = Said.Sure("--if-sure", "beside it: with this certainty");
    private static readonly Option<string[]> IfLost = new("--if-lost")
    {
        HelpName = "TOOL",
        Description = "beside it: with this tool lost (may be repeated)",
    };
    private static readonly Option<string[]> IfHeads = new("--if-heads")
    {
        HelpName = "ORDER=N",
        Description = "beside it: with so many heads more of an order (may be repeated)",
    };

    public static Verb Verb { get; } =
        new(
            "forge-list",
            "Says what to forge, by when, from which bar.",
            "forge-list --sure 0.9 --until 2027-01-31",
            [Sure, Until, IfSure, IfLost, IfHeads],
            Run,
            "It plans for the open orders and names what to buy. The text is for the shop wall. --if-... shows two answers side by side and records nothing.\n"
                + Verb.MakesSheet,
            "html"
        );

    private static void Run(Call call)
    {
        (double? sure, double? ifSure, DateOnly? until) = (
            call.Get(Sure),
            call.Get(IfSure),
            call.Day(Until, isToCome: true)
        );
        if (until < call.On)
        {
            throw RefusedException.WrongUsage(
                $"--until {until:yyyy-MM-dd} lies before the day of the plan, {call.On:yyyy-MM-dd}"
            );
        }

        ImmutableArray<(LedgerEntry Entry, string Words)> supposed =
        [
            .. call.Get(IfLost)!.Select(mark => Lost(call, mark)),
            .. call.Get(IfHeads)!.Select(text => More(call.Shop, text)),
        ];
        Step step = WhatIf.After(call.Shop, call.On, supposed.Select(each => each.Entry));
        Shop shop = step.After ?? throw RefusedException.WrongData(step.Refusal!);
        ForgeList list = PlanOfStore.List(call, call.Shop, sure, until);
        if (ifSure is not null || !supposed.IsEmpty)
        {
            ForgeList then = PlanOfStore.List(call, shop, ifSure ?? sure, until);
            IEnumerable<string> words = supposed.Select(each => each.Words);
            PrintBoth(call, new(list, then), [.. ifSure is { } p ? [PlanWords.IfSure(p)] : (string[])[], .. words]);
        }
        else if (call.Format == "html")
        {
            call.Print(ForgeSheet.Of(list, shop, call.On, call.Units));
        }
        else if (call.Format == "text")
        {
            call.Print(WallText.Of(list, call.Units, Words.DemoMark(call.Shop)));
        }
        else
        {
            call.Print(ForgeTable.Columns.Over(list.Batches));
        }
    }

    private static void PrintBoth(Call call, TwoForgeLists both, ImmutableArray<string> supposed)
    {
        Table table = BothTable.Columns.Over(both.Places);
        string after =
            $"\n{PlanWords.AsItIs}: {PlanWords.SideTotal(both.Now)}, {PlanWords.SideLate(both.Now)}\n"
            + $"If: {PlanWords.SideTotal(both.Then)}, {PlanWords.SideLate(both.Then)}\n\n{Cautions.ForecastCaution}\n";
        call.Print(table, $"{PlanWords.IfAll(supposed)} (nothing is recorded)\n\n", after);
    }

    private static (LedgerEntry, string) Lost(Call call, string text)
    {
        ToolInShop tool = ToolMark.TryParse(text, out ToolMark mark, out string refusal)
            ? call.Tool(mark)
            : throw RefusedException.WrongUsage(refusal);
        return (new ToolScrapped(tool.Mark, call.On, ScrapCause.Lost, null, null), PlanWords.IfLost(tool.Mark.Text));
    }

    private static (LedgerEntry, string) More(Shop shop, string text)
    {
        int at = text.LastIndexOf('=');
        OrderDescribed? order = at > 0 ? shop.Orders.GetValueOrDefault(text[..at]) : null;
        if (
            !int.TryParse(text[(at + 1)..], NumberStyles.None, CultureInfo.InvariantCulture, out int more)
            || more is < 1 or > 10_000
        )
        {
            throw RefusedException.WrongUsage($"--if-heads {text}: an order, = and heads more, such as hammers=12");
        }

        return order is { State: OrderState.Open }
            ? (order with { Heads = order.Heads + more }, PlanWords.IfHeads(order.Order, more))
            : throw RefusedException.WrongData($"--if-heads {text}: there is no open order of that name");
    }
}
