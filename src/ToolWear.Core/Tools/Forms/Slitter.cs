namespace ToolWear.Core.Tools.Forms;

/// <summary>A hot chisel that parts the metal where the eye will be.</summary>
internal static class Slitter
{
    /// <summary>The form.</summary>
    public static readonly ToolForm Form = new(
        "slitter",
        IsStruck: true,
        [new("width", Wears.Smaller, Measures.Width), new(ToolForm.Overall, Wears.Smaller, Measures.Overall)],
        _ => Work.Slitting,
        OpensASlit: true,
        DressedAfter: 12
    );
}
