using System.Collections.Immutable;
using ToolWear.Core.Measure;

namespace ToolWear.Core.Tools.Forms;

/// <summary>Every form of tool there is.</summary>
public static class ToolForms
{
    /// <summary>The name of the form that opens and shapes eyes.</summary>
    public const string Drift = "drift";

    /// <summary>The forms, in the order in which they are listed.</summary>
    public static ImmutableArray<ToolForm> All { get; } =
    [
        Forms.Drift.Form,
        Slitter.Form,
        SlotPunch.Form,
        Punch.Form,
        Fuller.Form,
        Flatter.Form,
        Swage.Form,
        HotCut.Form,
        CutOff.Form,
        Die.Form,
        Bolster.Form,
        OtherForm.Form,
    ];

    /// <summary>Finds a form by its name.</summary>
    /// <param name="name">What was typed.</param>
    /// <param name="form">The form.</param>
    /// <param name="refusal">Which forms there are, where it is none of them.</param>
    /// <returns>True where it is one of the names.</returns>
    public static bool TryFind(string name, out ToolForm form, out string refusal)
    {
        ToolForm? found = All.FirstOrDefault(each => each.Name == name);
        form = found ?? OtherForm.Form;
        refusal = found is null ? NearNames.Refusal("form", name, All.Select(each => each.Name)) : "";
        return found is not null;
    }
}
