using ToolWear.Core.Eyes;
using ToolWear.Core.Measure;

namespace ToolWear.Results;

/// <summary>The eye that a drift makes now, and how deep to drive it: the cells from which text, csv and json come.</summary>
internal static class EyeFigures
{
    /// <summary>The figures of a drift.</summary>
    /// <param name="outlook">The outlook; null where the tool is no drift or its size is not known.</param>
    /// <param name="units">The unit for people.</param>
    /// <returns>Every figure; those that are not known have cells that say so.</returns>
    public static Calculated Of(DriftOutlook? outlook, LengthUnit units)
    {
        EyeForecast? eye = outlook?.Eye;
        EyeTolerance? tolerance = outlook?.Wanted?.Tolerance;
        DriveTo? to = outlook?.Drive as DriveTo;
        NoDepth? none = outlook?.Drive as NoDepth;
        string Size(double mm) => SizeShown.Eye(Length.FromMm(Math.Abs(mm)), units);
        Figure Mm(string name, string heading, double? mm) => new(name, heading, Cell.Of(mm, Size));
        return new([
            Mm("eye_length_mm", "Eye length", eye?.Eye.LengthMm),
            Mm("eye_width_mm", "Eye width", eye?.Eye.WidthMm),
            Mm("predicted_length_mm", "Length predicted", eye?.Predicted.LengthMm),
            Mm("predicted_width_mm", "Width predicted", eye?.Predicted.WidthMm),
            new("found_on_heads", "Found on heads", Cell.Of(eye is { Heads: > 0 } ? eye.Heads : null)),
            new("eye_judged", "Judged", Cell.Of(Words.EyeJudged(outlook))),
            Mm("least_length_mm", "Least length", tolerance?.LeastLength.Mm),
            Mm("greatest_length_mm", "Greatest length", tolerance?.GreatestLength.Mm),
            Mm("least_width_mm", "Least width", tolerance?.LeastWidth.Mm),
            Mm("greatest_width_mm", "Greatest width", tolerance?.GreatestWidth.Mm),
            Mm("waist_length_mm", "Waist length", Waist(outlook)?.LengthMm),
            Mm("waist_width_mm", "Waist width", Waist(outlook)?.WidthMm),
            Mm("far_length_mm", "Far face length", Far(outlook)?.LengthMm),
            Mm("far_width_mm", "Far face width", Far(outlook)?.WidthMm),
            Mm("seat_mm", "Seat", outlook?.Seat?.MovementMm),
            Mm("seat_tolerance_mm", "Seat tolerance", outlook?.Seat is null ? null : outlook.Wanted?.Seat?.ToleranceMm),
            Mm("deeper_mm", "Deeper", to?.DeeperMm),
            new("new_mark_mm", "New mark", Cell.Of(to?.Mark.Mm, _ => SizeShown.Eye(to!.MarkFor(units), units))),
            Mm("length_there_mm", "Length there", to?.Eye.LengthMm),
            Mm("width_there_mm", "Width there", to?.Eye.WidthMm),
            new("no_depth", "No depth", Cell.Of(none?.Why(), none?.Why(units))),
            Mm("scrap_length_mm", "Scrap length by the eye", outlook?.Limits?.Least.LengthMm),
            Mm("scrap_width_mm", "Scrap width by the eye", outlook?.Limits?.Least.WidthMm),
        ]);
    }

    // only a wedged eye has a waist, only a slip-on one a smaller far face
    private static EyeSize? Waist(DriftOutlook? outlook) =>
        outlook is { Along: { } along, Wanted.Driving: Driving.BothFaces } ? along.Waist : null;

    private static EyeSize? Far(DriftOutlook? outlook) =>
        outlook is { Along: { } along, Wanted.Driving: Driving.OneFace } ? along.Far : null;
}
