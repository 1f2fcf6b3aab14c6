using ToolWear.Core.Eyes;
using ToolWear.Core.Eyes.Slits;
using ToolWear.Core.Measure;

namespace ToolWear.Results;

/// <summary>What is left in a slitter or punch: the cells from which text, csv and json come.</summary>
internal static class SlitFigures
{
    /// <summary>The figures of a slitter or punch.</summary>
    /// <param name="outlook">The outlook; null where the tool opens no slit.</param>
    /// <param name="units">The unit for people.</param>
    /// <returns>Every figure; those that are not known have cells that say so.</returns>
    public static Calculated Of(SlitOutlook? outlook, LengthUnit units)
    {
        string Size(double mm) => SizeShown.Eye(Length.FromMm(mm), units);
        string Wear(double mm) => SizeShown.Wear(mm, units);
        return new([
            new("slit_mm", "Slit", Cell.Of(outlook?.EdgeMm, Size)),
            new("slit_stretch", "Stretch", Cell.Of(outlook?.Slit?.StretchShare, Words.WholePercent)),
            new("slit_warning", "Warning", Cell.Of(outlook?.Slit?.Warning ?? outlook?.SlitRefusal)),
            new("slit_needs_mm", "Needs", Cell.Of(outlook?.NeedsMm, Size)),
            new("at_its_limit", "At its limit", Cell.Of(Limit(outlook))),
            new("dressings", "Dressings so far", Cell.Of(outlook?.History?.Dressings)),
            new("loss_a_dressing_mm", "Loss a dressing", Cell.Of(outlook?.History?.LossMm, Wear)),
            new("heats_a_dressing", "Heats a dressing", Cell.Of(outlook?.History?.HeatsADressing, Words.About)),
            new("dressings_left", "Dressings left", Cell.Of(outlook?.Dressings?.Dressings)),
            new("heats_by_length", "Heats by length", Cell.Of(outlook?.HeatsByLength, Words.About)),
        ]);
    }

    private static string? Limit(SlitOutlook? outlook) =>
        outlook is not { EdgeMm: not null, NeedsMm: not null } ? null
        : outlook.IsAtItsLimit ? "yes"
        : "no";
}
