using System.Collections.Immutable;
using ToolWear.Core.Eyes;
using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;

namespace ToolWear.Core.Wear;

/// <summary>The finished cold eyes that were measured, beside the drift that made each, by eye and place.</summary>
/// <remarks>
/// A head counts once, by the face that the drift has the size of: the top one. Only eyes whose drift is named and whose
/// length and width were both read can count.
/// </remarks>
public sealed class EyesMade
{
    private readonly ILookup<(string Eye, Place Place), MeasuredEye> eyes;

    private EyesMade(ILookup<(string Eye, Place Place), MeasuredEye> eyes) => this.eyes = eyes;

    /// <summary>Gathers the eyes of a shop.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="tools">Every tool there ever was, with its forecasts, by its number.</param>
    /// <returns>The eyes.</returns>
    public static EyesMade Of(Shop shop, IReadOnlyDictionary<long, ToolForecast> tools)
    {
        Dictionary<long, DriftSizes> sizes = [];
        return new(
            Counting(shop)
                .Select(each =>
                {
                    ToolForecast maker = tools[each.Maker];
                    if (!sizes.TryGetValue(each.Maker, out DriftSizes? ofMaker))
                    {
                        sizes[each.Maker] = ofMaker = DriftSizes.Of(shop, maker);
                    }

                    return (Key: (each.Eye.Eye, maker.Tool.Tool.Place), Eye: ofMaker.Beside(each.Entry, each.Eye));
                })
                .Where(each => each.Eye is not null)
                .ToLookup(each => each.Key, each => each.Eye!.Value)
        );
    }

    /// <summary>The eyes of a place and eye.</summary>
    /// <param name="eye">The eye's name.</param>
    /// <param name="place">The drift's place.</param>
    /// <returns>The eyes, in the order of the ledger.</returns>
    public ImmutableArray<MeasuredEye> At(string eye, Place place) => [.. eyes[(eye, place)]];

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
