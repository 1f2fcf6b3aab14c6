using ToolWear.Core.Eyes;
using ToolWear.Core.Measure;
using Row = ToolWear.Results.Column<ToolWear.Core.Eyes.DriftOutlook?>;

namespace ToolWear.Results.Eyes;

/// <summary>The eye that a drift makes now, and how deep to drive it; all unknown for what is no drift.</summary>
internal static class EyeFigures
{
    public static Column<DriveTo?> NewMark { get; } =
        new Column<DriveTo?>(
            "new_mark_mm",
            "New mark",
            (to, units) => Cell.Of(to?.Mark.Mm, _ => SizeShown.Eye(to!.MarkFor(units), units)),
            "mm"
        ).Means("the new mark, from the shank mark");

    public static Columns<DriftOutlook?> Columns { get; } =
    [
        Size("eye_length_mm", "Eye length", drift => drift.Eye.Eye.LengthMm),
        Size("eye_width_mm", "Eye width", drift => drift.Eye.Eye.WidthMm),
        Size("predicted_length_mm", "Length predicted", drift => drift.Eye.Predicted.LengthMm)
            .Means("the eye's length by shrinkage alone"),
        Size("predicted_width_mm", "Width predicted", drift => drift.Eye.Predicted.WidthMm)
            .Means("its width by shrinkage alone"),
        Row.Number(
                "found_on_heads",
                "Found on heads",
                drift => drift?.Eye is { Heads: > 0 and int heads } ? heads : null
            )
            .Means("measured heads that the prediction was corrected by"),
        Row.Text("eye_judged", "Judged", drift => drift is null ? null : Judged(drift))
            .Means("how the eye lies to its tolerance, in words"),
        Size("least_length_mm", "Least length", drift => drift.Wanted?.Tolerance?.LeastLength.Mm),
        Size("greatest_length_mm", "Greatest length", drift => drift.Wanted?.Tolerance?.GreatestLength.Mm),
        Size("least_width_mm", "Least width", drift => drift.Wanted?.Tolerance?.LeastWidth.Mm),
        Size("greatest_width_mm", "Greatest width", drift => drift.Wanted?.Tolerance?.GreatestWidth.Mm),
        Size("waist_length_mm", "Waist length", drift => Waist(drift)?.LengthMm)
            .Means("the length of a wedged eye in the middle of its depth"),
        Size("waist_width_mm", "Waist width", drift => Waist(drift)?.WidthMm).Means("its width there"),
        Size("far_length_mm", "Far face length", drift => FarFace(drift)?.LengthMm)
            .Means("the length of a slip-on eye at its far face"),
        Size("far_width_mm", "Far face width", drift => FarFace(drift)?.WidthMm).Means("its width there"),
        Size("seat_mm", "Seat", drift => drift.Seat?.MovementMm)
            .Means("how far from its place a slip-on head sits on the handle"),
        Size("seat_tolerance_mm", "Seat tolerance", SeatToleranceMm),
        Size("deeper_mm", "Deeper", drift => (drift.Drive as DriveTo)?.DeeperMm)
            .Means("how much deeper than its present mark the drift is driven; below zero less deep"),
        NewMark.From<DriftOutlook?>(drift => drift?.Drive as DriveTo),
        Size("length_there_mm", "Length there", drift => (drift.Drive as DriveTo)?.Eye.LengthMm)
            .Means("the eye's length at the new mark"),
        Size("width_there_mm", "Width there", drift => (drift.Drive as DriveTo)?.Eye.WidthMm)
            .Means("the eye's width at the new mark"),
        new Row("no_depth", "No depth", (drift, units) => NoDepth(drift?.Drive as NoDepth, units)).Means(
            "why no depth makes the eye any more"
        ),
        Size("scrap_length_mm", "Scrap length by the eye", drift => drift.Limits?.Least.LengthMm)
            .Means("the drift's length under which its eye is out of tolerance"),
        Size("scrap_width_mm", "Scrap width by the eye", drift => drift.Limits?.Least.WidthMm)
            .Means("the drift's width under which its eye is out of tolerance"),
    ];

    /// <summary>What is told of a drift by itself.</summary>
    public static Columns<DriftOutlook?> Short { get; } =
    [
        .. Columns.Where(column =>
            column.Name
                is "eye_length_mm"
                    or "eye_width_mm"
                    or "predicted_length_mm"
                    or "predicted_width_mm"
                    or "found_on_heads"
                    or "eye_judged"
        ),
    ];

    /// <summary>How an eye lies to what it is judged by, without a full stop; null where it is not judged.</summary>
    public static string? Judged(DriftOutlook drift)
    {
        if (drift.Wanted?.Judged is not { } judged || drift.IsInside is not { } isInside)
        {
            return null;
        }

        EyeSize eye = drift.Eye.Eye;
        string by = drift.Seat is null ? "tolerance" : "seat tolerance";
        string[] faults =
        [
            eye.LengthMm < judged.LeastLength.Mm ? "too short" : "",
            eye.LengthMm > judged.GreatestLength.Mm ? "too long" : "",
            eye.WidthMm < judged.LeastWidth.Mm ? "too narrow" : "",
            eye.WidthMm > judged.GreatestWidth.Mm ? "too wide" : "",
        ];
        return isInside
            ? $"inside its {by}"
            : $"outside its {by}: {string.Join(" and ", faults.Where(fault => fault.Length > 0))}";
    }

    /// <summary>Only a wedged eye has a waist.</summary>
    public static EyeSize? Waist(DriftOutlook drift) =>
        drift is { Along: { } along, Wanted.Driving: Driving.BothFaces } ? along.Waist : null;

    /// <summary>Only a slip-on eye has a smaller far face.</summary>
    public static EyeSize? FarFace(DriftOutlook drift) =>
        drift is { Along: { } along, Wanted.Driving: Driving.OneFace } ? along.Far : null;

    public static double? SeatToleranceMm(DriftOutlook drift) =>
        drift.Seat is null ? null : drift.Wanted?.Seat?.ToleranceMm;

    private static Row Size(string name, string heading, Func<DriftOutlook, double?> of) =>
        Row.Number(name, heading, drift => drift is null ? null : of(drift), Quantity.Gap);

    private static Cell NoDepth(NoDepth? none, LengthUnit units) => Cell.Of(none?.Why(), none?.Why(units));
}
