using ToolWear.Commands.Calls;
using ToolWear.Results;
using ToolWear.Results.Tools;
using ToolWear.Wording;

namespace ToolWear.Commands.Evening;

/// <summary>to-measure: the caliper round as a list.</summary>
internal static class ToMeasureVerb
{
    public static Verb Verb { get; } =
        new(
            "to-measure",
            "Lists what to measure once it is cold.",
            "to-measure",
            [],
            Run,
            "These are the gauge marks that worked since you last read them, those of the last session first, each with the range in which 49 sound readings in 50 lie.\n"
                + Cautions.MeasureCaution
        );

    private static void Run(Call call)
    {
        Table table = ToMeasureTable.Columns.Over(ToMeasureTable.Rows(call.Forecasts), call.Units);
        string none = table.Rows.IsEmpty ? Words.NothingToMeasure + "\n" : "";
        call.Print(table, Words.ShopHeading(call.Shop, call.Units) + none, $"\n{Cautions.MeasureCaution}\n");
    }
}
