using ToolWear.Core.Eyes;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Sections;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Core.Wear.OneTool;

namespace ToolWear.Core.Wear;

/// <summary>What the drifts of a shop still make of their eyes.</summary>
public static class DriftOutlooks
{
    /// <summary>Looks at one drift.</summary>
    /// <param name="all">The shop with its forecasts.</param>
    /// <param name="drift">The drift.</param>
    /// <returns>The outlook; null where the tool is no drift, or its length or width is not known.</returns>
    public static DriftOutlook? Of(ShopForecasts all, ToolForecast drift)
    {
        Tool tool = drift.Tool.Tool;
        if (EyeNow.Of(all, drift) is not { } eye)
        {
            return null;
        }

        EyeDescribed? described = tool.Eye is { } name ? all.Shop.Eyes.GetValueOrDefault(name) : null;
        EyeWanted? wanted = described is null ? null : WantedOf(all.Shop, described);
        return DriftOutlook.Of(
            eye,
            wanted,
            IsJudged(tool.Place),
            TaperedOf(all.Shop, tool, described, all.Shop.Settings.NoseRoom),
            tolerance => LimitsOf(all.Shop, all.Eyes, tool.Eye!, tool.Place, tolerance)
        );
    }

    /// <summary>Whether drifts of a place make the finished eye, so that it is judged: finish drifts, and those of no place.</summary>
    /// <param name="place">The place.</param>
    /// <returns>True where it is judged.</returns>
    public static bool IsJudged(Place place) => place is Place.Finish or Place.None;

    /// <summary>What an eye of the shop has to be.</summary>
    /// <param name="shop">The shop, for the handle.</param>
    /// <param name="eye">The eye.</param>
    /// <returns>What it has to be.</returns>
    public static EyeWanted WantedOf(Shop shop, EyeDescribed eye)
    {
        HandleDescribed? handle = eye.Handle is { } name ? shop.Handles.GetValueOrDefault(name) : null;
        return new(
            new EyeSize(eye.Length.Mm, eye.Width.Mm),
            eye.Depth?.Mm,
            eye.Driven,
            eye.TaperLength ?? 0,
            eye.TaperWidth ?? 0,
            ToleranceOf(eye),
            eye.Fit == Fit.SlipOn && handle is { Taper: >= 0.001 and { } taper, SeatTolerance: { } tolerance }
                ? new SeatWanted(taper, tolerance.Mm)
                : null
        );
    }

    /// <summary>The tolerance of an eye.</summary>
    /// <param name="eye">The eye.</param>
    /// <returns>The tolerance; null where its four figures are not all set.</returns>
    public static EyeTolerance? ToleranceOf(EyeDescribed eye) =>
        eye is { LeastLength: { } ll, GreatestLength: { } gl, LeastWidth: { } lw, GreatestWidth: { } gw }
        && EyeTolerance.TryMake(ll, gl, lw, gw, out EyeTolerance? tolerance, out string? _)
            ? tolerance
            : null;

    /// <summary>The drift that still makes an eye inside a tolerance, by the shop's own allowance where there is one.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="eyes">The measured eyes; null where they are not gathered yet.</param>
    /// <param name="eye">The eye's name.</param>
    /// <param name="place">The drift's place.</param>
    /// <param name="tolerance">The tolerance.</param>
    /// <returns>The limits at the mark.</returns>
    public static DriftLimits LimitsOf(Shop shop, EyesMade? eyes, string eye, Place place, EyeTolerance tolerance) =>
        ShopAllowance.TryFrom(eyes?.At(eye, place) ?? [], out ShopAllowance? own, out _)
            ? DriftLimits.Found(tolerance, own)
            : DriftLimits.Predicted(tolerance, shop.Settings.KnockOutOf(place));

    /// <summary>What of a drift matters for how deep it is driven.</summary>
    /// <remarks>
    /// The tapers are its series', else its eye's. The taper goes on above the mark as far as the body does so; without
    /// stations nothing is known of it. The nose stands out below the head by its distance from the mark less the depth.
    /// </remarks>
    /// <param name="shop">The shop.</param>
    /// <param name="tool">The drift.</param>
    /// <param name="eye">Its eye, null where not known.</param>
    /// <param name="free">How far a nose may stand out below the head; null where that is not known and does not count.</param>
    /// <returns>The drift; null where its mark or its body is not entered.</returns>
    public static TaperedDrift? TaperedOf(Shop shop, Tool tool, EyeDescribed? eye, Length? free)
    {
        if (ToolNow.MarkOf(tool) is not { } mark || FullFrom(tool) is not { } full)
        {
            return null;
        }

        Series? series = shop.SeriesOf(tool);
        Length standsOut = tool.Stations[^1].FromMark - mark - (eye?.Depth ?? Length.Zero);
        Length room = free is { } below ? below - standsOut : Length.FromMm(TaperedDrift.FurthestMarkMm);
        return TaperedDrift.TryMake(
            series?.TaperLength ?? eye?.TaperLength ?? 0,
            series?.TaperWidth ?? eye?.TaperWidth ?? 0,
            mark,
            full < mark ? mark - full : Length.Zero,
            room > Length.Zero ? room : Length.Zero,
            out TaperedDrift? tapered,
            out string? _
        )
            ? tapered
            : null;
    }

    /// <summary>Where the full-size part of a drift begins, from the shank mark: beyond it nothing is larger.</summary>
    /// <param name="tool">The drift.</param>
    /// <returns>The first such station; null where none is entered.</returns>
    public static Length? FullFrom(Tool tool) =>
        tool.Stations.FirstOrDefault(station => station.Part == BodyPart.FullSize)?.FromMark;
}
