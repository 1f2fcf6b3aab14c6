using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using static ToolWear.Core.Fields.FieldKinds;

namespace ToolWear.Core.Fields;

/// <summary>The fields of a handle.</summary>
public static class HandleFields
{
    /// <summary>The table.</summary>
    public static FieldTable<HandleDescribed> Table { get; } =
        new FieldTable<HandleDescribed>("handles.csv", new("", Length.Zero, Length.Zero, null, null, null))
            .Key("handle", Name, h => h.Name, (h, v) => h with { Name = v! })
            .Means("what you call the handle, such as hatchet 16", "Name")
            .Needs("length_mm", Size, h => h.Length, (h, v) => h with { Length = v!.Value })
            .Means("the long way of the handle where it enters the eye", "Length")
            .Needs("width_mm", Size, h => h.Width, (h, v) => h with { Width = v!.Value })
            .Means("the short way of the handle there", "Width")
            .Maybe("taper", Taper, h => h.Taper, (h, v) => h with { Taper = v })
            .Means(
                "of a handle that slips in from the top: mm of size a mm of length, over the whole width. Empty for one that is wedged",
                "Taper"
            )
            .Maybe("seat_tolerance_mm", Size, h => h.SeatTolerance, (h, v) => h with { SeatTolerance = v })
            .Means(
                "how far the head may sit from its place along the handle, either way; empty for none",
                "Seat either way"
            )
            .Maybe("note", Note, h => h.Note, (h, v) => h with { Note = v })
            .Means("a note, or nothing", "Note");
}
