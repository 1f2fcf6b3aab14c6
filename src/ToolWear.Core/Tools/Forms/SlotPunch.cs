namespace ToolWear.Core.Tools.Forms;

/// <summary>A punch that takes a slug out where the eye will be.</summary>
internal static class SlotPunch
{
    /// <summary>The form.</summary>
    public static readonly ToolForm Form = new(
        "slot punch",
        IsStruck: true,
        [new("width", Wears.Smaller, Measures.Width), new(ToolForm.Overall, Wears.Smaller, Measures.Overall)],
        _ => Work.Slitting,
        OpensASlit: true,
        DressedAfter: 12
    );
}
