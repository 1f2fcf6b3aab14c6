using System.Collections.Immutable;
using System.Globalization;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Sections;
using ToolWear.Core.Shops;

namespace ToolWear.Core.Planning;

/// <summary>The bars in the rack while batches are cut from them, one after another.</summary>
internal sealed class StockRack
{
    private readonly ImmutableArray<BarInRack> bars;
    private readonly double boughtMm;

    internal StockRack(Shop shop)
    {
        bars = [.. shop.Bars.Values.Select(BarInRack.Of).OfType<BarInRack>()];
        boughtMm = shop.Settings.BarLength.Mm;
    }

    /// <summary>Cuts the pieces of a batch: from the smallest bars that serve, the shortest first; the rest is bought.</summary>
    internal BatchStock Cut(Body body, string steel, int pieces, string batch)
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
            int fits = Math.Min(left, (int)Math.Floor((bar.LeftMm / piece) + 1e-9));
            if (fits > 0)
            {
                bar.LeftMm -= fits * piece;
                left -= fits;
                cuts.Add(new BarCut(bar.Name, fits, piece, bar.LeftMm));
            }

            if (left == 0)
            {
                break;
            }

            bar.IsTooShort = true;
        }

        BarsToBuy? buy = left > 0 ? Buy(body, steel, left, candidates.FirstOrDefault()) : null;
        double barArea = candidates.FirstOrDefault()?.AreaMm2 ?? area;
        return new BatchStock(Steel.MassKg(PieceMm(body, barArea) * barArea), [.. cuts], buy, [.. notes]);
    }

    /// <summary>A sentence for each bar that two batches or more want, without a full stop.</summary>
    internal ImmutableArray<string> Shared() =>
        [
            .. bars.Where(bar => bar.WantedBy.Count > 1)
                .Select(bar =>
                    $"{bar.WantedBy.Count} batches want bar {bar.Name} ({string.Join(", ", bar.WantedBy)}): "
                    + (bar.IsTooShort ? "it is too short for all" : "it is long enough for all")
                ),
        ];

    // the loss is the usual one and nothing is held: forged on the end of the bar and cut off after
    private static double PieceMm(Body body, double areaMm2) =>
        StockToCut.TryFor(body, areaMm2, StockLoss.Usual, 0, out StockToCut? stock, out string? refusal)
            ? stock.LengthMm
            : throw new InvalidOperationException(refusal);

    private BarsToBuy? Buy(Body body, string steel, int pieces, BarInRack? like)
    {
        // no bar of that steel was ever in the rack: a round as large as the largest section, to the next whole mm
        double d = Math.Ceiling(Math.Sqrt(4 * body.LargestAreaMm2 / Math.PI));
        double area = like?.AreaMm2 ?? Math.PI * d * d / 4;
        double piece = PieceMm(body, area);
        int aBar = (int)Math.Floor(boughtMm / piece);
        string what = $"{steel} {like?.Size ?? "round " + d.ToString(CultureInfo.InvariantCulture)}";
        return aBar > 0 ? new BarsToBuy(what, (pieces + aBar - 1) / aBar, boughtMm, pieces, piece) : null;
    }

    private sealed class BarInRack
    {
        private readonly string steel;

        private BarInRack(BarDescribed bar, double areaMm2)
        {
            (Name, steel, AreaMm2, LeftMm) = (bar.Bar, bar.Steel, areaMm2, bar.Length?.Mm ?? 0);
            string size = bar.B is { } b && b != bar.A ? $"{bar.A.ToMmText()} x {b.ToMmText()}" : bar.A.ToMmText();
            Size = $"{SectionKinds.Words.Word(bar.Section)} {size}";
        }

        internal string Name { get; }

        internal string Size { get; }

        internal double AreaMm2 { get; }

        internal double LeftMm { get; set; }

        internal bool IsTooShort { get; set; }

        internal List<string> WantedBy { get; } = [];

        internal static BarInRack? Of(BarDescribed bar) =>
            Section.TryMake(bar.Section, bar.A, bar.B ?? bar.A, Length.Zero, out Section? section, out _)
                ? new BarInRack(bar, section.AreaMm2())
                : null;

        internal bool Is(string wanted) => string.Equals(steel, wanted, StringComparison.OrdinalIgnoreCase);

        internal void Want(string batch)
        {
            if (!WantedBy.Contains(batch))
            {
                WantedBy.Add(batch);
            }
        }
    }
}
