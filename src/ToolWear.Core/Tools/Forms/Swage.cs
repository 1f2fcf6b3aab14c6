namespace ToolWear.Core.Tools.Forms;

/// <summary>A grooved tool that shapes round work; its groove widens.</summary>
internal static class Swage
{
    /// <summary>The form.</summary>
    public static readonly ToolForm Form = new(
        "swage",
        IsStruck: true,
        [new("groove", Wears.Larger, Measures.Width), new(ToolForm.Overall, Wears.Smaller, Measures.Overall)],
        _ => Work.Other
    );
}
