using System.CommandLine;
using ToolWear.Commands.Calls;
using ToolWear.Core.Measure;
using ToolWear.Core.Planning;
using ToolWear.Results;
using ToolWear.Results.Plans;

namespace ToolWear.Commands.Plans;

/// <summary>bars: the stock rack.</summary>
internal static class BarsVerb
{
    private static readonly Argument<string> Bar = FigureOptions.Maybe("BAR", "one bar, for what could be cut from it");

    public static Command Make(Site site) =>
        Common.Verb(
            site,
            "bars",
            "Shows the bars in the stock rack with weight and worth; of one bar what could be cut from it.",
            "bars",
            [Bar],
            Run
        );

    private static void Run(Call call)
    {
        using Bench bench = call.ToRead();
        LengthUnit units = call.Units(bench.Shop);
        string name = call.Get(Bar);
        if (name.Length == 0)
        {
            IEnumerable<BarCuts> all = bench.Shop.Bars.Values.Select(bar => BarCuts.Of(bench.Shop, bar));
            call.Print(BarTable.Bars.Over(all, units), Words.ShopHeading(bench.Shop, units));
            return;
        }

        if (!bench.Shop.Bars.TryGetValue(name, out Core.Ledger.BarDescribed? named))
        {
            throw RefusedException.WrongData(Words.NoSuchBar(name, bench.Shop.Bars.Keys));
        }

        Table cuts = BarTable.Cuts.Over(BarCuts.Of(bench.Shop, named).Cuts, units);
        call.Print(
            cuts,
            Words.CouldBeCut(name) + "\n\n",
            cuts.Rows.IsEmpty ? Words.NoToolToCut(named.Steel) + "\n" : ""
        );
    }
}
