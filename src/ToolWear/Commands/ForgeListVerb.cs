using System.CommandLine;
using ToolWear.Core.Planning;
using ToolWear.Results;
using ToolWear.Sheets;

namespace ToolWear.Commands;

/// <summary>forge-list: what to forge, how many, when, from which bar.</summary>
internal static class ForgeListVerb
{
    private static readonly Option<string?> Sure = Common.Text(
        "--sure",
        "P",
        "how sure, a share such as 0.9; usually the shop's own"
    );
    private static readonly Option<string?> Until = Common.Text(
        "--until",
        "DATE",
        "the last session day that counts; usually all open orders"
    );

    public static Command Make(Site site) =>
        Common.Verb(
            site,
            "forge-list",
            "Shows which tools to forge for the open orders: how many, by when, why, from which bar, what to buy.",
            "forge-list --sure 0.9 --until 2027-01-31",
            [Sure, Until],
            Run,
            Words.HelpSheet
        );

    private static void Run(Call call)
    {
        string format = call.Format("html");
        double? sure = PlanVerb.ReadSure(call, Sure);
        DateOnly? until = call.Day(Until);
        if (until < call.On)
        {
            throw RefusedException.WrongUsage(
                $"--until {until:yyyy-MM-dd} lies before the day of the plan, {call.On:yyyy-MM-dd}"
            );
        }

        using Bench bench = call.ToRead();
        ForgeList list = PlanOfStore.List(call, bench, sure, until);
        if (format == "html")
        {
            call.Print(ForgeSheet.Of(list, bench.Shop, call.On, call.Units(bench.Shop), PlanOfStore.Notes(list)));
            return;
        }

        string reasons = string.Concat(list.Batches.Select(batch => Words.BatchReason(batch) + "\n"));
        string bars = string.Concat(list.Cuts.Shared.Select(sentence => sentence + ".\n"));
        string heading =
            Words.ShopHeading(bench.Shop, call.Units(bench.Shop))
            + (list.Batches.IsEmpty ? Words.NothingToForge + "\n" : "");
        call.Print(ForgeTable.Of(list, call.Units(bench.Shop)), heading, $"\n{reasons}{bars}{PlanOfStore.Below(list)}");
    }
}
