using System.CommandLine;
using ToolWear.Commands.Calls;
using ToolWear.Core.Wear;
using ToolWear.Results;

namespace ToolWear.Commands.Evening;

/// <summary>to-measure: the caliper round as a list.</summary>
internal static class ToMeasureVerb
{
    public static Command Make(Site site) =>
        Common.Verb(
            site,
            "to-measure",
            "Shows what wants measuring once cold: gauge marks that worked since they were read, the last session's first,\n"
                + "each with the range in which a sound reading is expected 49 times in 50.",
            "to-measure",
            [],
            Run,
            Words.MeasureCaution
        );

    private static void Run(Call call)
    {
        using Bench bench = call.ToRead();
        Table table = ToMeasureTable.Of(ShopForecasts.Of(bench.Shop), call.Units(bench.Shop));
        string none = table.Rows.IsEmpty ? Words.NothingToMeasure + "\n" : "";
        call.Print(table, Words.ShopHeading(bench.Shop, call.Units(bench.Shop)) + none, $"\n{Words.MeasureCaution}\n");
    }
}
