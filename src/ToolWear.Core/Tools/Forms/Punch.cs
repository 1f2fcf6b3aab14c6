namespace ToolWear.Core.Tools.Forms;

/// <summary>A round or square punch.</summary>
internal static class Punch
{
    /// <summary>The form.</summary>
    public static readonly ToolForm Form = new(
        "punch",
        IsStruck: true,
        [new("width", Wears.Smaller, Measures.Width), new(ToolForm.Overall, Wears.Smaller, Measures.Overall)],
        _ => Work.Slitting,
        OpensASlit: true,
        DressedAfter: 12
    );
}
