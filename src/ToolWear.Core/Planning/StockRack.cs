using ToolWear.Core.Measure;
using ToolWear.Core.Sections;
using ToolWear.Core.Shops;

namespace ToolWear.Core.Planning;

/// <summary>The bars in the rack while batches are cut from them, one after another.</summary>
internal sealed class StockRack
{
    private readonly List<BarInRack> bars;
    private readonly List<BarsToBuy> bought = [];
    private readonly double boughtMm;

    internal StockRack(Shop shop)
    {
        bars = [.. shop.Bars.Values.Select(BarInRack.Of).OfType<BarInRack>()];
        boughtMm = shop.Settings.BarLength.Mm;
    }

    /// <summary>Cuts the pieces of a batch: from the smallest bars that serve, the shortest first; the rest is bought.</summary>
    internal BatchStock Cut(Body body, string steel, int pieces, BatchName batch)
    {
        double area = body.LargestAreaMm2;
        BarInRack[] ofSteel =
        [
            .. bars.Where(bar => bar.Is(steel)).OrderBy(bar => bar.AreaMm2).ThenBy(bar => bar.LeftMm),
        ];
        BarInRack[] serving = [.. ofSteel.Where(bar => bar.AreaMm2 >= area)];
        bool isUpset = serving.Length == 0 && ofSteel.Length > 0;
        BarInRack[] candidates = isUpset ? [ofSteel[^1]] : serving;
        List<string> notes = [];
        if (isUpset)
        {
            notes.Add($"no bar of {steel} is as large as its largest section: it has to be upset");
        }

        int left = pieces;
        List<BarCut> cuts = [];
        foreach (BarInRack bar in candidates)
        {
            double piece = PieceMm(body, bar.AreaMm2);
            bar.Want(batch);
            int fits = bar.Take(batch, left, piece);
            if (fits > 0)
            {
                left -= fits;
                cuts.Add(new BarCut(bar.Bar, fits, piece, bar.LeftMm));
            }

            if (left == 0)
            {
                break;
            }

            bar.IsTooShort = true;
        }

        BarsToBuy? buy = left > 0 ? Buy(body, steel, left, candidates.FirstOrDefault(), batch, notes) : null;
        double barArea = candidates.FirstOrDefault()?.AreaMm2 ?? area;
        return new BatchStock(Steel.MassKg(PieceMm(body, barArea) * barArea), [.. cuts], buy, [.. notes]);
    }

    /// <summary>What was cut from each bar, and what has to be bought.</summary>
    internal CutList Cuts() =>
        new(
            [.. bars.Where(bar => bar.Cut.Count > 0).Select(bar => bar.Use())],
            [.. bought.GroupBy(buy => buy.Bar).Select(same => same.First() with { Bars = same.Sum(buy => buy.Bars) })],
            [
                .. bars.Where(bar => bar.Bar.Name is not null && bar.WantedBy.Count > 1)
                    .Select(bar => new SharedBar(bar.Bar, [.. bar.WantedBy], bar.IsTooShort)),
            ]
        );

    // the loss is the usual one and nothing is held: forged on the end of the bar and cut off after
    private static double PieceMm(Body body, double areaMm2) =>
        StockToCut.TryFor(body, areaMm2, StockLoss.Usual, 0, out StockToCut? stock, out string? refusal)
            ? stock.LengthMm
            : throw new InvalidOperationException(refusal);

    // what is left of a bar that is bought serves the batches after
    private BarsToBuy? Buy(Body body, string steel, int pieces, BarInRack? like, BatchName batch, List<string> notes)
    {
        // no bar of that steel was ever in the rack: a round as large as the largest section, to the next whole mm
        double d = Math.Ceiling(Math.Sqrt(4 * body.LargestAreaMm2 / Math.PI));
        double area = like?.AreaMm2 ?? Math.PI * d * d / 4;
        BarWanted wanted = new(null, steel, like?.Bar.Size ?? new BarSize(SectionKind.Round, Length.FromMm(d), null));
        double piece = PieceMm(body, area);
        if (piece > boughtMm)
        {
            notes.Add($"a piece of {piece:0} mm is longer than a bar of {boughtMm:0} mm (bar_length_mm): not cut");
            return null;
        }

        int left = pieces;
        int number = 0;
        while (left > 0)
        {
            BarInRack bar = new(wanted, area, boughtMm);
            bars.Add(bar);
            number++;
            left -= bar.Take(batch, left, piece);
        }

        BarsToBuy buy = new(wanted, number, boughtMm, pieces, piece);
        bought.Add(buy);
        return buy;
    }
}
