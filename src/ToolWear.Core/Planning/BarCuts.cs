using System.Collections.Immutable;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Sections;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;

namespace ToolWear.Core.Planning;

/// <summary>A tool of the shop's series that could be cut from a bar.</summary>
/// <param name="Tools">Its place.</param>
/// <param name="Stock">What to cut for one, forged on the end of the bar, with the usual loss.</param>
/// <param name="Pieces">How many the bar gives; null where its length is not known.</param>
/// <param name="Like">The body that was taken.</param>
public sealed record CutFromBar(ToolPlace Tools, StockToCut Stock, int? Pieces, PlaceBody Like);

/// <summary>A bar of the stock rack: its weight, its worth, what could be cut from it.</summary>
/// <param name="Bar">The bar.</param>
/// <param name="Section">Its section; null where its figures make none.</param>
/// <param name="WeightKg">What it weighs; null where section or length is not known.</param>
/// <param name="Worth">Its weight at its price; null where either is not known.</param>
/// <param name="Cuts">Every place of the series in its steel whose body is known.</param>
public sealed record BarCuts(
    BarDescribed Bar,
    Section? Section,
    double? WeightKg,
    decimal? Worth,
    ImmutableArray<CutFromBar> Cuts
)
{
    /// <summary>Looks at a bar.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="bar">The bar.</param>
    /// <returns>What it is and gives.</returns>
    public static BarCuts Of(Shop shop, BarDescribed bar)
    {
        _ = Section.TryMake(bar.Section, bar.A, bar.B ?? bar.A, Length.Zero, out Section? section, out string? _);
        double? kg =
            section is not null && bar.Length is { } length ? Steel.MassKg(section.AreaMm2() * length.Mm) : null;
        return new(
            bar,
            section,
            kg,
            kg is { } weight && bar.PriceAKg is { } price ? (decimal)weight * price : null,
            section is null ? [] : [.. Options(shop, bar, section.AreaMm2())]
        );
    }

    private static IEnumerable<CutFromBar> Options(Shop shop, BarDescribed bar, double areaMm2)
    {
        foreach (Series series in shop.Series.Values.Where(series => IsOf(series.Steel, bar.Steel)))
        {
            ToolPlace place = new(series.Eye, series.Place, series.Form.Name);
            if (
                PlaceBody.TryFind(shop, place, out PlaceBody? body, out string? _)
                && StockToCut.TryFor(body.Body, areaMm2, StockLoss.Usual, 0, out StockToCut? exact, out string? _)
            )
            {
                double piece = StockRack.PieceMm(shop, body.Body, areaMm2);
                StockToCut stock = exact with { LengthMm = piece, StockMassKg = Steel.MassKg(piece * areaMm2) };
                yield return new(
                    place,
                    stock,
                    bar.Length is { } length
                        ? (int)Math.Floor((length.Mm / (piece + shop.Settings.CutWidthMm)) + 1e-9)
                        : null,
                    body
                );
            }
        }
    }

    private static bool IsOf(string? wanted, string steel) =>
        string.Equals(wanted, steel, StringComparison.OrdinalIgnoreCase);
}
