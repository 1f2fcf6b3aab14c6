using System.CommandLine;
using ToolWear.Commands.Calls;
using ToolWear.Core.Wear;
using ToolWear.Results.Tools;
using ToolWear.Wording;

namespace ToolWear.Commands.Tools;

/// <summary>forecast: every gauge mark of every tool in service.</summary>
internal static class ForecastVerb
{
    private const double LeastLoad = 0.1;
    private const double MostLoad = 10;

    private static readonly Option<double?> Harder = Said.Number(
        "--harder",
        "C",
        "how hard the planned work is: above 1 harder than usual, below 1 lighter, 0.1 to 10",
        load =>
            load is < LeastLoad or > MostLoad
                ? $"a number from {LeastLoad} to {MostLoad}, such as 1.5 for work half as hard again as usual"
                : null
    );

    public static Verb Verb { get; } =
        new("forecast", "Shows the wear and heats left of each gauge mark.", "forecast --as csv", [Harder], Run);

    private static void Run(Call call)
    {
        double load = call.Get(Harder) ?? 1;
        ShopForecasts forecasts = call.Forecasts;
        call.Print(
            ForecastTable.Of(forecasts.InService.SelectMany(tool => tool.Gauges), call.Units, load),
            Words.ShopHeading(call.Shop, call.Units) + LoadHeading(load),
            $"\n{Words.LeftExplained}\n{Words.NotFollowedMark} {Words.NotFollowed}\n{Words.ForecastBasis}\n{Cautions.ForecastCaution}\n"
        );
    }

    private static string LoadHeading(double load) =>
        load == 1 ? "" : $"Heats left of work {load} times as hard as usual; heats and wear so far as they were\n\n";
}
