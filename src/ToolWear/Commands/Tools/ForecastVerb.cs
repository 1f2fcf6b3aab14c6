using System.CommandLine;
using ToolWear.Commands.Calls;
using ToolWear.Core.Wear;
using ToolWear.Results;

namespace ToolWear.Commands.Tools;

/// <summary>forecast: every gauge mark of every tool in service.</summary>
internal static class ForecastVerb
{
    private const double LeastLoad = 0.1;
    private const double MostLoad = 10;

    private static readonly Option<string?> Harder = Common.Text("--harder", "C", Words.HelpHarder);

    public static Command Make(Site site) =>
        Common.Verb(
            site,
            "forecast",
            "Shows how far each gauge mark of the tools in service is worn, and heats left.",
            "forecast --as csv",
            [Harder],
            Run
        );

    private static void Run(Call call)
    {
        double load = call.Or(Harder, 1);
        if (load is < LeastLoad or > MostLoad)
        {
            throw RefusedException.WrongUsage(Words.LoadOutOfRange(Harder.Name, load, LeastLoad, MostLoad));
        }

        using Bench bench = call.ToRead();
        ShopForecasts forecasts = ShopForecasts.Of(bench.Shop);
        call.Print(
            ForecastTable.Of(forecasts.InService.SelectMany(tool => tool.Gauges), call.Units(bench.Shop), load),
            Words.ShopHeading(bench.Shop, call.Units(bench.Shop)) + Words.LoadHeading(load),
            $"\n{Words.LeftExplained}\n{Words.NotFollowedMark} {Words.NotFollowed}\n{Words.ForecastBasis}\n{Words.ForecastCaution}\n"
        );
    }
}
