using System.Collections.Immutable;
using ToolWear.Core.Eyes;
using ToolWear.Core.Findings;
using ToolWear.Core.Measure;
using ToolWear.Core.Sections;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Core.Wear.OneTool;

namespace ToolWear.Core.Wear;

/// <summary>A place of the shop's series that a worn tool holds.</summary>
/// <param name="Series">The place.</param>
/// <param name="Making">The room round it, and what comes off.</param>
/// <param name="Heats">
/// Weighted heats it would give: the median over the lives of the tools made there of its steel, else the guess for its
/// steel.
/// </param>
/// <param name="Sisters">How many tools the heats rest on; 0 for the smith's guess.</param>
public sealed record MadeIntoOffer(Series Series, MakingInto Making, double? Heats, int Sisters);

/// <summary>What a worn drift can be made into, by its section as it is now.</summary>
/// <remarks>
/// Cautions first: not after a crack or an over-heat, in unknown steel only after a trial. Common practice, no source.
/// </remarks>
/// <param name="Never">The finding that forbids it; null where none does.</param>
/// <param name="Doubt">A finding that has to be done with first; null for none.</param>
/// <param name="SteelIsUnknown">Whether a trial has to come first.</param>
/// <param name="All">Every other place of its form: those of its own eye first, then by the room round them.</param>
public sealed record MadeInto(
    OpenFinding? Never,
    OpenFinding? Doubt,
    bool SteelIsUnknown,
    ImmutableArray<MadeIntoOffer> All
)
{
    /// <summary>The places it holds with the clean-up all round; none where a finding forbids it.</summary>
    public ImmutableArray<MadeIntoOffer> Offers => Never is null ? [.. All.Where(offer => offer.Making.Possible)] : [];

    /// <summary>What has to come off all round to be clean again: 0.5 mm (common practice, no source).</summary>
    public static Length UsualCleanUp { get; } = Length.FromMm(0.5m);

    /// <summary>Looks at one drift.</summary>
    /// <param name="all">The shop with its forecasts.</param>
    /// <param name="tool">The tool.</param>
    /// <param name="cleanUp">What has to come off all round, 0 to 20 mm; the usual where null.</param>
    /// <returns>What it can become; null where it is no drift, is scrapped, or its section is not known.</returns>
    public static MadeInto? Of(ShopForecasts all, ToolForecast tool, Length? cleanUp = null)
    {
        if (tool.Tool.State == ToolState.Scrapped || ToolNow.SectionNow(all.Shop, tool) is not { } worn)
        {
            return null;
        }

        LookedOver seen = LookedOver.Of(all.Shop, tool.Tool);
        return new(
            seen.Open.FirstOrDefault(each => each.Rule.Verdict == Verdict.Out),
            seen.Open.FirstOrDefault(each => each.Rule.Verdict != Verdict.Out),
            tool.Tool.Tool.Steel is null,
            OffersFor(all, tool.Tool.Tool, worn, cleanUp ?? UsualCleanUp)
        );
    }

    private static ImmutableArray<MadeIntoOffer> OffersFor(ShopForecasts all, Tool tool, Section worn, Length cleanUp)
    {
        Series? own = all.Shop.SeriesOf(tool);
        (Series Series, NamedSection Named)[] targets =
        [
            .. all
                .Shop.Series.Values.Where(series => series.Form == tool.Form && series != own)
                .Select(series => (series, Section: series.AtMark()))
                .Where(each => each.Section is not null)
                .Select(each => (each.series, new NamedSection(each.series.Eye, each.Section!))),
        ];
        return MakingInto.TryFrom(
            worn,
            [.. targets.Select(each => each.Named)],
            cleanUp,
            out IReadOnlyList<MakingInto>? makings,
            out string? _
        )
            ?
            [
                .. targets
                    .Zip(makings, (target, making) => Offer(all, tool, target.Series, making))
                    .OrderByDescending(offer => offer.Series.Eye == tool.Eye)
                    .ThenBy(offer => offer.Making.Clearance.ClearanceMm),
            ]
            : [];
    }

    private static MadeIntoOffer Offer(ShopForecasts all, Tool tool, Series series, MakingInto making)
    {
        double[] lives =
        [
            .. all
                .Shop.Tools.Values.Where(each => IsSister(each.Tool, tool, series))
                .Select(each => all.Of(each.Id).Deciding?.Curve?.LifeHeats)
                .OfType<Estimate>()
                .Select(life => life.Value)
                .Order(),
        ];
        return lives.Length == 0
            ? new(series, making, GuessOf(all.Shop, tool.Steel, series), 0)
            : new(series, making, (lives[(lives.Length - 1) / 2] + lives[lives.Length / 2]) / 2, lives.Length);
    }

    // the guess of a place is for its steel: a tool of another class lasts as its own steel does
    private static double GuessOf(Shop shop, string? steel, Series series) =>
        series.GuessHeats is { } said && SteelClasses.Of(series.Steel) == SteelClasses.Of(steel)
            ? said
            : shop.Settings.GuessHeats(series.Form, series.Place, steel);

    private static bool IsSister(Tool other, Tool tool, Series series) =>
        other.Eye == series.Eye
        && other.Place == series.Place
        && other.Form == series.Form
        && (tool.Steel is null || other.Steel == tool.Steel);
}
