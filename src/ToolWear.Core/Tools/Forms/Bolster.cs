namespace ToolWear.Core.Tools.Forms;

/// <summary>The holed block a drift is driven into; its hole widens.</summary>
internal static class Bolster
{
    /// <summary>The form.</summary>
    public static readonly ToolForm Form = new(
        "bolster",
        IsStruck: false,
        [new("hole", Wears.Larger, Measures.Width)],
        _ => Work.Other
    );
}
