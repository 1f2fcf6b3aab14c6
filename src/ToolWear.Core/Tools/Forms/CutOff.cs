namespace ToolWear.Core.Tools.Forms;

/// <summary>A blade laid across the work and struck, which parts it.</summary>
internal static class CutOff
{
    /// <summary>The form.</summary>
    public static readonly ToolForm Form = new(
        "cut-off",
        IsStruck: true,
        [new("edge", Wears.Smaller, Measures.Edge), new(ToolForm.Overall, Wears.Smaller, Measures.Overall)],
        _ => Work.Other
    );
}
