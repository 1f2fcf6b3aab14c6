namespace ToolWear.Core.Tools.Forms;

/// <summary>A flat-faced tool that smooths; its edges round over.</summary>
internal static class Flatter
{
    /// <summary>The form.</summary>
    public static readonly ToolForm Form = new(
        "flatter",
        IsStruck: true,
        [new("edge", Wears.Smaller, Measures.Edge), new(ToolForm.Overall, Wears.Smaller, Measures.Overall)],
        _ => Work.Other
    );
}
