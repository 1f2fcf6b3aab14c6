namespace ToolWear.Core.Tools.Forms;

/// <summary>Tooling that has no form of its own here; taken as struck.</summary>
internal static class OtherForm
{
    /// <summary>The form.</summary>
    public static readonly ToolForm Form = new(
        "other",
        IsStruck: true,
        [new("size", Wears.Smaller, Measures.Other), new(ToolForm.Overall, Wears.Smaller, Measures.Overall)],
        _ => Work.Other
    );
}
