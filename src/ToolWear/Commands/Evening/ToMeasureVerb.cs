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
            "Shows what wants measuring once cold: gauge marks that worked since they were read, the last session's first,\n"
                + "each with the range in which a sound reading is expected 49 times in 50.",
            "to-measure",
            [],
            Run,
            Cautions.MeasureCaution
        );

    private static void Run(Call call)
    {
        Table table = ToMeasureTable.Columns.Over(ToMeasureTable.Rows(call.Forecasts), call.Units);
        string none = table.Rows.IsEmpty ? Words.NothingToMeasure + "\n" : "";
        call.Print(table, Words.ShopHeading(call.Shop, call.Units) + none, $"\n{Cautions.MeasureCaution}\n");
    }
}
