using ToolWear.Core.Fields;
using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;
using ToolWear.Screens.Guided;
using ToolWear.Wording;

namespace ToolWear.Screens.Eyes;

/// <summary>A handle that is being entered or changed.</summary>
/// <param name="sitting">The sitting.</param>
/// <param name="before">The handle as it is; null for a new one.</param>
internal sealed class HandleSheet(Sitting sitting, HandleDescribed? before)
    : FieldSheet<HandleDescribed>(HandleFields.Table, sitting, before ?? HandleFields.Table.Blank, before is null)
{
    private const string NewHandleHeading = "A new handle";

    /// <inheritdoc />
    public override string Heading => before is null ? NewHandleHeading : ChangeHandleHeading(before.Name);

    /// <inheritdoc />
    public override string Below => Cautions.EyeCaution;

    /// <inheritdoc />
    protected override FieldFault? FaultIn(HandleDescribed thing, Shop shop) =>
        IsNew && shop.Handles.ContainsKey(thing.Name) ? new("handle", HandleThere(thing.Name)) : null;

    /// <inheritdoc />
    protected override string Said(HandleDescribed thing) => HandleEntered(thing.Name);

    private static string ChangeHandleHeading(string handle) => $"Handle {handle}";

    private static string HandleThere(string handle) => $"there is a handle {handle} already: change that one";

    private static string HandleEntered(string handle) => $"Handle {handle} saved.";
}
