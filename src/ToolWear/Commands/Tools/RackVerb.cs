using System.CommandLine;
using ToolWear.Commands.Calls;
using ToolWear.Core.Wear;
using ToolWear.Core.Wear.Verdicts;
using ToolWear.Results;
using ToolWear.Sheets;

namespace ToolWear.Commands.Tools;

/// <summary>rack: the tools in service with their wear, what is left and the verdict.</summary>
internal static class RackVerb
{
    public static Command Make(Site site) =>
        Common.Verb(
            site,
            "rack",
            "Shows the tool rack: wear, heats left, the eye a drift would make now, the verdict.",
            "rack",
            [],
            Run,
            "Worn of limit in the shop's unit; heats left about, and nine times in ten between; > stands before the tool to\n"
                + "take next.\n"
                + Words.HelpSheet,
            "html"
        );

    private static void Run(Call call)
    {
        string format = call.Format();
        using Bench bench = call.ToRead();
        ShopForecasts forecasts = ShopForecasts.Of(bench.Shop);
        if (format == "html")
        {
            call.Print(RackSheet.Of(forecasts, call.On, call.Units(bench.Shop)));
            return;
        }

        string reasons = string.Concat(
            forecasts
                .InService.Select(tool => (tool.Tool.Mark, Verdict: forecasts.VerdictOf(tool)))
                .Where(each => each.Verdict.Verdict != Verdict.InsideItsLimit)
                .Select(each => $"{each.Mark}: {each.Verdict.Word}: {each.Verdict.Why}\n")
        );
        call.Print(
            RackTable.Of(forecasts, call.Units(bench.Shop)),
            Words.ShopHeading(bench.Shop, call.Units(bench.Shop)),
            $"\n{reasons}\n{Words.LeftExplained}\n{Words.NotFollowedMark} {Words.NotFollowed}\n{Words.ForecastBasis}\n{Words.ForecastCaution}\n{Words.EyeCaution}\n"
        );
    }
}
