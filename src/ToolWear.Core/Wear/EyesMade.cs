using System.Collections.Concurrent;
using System.Collections.Immutable;
using ToolWear.Core.Eyes;
using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Core.Tools.Forms;
using ToolWear.Core.Wear.OneTool;

namespace ToolWear.Core.Wear;

/// <summary>The finished cold eyes that were measured, beside the drift that made each, by eye and place.</summary>
/// <remarks>
/// A head counts once, by the face that the drift has the size of: the top one. Only eyes whose drift is named and whose
/// length and width were both read can count.
/// </remarks>
public sealed class EyesMade
{
    private readonly ShopForecasts shop;
    private readonly Lazy<ILookup<(string Eye, Place Place), (long Entry, long Maker, EyeMeasured Eye)>> counting;
    private readonly ConcurrentDictionary<(string Eye, Place Place), ImmutableArray<MeasuredEye>> eyes = new();

    /// <summary>The eyes of a shop; only the drifts that made those asked for are forecast.</summary>
    /// <param name="shop">The shop with its forecasts.</param>
    internal EyesMade(ShopForecasts shop)
    {
        this.shop = shop;
        counting = new(() =>
            Counting(shop.Shop).ToLookup(each => (each.Eye.Eye, shop.Shop.Tools[each.Maker].Tool.Place))
        );
    }

    /// <summary>The eyes of a place and eye.</summary>
    /// <param name="eye">The eye's name.</param>
    /// <param name="place">The drift's place.</param>
    /// <returns>The eyes, in the order of the ledger.</returns>
    public ImmutableArray<MeasuredEye> At(string eye, Place place) =>
        eyes.GetOrAdd(
            (eye, place),
            key =>
                [
                    .. counting
                        .Value[key]
                        .GroupBy(each => each.Maker)
                        .SelectMany(made =>
                        {
                            DriftSizes sizes = DriftSizes.Of(shop.Shop, shop.Of(made.Key));
                            return made.Select(each => (each.Entry, Eye: sizes.Beside(each.Entry, each.Eye)));
                        })
                        .Where(each => each.Eye is not null)
                        .OrderBy(each => each.Entry)
                        .Select(each => each.Eye!.Value),
                ]
        );

    private static IEnumerable<(long Entry, long Maker, EyeMeasured Eye)> Counting(Shop shop)
    {
        foreach (Entered entered in shop.EyesMeasured)
        {
            if (
                shop.EyeMakers.TryGetValue(entered.Number, out long maker)
                && entered.What is EyeMeasured { Length: not null, Width: not null, Where: null or EyeWhere.Top } eye
                && shop.Tools[maker].Tool.Form.Name == ToolForms.Drift
            )
            {
                yield return (entered.Number, maker, eye);
            }
        }
    }

    private sealed record DriftSizes(
        ImmutableDictionary<long, double>? LengthsMm,
        double? LengthAsMadeMm,
        ImmutableDictionary<long, double> WidthsMm
    )
    {
        internal static DriftSizes Of(Shop shop, ToolForecast drift)
        {
            ImmutableDictionary<long, double> widths =
                ToolNow.Gauge(drift, Measures.Width)?.SizesAtEyes() ?? ImmutableDictionary<long, double>.Empty;
            ImmutableDictionary<long, double>? lengths =
                ToolNow.Gauge(drift, Measures.Length)?.SizesAtEyes()
                ?? (drift.Tool.Tool.Section == Sections.SectionKind.Round ? widths : null);
            return new(lengths, shop.SeriesOf(drift.Tool.Tool)?.Length?.Mm, widths);
        }

        internal MeasuredEye? Beside(long entry, EyeMeasured eye) =>
            LengthMm(entry) is { } length && WidthsMm.TryGetValue(entry, out double width)
                ? new MeasuredEye(new EyeSize(length, width), new EyeSize(eye.Length!.Value.Mm, eye.Width!.Value.Mm))
                : null;

        private double? LengthMm(long entry) =>
            LengthsMm is null ? LengthAsMadeMm
            : LengthsMm.TryGetValue(entry, out double length) ? length
            : null;
    }
}
