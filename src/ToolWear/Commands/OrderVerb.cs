using System.CommandLine;
using ToolWear.Core.Ledger;
using ToolWear.Core.Tools;

namespace ToolWear.Commands;

/// <summary>order: enters or changes an order.</summary>
internal static class OrderVerb
{
    private static readonly Argument<string> Order = new("ORDER") { Description = "the order's name" };
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
            "Enters an order, or changes what is given of one that there is.",
            "order spring-fair --pattern hatchet --heads 18 --due 2027-04-01",
            [Order, Pattern, Heads, Due, State],
            Run
        );

    private static void Run(Call call)
    {
        string name = call.Get(Order);
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

    private static RefusedException Missing(string option) =>
        RefusedException.WrongUsage($"a new order wants {option} too");
}
