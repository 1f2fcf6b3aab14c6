namespace ToolWear.Core.Tools.Forms;

/// <summary>A tapered bar driven into the eye to open and shape it.</summary>
internal static class Drift
{
    /// <summary>The form.</summary>
    public static readonly ToolForm Form = new(
        ToolForms.Drift,
        IsStruck: true,
        [
            new("width", Wears.Smaller, Measures.Width),
            new("length", Wears.Smaller, Measures.Length),
            new(ToolForm.Overall, Wears.Smaller, Measures.Overall),
        ],
        place =>
            place switch
            {
                Place.Opener => Work.Opening,
                Place.Rough or Place.Second => Work.Cheeks,
                Place.Finish => Work.Sizing,
                _ => Work.Other,
            }
    );
}
