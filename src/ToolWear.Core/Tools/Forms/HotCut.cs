namespace ToolWear.Core.Tools.Forms;

/// <summary>A chisel for hot metal.</summary>
internal static class HotCut
{
    /// <summary>The form.</summary>
    public static readonly ToolForm Form = new(
        "hot cut",
        IsStruck: true,
        [new("edge", Wears.Smaller, Measures.Edge), new(ToolForm.Overall, Wears.Smaller, Measures.Overall)],
        _ => Work.Other,
        DressedAfter: 20
    );
}
