using ToolWear.Core.Fields;
using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;
using ToolWear.Screens.Guided;

namespace ToolWear.Screens.StockRack;

/// <summary>A bar that is being entered or changed.</summary>
internal sealed class BarSheet : FieldSheet<BarDescribed>
{
    private const string NewBarHeading = "A new bar";

    /// <summary>Begins.</summary>
    /// <param name="sitting">The sitting.</param>
    /// <param name="before">The bar as it is; null for a new one.</param>
    public BarSheet(Sitting sitting, BarDescribed? before)
        : base(BarFields.Table, sitting, before ?? BarFields.Table.Blank, before is null)
    {
        Heading = before is null ? NewBarHeading : ChangeBarHeading(before.Bar);
        if (before is null)
        {
            Offer(BarFields.Table.Blank, "section");
        }
    }

    /// <inheritdoc />
    public override string Heading { get; }

    /// <inheritdoc />
    protected override FieldFault? FaultIn(BarDescribed thing, Shop shop) =>
        IsNew && shop.Bars.ContainsKey(thing.Bar) ? new("bar", BarThere(thing.Bar)) : null;

    /// <inheritdoc />
    protected override string Said(BarDescribed thing) => BarEntered(thing.Bar);

    private static string ChangeBarHeading(string bar) => $"Bar {bar}";

    private static string BarThere(string bar) => $"there is a bar {bar} already: change that one";

    private static string BarEntered(string bar) => $"Bar {bar} saved.";
}
