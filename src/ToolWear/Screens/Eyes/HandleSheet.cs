using ToolWear.Core.Fields;
using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;
using ToolWear.Screens.Guided;

namespace ToolWear.Screens.Eyes;

/// <summary>A handle that is being entered or changed.</summary>
/// <param name="sitting">The sitting.</param>
/// <param name="before">The handle as it is; null for a new one.</param>
internal sealed class HandleSheet(Sitting sitting, HandleDescribed? before)
    : FieldSheet<HandleDescribed>(HandleFields.Table, sitting, before ?? HandleFields.Table.Blank, before is null)
{
    /// <inheritdoc />
    public override string Heading => before is null ? Words.NewHandleHeading : Words.ChangeHandleHeading(before.Name);

    /// <inheritdoc />
    public override string Below => Words.EyeCaution;

    /// <inheritdoc />
    protected override FieldFault? FaultIn(HandleDescribed thing, Shop shop) =>
        IsNew && shop.Handles.ContainsKey(thing.Name) ? new("handle", Words.HandleThere(thing.Name)) : null;

    /// <inheritdoc />
    protected override string Said(HandleDescribed thing) => Words.HandleEntered(thing.Name);
}
