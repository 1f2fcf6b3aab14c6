using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Sections;
using ToolWear.Core.Shops;

namespace ToolWear.Core.Planning;

/// <summary>Pieces that a batch will ask of the rack.</summary>
/// <param name="Body">The body that they are forged to.</param>
/// <param name="Steel">Their steel.</param>
/// <param name="Pieces">How many, above zero.</param>
internal sealed record StockWanted(Body Body, string Steel, int Pieces);

/// <summary>The bars in the rack while batches are cut from them, one after another.</summary>
internal sealed class StockRack
{
    // a length is not cut longer for a twentieth of a mm
    private const double RoundingMm = 0.05;
    private const double SixteenthMm = 25.4 / 16;

    private readonly Shop shop;
    private readonly List<BarInRack> bars;
    private readonly List<BarsToBuy> bought = [];
    private readonly List<StockWanted> toCome;
    private readonly double boughtMm;
    private readonly double cutMm;

    /// <summary>Begins with the bars of a shop.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="toCome">What will be cut, so that a bar that is bought serves several batches.</param>
    internal StockRack(Shop shop, params IEnumerable<StockWanted> toCome)
    {
        this.shop = shop;
        this.toCome = [.. toCome];
        boughtMm = shop.Settings.BarLength.Mm;
        cutMm = shop.Settings.CutWidthMm;
        bars = [.. shop.Bars.Values.Select(bar => BarInRack.Of(bar, cutMm)).OfType<BarInRack>()];
    }

    /// <summary>How long a piece is cut, in whole mm or sixteenths of an inch, never short. The loss is the usual one and
    /// nothing is held: forged on the end of the bar and cut off after.</summary>
    internal static double PieceMm(Shop shop, Body body, double areaMm2)
    {
        double step = shop.Settings.Units == LengthUnit.Mm ? 1 : SixteenthMm;
        return StockToCut.TryFor(body, areaMm2, StockLoss.Usual, 0, out StockToCut? stock, out string? refusal)
            ? Math.Ceiling((stock.LengthMm - RoundingMm) / step) * step
            : throw new InvalidOperationException(refusal);
    }

    /// <summary>The size of bar that a batch is cut from first: the smallest in the rack that serves, else the one bought.</summary>
    internal BarSize SizeFor(Body body, string steel) =>
        Serving(body, steel) is [var first, ..] ? first.Bar.Size : SizeToBuy(body, steel, 1);

