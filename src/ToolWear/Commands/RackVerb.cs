using System.CommandLine;
using ToolWear.Core.Wear;
using ToolWear.Core.Wear.Verdicts;
using ToolWear.Results;

namespace ToolWear.Commands;

/// <summary>rack: the tools in service with their wear, what is left and the verdict.</summary>
internal static class RackVerb
{
    public static Command Make(Site site) =>
        Common.Verb(
            site,
            "rack",
            "Shows the tool rack: worn of limit, heats left (about, and nine times in ten between), the eye a drift\n"
                + "would make now, the verdict; > stands before the tool to take next.",
            "rack",
            [],
            Run
        );

    private static void Run(Call call)
    {
        using Bench bench = call.ToRead();
        ShopForecasts forecasts = ShopForecasts.Of(bench.Shop);
        string reasons = string.Concat(
            forecasts
                .InService.Select(tool => (tool.Tool.Mark, Verdict: forecasts.VerdictOf(tool)))
                .Where(each => each.Verdict.Verdict != Verdict.InsideItsLimit)
                .Select(each => $"{each.Mark}: {each.Verdict.Word}: {each.Verdict.Why}\n")
        );
        call.Print(
            RackTable.Of(forecasts, call.Units(bench.Shop)),
            Words.ShopHeading(bench.Shop, call.Units(bench.Shop)),
            $"\n{reasons}\n{Words.NotFollowedMark} {Words.NotFollowed}\n{Words.ForecastBasis}\n{Words.ForecastCaution}\n{Words.EyeCaution}\n"
        );
    }
}
