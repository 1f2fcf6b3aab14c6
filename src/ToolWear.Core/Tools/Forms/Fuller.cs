namespace ToolWear.Core.Tools.Forms;

/// <summary>A round-nosed tool that draws metal sideways; its nose wears flat.</summary>
internal static class Fuller
{
    /// <summary>The form.</summary>
    public static readonly ToolForm Form = new(
        "fuller",
        IsStruck: true,
        [new("flat", Wears.Larger, Measures.Flat), new(ToolForm.Overall, Wears.Smaller, Measures.Overall)],
        _ => Work.Fullering,
        DressedAfter: 0
    );
}
