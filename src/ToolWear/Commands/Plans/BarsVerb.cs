using System.CommandLine;
using ToolWear.Commands.Calls;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Planning;
using ToolWear.Results;
using ToolWear.Results.Eyes;
using ToolWear.Results.Plans;
using ToolWear.Wording;

namespace ToolWear.Commands.Plans;

/// <summary>bars: the stock rack.</summary>
internal static class BarsVerb
{
    private static readonly Argument<string?> Bar = Said.Maybe("BAR", "one bar, for what could be cut from it");

    public static Verb Verb { get; } =
        new(
            "bars",
            "Shows the bars in the stock rack.",
            "bars",
            [Bar],
            Run,
            "With a bar it shows what you could cut from it."
        );

    private static void Run(Call call)
    {
        LengthUnit units = call.Units;
        if (call.Get(Bar) is not { } name)
        {
            IEnumerable<BarCuts> all = call.Shop.Bars.Values.Select(bar => BarCuts.Of(call.Shop, bar));
            call.Print(BarTable.Bars.Over(all, units), Words.ShopHeading(call.Shop, units));
            return;
        }

        BarDescribed named = Call.Named("bar", call.Shop.Bars, name);

        Table cuts = BarTable.Cuts.Over(BarCuts.Of(call.Shop, named).Cuts, units);
        call.Print(
            cuts,
            EyeWords.CouldBeCut(name) + "\n\n",
            cuts.Rows.IsEmpty ? EyeWords.NoToolToCut(named.Steel) + "\n" : ""
        );
    }
}
