using System.CommandLine;
using ToolWear.Commands.Calls;
using ToolWear.Core.Ledger;
using ToolWear.Core.Planning;
using ToolWear.Core.Tools;
using ToolWear.Results;

namespace ToolWear.Commands.Plans;

/// <summary>order: enters or changes an order.</summary>
internal static class OrderVerb
{
    private static readonly Argument<string> Order = FigureOptions.Maybe(
        "ORDER",
        "the order's name; without one, the open orders are shown"
    );
    private static readonly Option<string?> Pattern = Common.Text("--pattern", "P", "the pattern");
    private static readonly Option<string?> Heads = Common.Text("--heads", "N", "how many heads");
    private static readonly Option<string?> Due = Common.Text("--due", "DATE", "the day it is due");
    private static readonly Option<string?> State = Common.Text(
        "--state",
        "STATE",
        string.Join(", ", OrderDescribed.StateWords.All)
    );

    public static Command Make(Site site) =>
        Common.Verb(
            site,
            "order",
            "Enters an order, or changes what is given of one that there is; without a name shows the open orders, and\n"
                + "what cannot be done in time.",
            "order spring-fair --pattern hatchet --heads 18 --due 2027-04-01",
            [Order, Pattern, Heads, Due, State],
            Run
        );

    private static void Run(Call call)
    {
        string name = call.Get(Order);
        if (name.Length == 0)
        {
            Show(call);
            return;
        }

        if (ToolMark.Fault("order", name) is { } fault)
        {
            throw RefusedException.WrongUsage(fault);
        }

        string? pattern = call.Get(Pattern);
        int? heads = call.Whole(Heads);
        DateOnly? due = call.Day(Due);
        OrderState? state = call.Word(OrderDescribed.StateWords, State);
        using Bench bench = call.ToWrite();
        OrderDescribed? before = bench.Shop.Orders.GetValueOrDefault(name);
        call.Record(
            bench,
            new OrderDescribed(
                name,
                pattern ?? before?.Pattern ?? throw Missing("--pattern"),
                heads ?? before?.Heads ?? throw Missing("--heads"),
                due ?? before?.DueOn ?? throw Missing("--due"),
                state ?? before?.State ?? OrderState.Open
            )
        );
    }

    private static void Show(Call call)
    {
        foreach (Option<string?> option in (Option<string?>[])[Pattern, Heads, Due, State])
        {
            if (call.Get(option) is not null)
            {
                throw RefusedException.WrongUsage($"{option.Name} wants the name of an order too");
            }
        }

        using Bench bench = call.ToRead();
        OrderBook book = OrderBook.Of(bench.Shop, call.On);
        string late = string.Concat(book.Calendar.Late.Select(each => Words.Late(each) + "\n"));
        string capacities = string.Concat(book.Calendar.Capacities.Select(each => Words.Capacity(each) + "\n"));
        call.Print(
            OrderTable.Of(book),
            book.Orders.IsEmpty ? $"{Words.NoOrders}\n" : "",
            $"\n{late}{capacities}{Words.DoneByBasis}\n"
        );
    }

    private static RefusedException Missing(string option) =>
        RefusedException.WrongUsage($"a new order wants {option} too");
}
