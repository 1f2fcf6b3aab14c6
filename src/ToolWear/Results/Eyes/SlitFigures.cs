using ToolWear.Core.Eyes.Slits;
using Row = ToolWear.Results.Column<ToolWear.Core.Eyes.Slits.SlitOutlook?>;

namespace ToolWear.Results.Eyes;

/// <summary>What is left in a slitter or punch; all unknown for what opens no slit.</summary>
internal static class SlitFigures
{
    public static Columns<SlitOutlook?> Columns { get; } =
    [
        Row.Number("slit_mm", "Slit", slit => slit?.EdgeMm, Quantity.Size).Means("the slit that an edge opens"),
        Row.Number("slit_stretch", "Stretch", slit => slit?.Slit?.StretchShare, Quantity.Share with { Unit = "" })
            .Means("how much the slit stretches round the eye, as a share"),
        Row.Text("slit_warning", "Warning", slit => slit?.Slit?.Warning ?? slit?.SlitRefusal)
            .Means("what to mind of the slit"),
        Row.Number("slit_needs_mm", "Needs", slit => slit?.NeedsMm, Quantity.Size)
            .Means("the edge that the wanted slit needs"),
        Row.YesNo(
                "at_its_limit",
                "At its limit",
                slit => slit is { EdgeMm: not null, NeedsMm: not null } ? slit.IsAtItsLimit : null
            )
            .Means("yes where a slitter's edge is narrower than its slit needs"),
        Row.Number("dressings", "Dressings so far", slit => slit?.History?.Dressings)
            .Means("on how many dressings the loss of one rests"),
        Row.Number("loss_a_dressing_mm", "Loss a dressing", slit => slit?.History?.LossMm, Quantity.Wear)
            .Means("what is gone of the length from one dressing to the next"),
        Row.Number("heats_a_dressing", "Heats a dressing", slit => slit?.History?.HeatsADressing, Quantity.Heats)
            .Means("weighted heats between two dressings"),
        Row.Number("dressings_left", "Dressings left", slit => slit?.Dressings?.Dressings)
            .Means("how often it can still be dressed before it is too short"),
        Row.Number("heats_by_length", "Heats by length", slit => slit?.HeatsByLength, Quantity.Heats)
            .Means("heats until dressing has made it too short"),
    ];
}