    /// <summary>Cuts the pieces of a batch: from the smallest bars that serve, the shortest first; the rest is bought.</summary>
    internal BatchStock Cut(Body body, string steel, int pieces, BatchName batch)
    {
        if (toCome.Find(each => each.Body == body && each.Steel == steel) is { } now)
        {
            toCome.Remove(now);
        }

        int left = pieces;
        List<BarCut> cuts = [];
        foreach (BarInRack bar in Serving(body, steel))
        {
            double piece = PieceMm(shop, body, bar.AreaMm2);
            bar.Want(batch);
            int fits = bar.Take(batch, left, piece);
            if (fits > 0)
            {
                left -= fits;
                cuts.Add(new BarCut(bar.Bar, fits, piece, Steel.MassKg(piece * bar.AreaMm2), bar.LeftMm));
            }

            if (left == 0)
            {
                break;
            }

            bar.IsTooShort = true;
        }

        List<string> notes = [];
        BarsToBuy? buy = left > 0 ? Buy(body, steel, left, batch, notes) : null;
        double? kg =
            buy is null && left > 0
                ? null
                : cuts.Sum(cut => cut.Pieces * cut.PieceKg) + (buy?.Pieces * buy?.PieceKg ?? 0);
        return new BatchStock(kg / pieces, PriceAKg(steel), [.. cuts], buy, [.. notes]);
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

    private BarInRack[] Serving(Body body, string steel) =>
        [
            .. bars.Where(bar => bar.Is(steel) && bar.AreaMm2 >= body.LargestAreaMm2)
                .OrderBy(bar => bar.AreaMm2)
                .ThenBy(bar => bar.LeftMm),
        ];

    // bars of one steel cost alike a kg; the last one entered says what it costs now
    private decimal? PriceAKg(string steel) =>
        shop
            .Bars.Values.LastOrDefault(bar =>
                bar.PriceAKg is not null && string.Equals(bar.Steel, steel, StringComparison.OrdinalIgnoreCase)
            )
            ?.PriceAKg;

    /// <summary>The size to buy: the smallest listed one that serves; or, where one bar of a larger one gives these pieces
    /// and all that batches to come would have to buy for, that one: one bar and less waste.</summary>
    private BarSize SizeToBuy(Body body, string steel, int pieces)
    {
        StockWanted[] also =
        [
            .. toCome.Where(each =>
                string.Equals(each.Steel, steel, StringComparison.OrdinalIgnoreCase)
                && each.Body.LargestAreaMm2 > body.LargestAreaMm2
                && Serving(each.Body, steel).Length == 0
            ),
        ];
        BarSize large = Listed(also.Select(each => each.Body.LargestAreaMm2).Append(body.LargestAreaMm2).Max());
        double Takes(Body each, int number) => number * (PieceMm(shop, each, AreaOf(large)) + cutMm);
        return Takes(body, pieces) + also.Sum(each => Takes(each.Body, each.Pieces)) <= boughtMm
            ? large
            : Listed(body.LargestAreaMm2);
    }

    private BarSize Listed(double areaMm2)
    {
        double d = Math.Sqrt(4 * areaMm2 / Math.PI);
        Length size = shop.Settings.BarSizes.FirstOrDefault(each => each.Mm >= d - 1e-9);
        // beyond the list, to the next whole mm
        return new BarSize(SectionKind.Round, size > Length.Zero ? size : Length.FromMm(Math.Ceiling(d)), null);
    }

    private static double AreaOf(BarSize round) => Math.PI * round.A.Mm * round.A.Mm / 4;

    // what is left of a bar that is bought serves the batches after
    private BarsToBuy? Buy(Body body, string steel, int pieces, BatchName batch, List<string> notes)
    {
        BarWanted wanted = new(null, steel, SizeToBuy(body, steel, pieces));
        double area = AreaOf(wanted.Size);
        double piece = PieceMm(shop, body, area);
        if (piece + cutMm > boughtMm)
        {
            notes.Add($"a piece of {piece:0} mm is longer than a bar of {boughtMm:0} mm (bar_length_mm): not cut");
            return null;
        }

        int left = pieces;
        int number = 0;
        while (left > 0)
        {
            BarInRack bar = new(wanted, area, boughtMm, cutMm);
            bars.Add(bar);
            number++;
            left -= bar.Take(batch, left, piece);
        }

        BarsToBuy buy = new(wanted, number, boughtMm, pieces, piece, Steel.MassKg(piece * area));
        bought.Add(buy);
        return buy;
    }
}

/// <summary>A bar while batches are cut from it.</summary>
internal sealed class BarInRack(BarWanted bar, double areaMm2, double lengthMm, double cutMm)
{
    internal BarWanted Bar => bar;

    internal double AreaMm2 => areaMm2;

    internal double LeftMm => lengthMm - Cut.Sum(each => each.Pieces * (each.PieceMm + cutMm));

    internal bool IsTooShort { get; set; }

    internal List<BatchName> WantedBy { get; } = [];

    internal List<BatchOnBar> Cut { get; } = [];

    internal static BarInRack? Of(BarDescribed bar, double cutMm)
    {
        Length? b = bar.B == bar.A ? null : bar.B;
        return Section.TryMake(bar.Section, bar.A, bar.B ?? bar.A, Length.Zero, out Section? section, out _)
            ? new BarInRack(
                new BarWanted(bar.Bar, bar.Steel, new BarSize(bar.Section, bar.A, b)),
                section.AreaMm2(),
                bar.Length?.Mm ?? 0,
                cutMm
            )
            : null;
    }

    internal bool Is(string wanted) => string.Equals(bar.Steel, wanted, StringComparison.OrdinalIgnoreCase);

    internal void Want(BatchName batch)
    {
        if (!WantedBy.Contains(batch))
        {
            WantedBy.Add(batch);
        }
    }

    /// <summary>Cuts as many pieces as fit, up to some.</summary>
    internal int Take(BatchName batch, int most, double pieceMm)
    {
        int fits = Math.Min(most, (int)Math.Floor((LeftMm / (pieceMm + cutMm)) + 1e-9));
        if (fits > 0)
        {
            Cut.Add(new BatchOnBar(batch, fits, pieceMm));
        }

        return fits;
    }

    internal BarUse Use() => new(bar, lengthMm, [.. Cut], cutMm, LeftMm);
}
