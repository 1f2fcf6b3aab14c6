using System.CommandLine;
using ToolWear.Core.Wear;
using ToolWear.Results;

namespace ToolWear.Commands;

/// <summary>forecast: every gauge mark of every tool in service.</summary>
internal static class ForecastVerb
{
    public static Command Make(Site site) =>
        Common.Verb(
            site,
            "forecast",
            "Shows how far each gauge mark of the tools in service is worn, and heats left.",
            "forecast --as csv",
            [],
            Run
        );

    private static void Run(Call call)
    {
        using Bench bench = call.ToRead();
        ShopForecasts forecasts = ShopForecasts.Of(bench.Shop);
        call.Print(
            ForecastTable.Of(forecasts.InService.SelectMany(tool => tool.Gauges), call.Units(bench.Shop)),
            Words.ShopHeading(bench.Shop, call.Units(bench.Shop)),
            $"\n{Words.NotFollowedMark} {Words.NotFollowed}\n{Words.ForecastBasis}\n{Words.ForecastCaution}\n"
        );
    }
}
