namespace ToolWear.Core.Tools.Forms;

/// <summary>One of the hammer's own working faces.</summary>
internal static class Die
{
    /// <summary>The form.</summary>
    public static readonly ToolForm Form = new(
        "die",
        IsStruck: false,
        [new("flat", Wears.Larger, Measures.Flat)],
        _ => Work.Other
    );
}
