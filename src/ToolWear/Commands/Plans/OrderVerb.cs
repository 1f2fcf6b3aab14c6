using System.CommandLine;
using ToolWear.Commands.Calls;
using ToolWear.Core.Ledger;
using ToolWear.Core.Planning;
using ToolWear.Core.Tools;
using ToolWear.Doors;
using ToolWear.Results.Plans;

namespace ToolWear.Commands.Plans;

/// <summary>order: enters or changes an order.</summary>
internal static class OrderVerb
{
    private static readonly Argument<string?> Order = Said.Maybe<string>(
            "ORDER",
            "the order's name; without one, the open orders are shown",
            (it, text) => ToolMark.Fault("order", text) is { } fault ? it.Refuse<string>(fault) : text
        )
        .Offering(shop => shop.Orders.Keys);
    private static readonly Option<string?> Pattern = Said.Pattern("the pattern");
    private static readonly Option<int?> Heads = Said.Whole("--heads", "N", "how many heads");
    private static readonly Option<string?> Due = Said.Day("--due", "the day it is due");
    private static readonly Option<OrderState?> State = Said.Word("--state", "STATE", OrderDescribed.StateWords);

    public static Verb Verb { get; } =
        new(
            "order",
            "Adds or changes an order; alone lists the open ones.",
            "order spring-fair --pattern hatchet --heads 18 --due 2027-04-01",
            [Order, Pattern, Heads, Due, State],
            Run,
            "Of an order on record only what you give is changed. The list says which orders cannot be done in time."
        );

    private static void Run(Call call)
    {
        if (call.Get(Order) is not { } name)
        {
            Show(call);
            return;
        }

        OrderDescribed? before = call.ToWrite().Shop.Orders.GetValueOrDefault(name);
        call.Record(
            new OrderDescribed(
                name,
                call.Get(Pattern) ?? before?.Pattern ?? throw Missing(Pattern),
                call.Get(Heads) ?? before?.Heads ?? throw Missing(Heads),
                call.Day(Due, isToCome: true) ?? before?.DueOn ?? throw Missing(Due),
                call.Get(State) ?? before?.State ?? OrderState.Open
            )
        );
    }

    private static void Show(Call call)
    {
        call.Without("needs the name of an order", Pattern, Heads, Due, State);
        OrderBook book = OrderBook.Of(
            call.Shop,
            call.On,
            PlanOfStore.List(call, call.Shop, sure: null, until: null).Calendar
        );
        string late = string.Concat(book.Calendar.Late.Select(each => PlanWords.Late(each) + "\n"));
        string capacities = string.Concat(book.Calendar.Capacities.Select(each => PlanWords.Capacity(each) + "\n"));
        call.Print(
            OrderTable.Columns.Over(book.Orders),
            book.Orders.IsEmpty ? $"{PlanWords.NoOrders}\n" : "",
            $"\n{late}{capacities}{DoneByBasis}\n"
        );
    }

    private static RefusedException Missing(Option option) =>
        RefusedException.WrongUsage($"A new order needs {option.Name}.");

    private const string DoneByBasis =
        "Done by: the day of the last head if the hammer runs on its days (set hammer_days), the first due comes first and new tools are ready as the forge list says.";
}
