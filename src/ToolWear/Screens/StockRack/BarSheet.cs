using ToolWear.Core.Fields;
using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;
using ToolWear.Screens.Guided;

namespace ToolWear.Screens.StockRack;

/// <summary>A bar that is being entered or changed.</summary>
internal sealed class BarSheet : FieldSheet<BarDescribed>
{
    private readonly BarDescribed? before;

    /// <summary>Begins.</summary>
    /// <param name="sitting">The sitting.</param>
    /// <param name="before">The bar as it is; null for a new one.</param>
    public BarSheet(Sitting sitting, BarDescribed? before)
        : base(BarFields.Table, sitting, before)
    {
        this.before = before;
        if (before is null)
        {
            Offer("section", BarFields.Table["section"].Write(BarFields.Table.Blank));
        }
    }

    /// <inheritdoc />
    public override string Heading => before is null ? Words.NewBarHeading : Words.ChangeBarHeading(before.Bar);

    /// <inheritdoc />
    protected override FieldFault? FaultIn(BarDescribed thing, Shop shop) =>
        before is null && shop.Bars.ContainsKey(thing.Bar) ? new("bar", Words.BarThere(thing.Bar)) : null;

    /// <inheritdoc />
    protected override string Said(BarDescribed thing) => Words.BarEntered(thing.Bar);
}
