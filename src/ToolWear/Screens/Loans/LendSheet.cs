using ToolWear.Core.Fields;
using ToolWear.Core.Shops;
using ToolWear.Screens.Guided;

namespace ToolWear.Screens.Loans;

/// <summary>A tool that is being lent.</summary>
/// <param name="sitting">The sitting.</param>
internal sealed class LendSheet(Sitting sitting)
    : FieldSheet<LoanSaid>(EventFields.Loans, sitting, EventFields.Loans.Blank with { On = sitting.Today }, isNew: true)
{
    /// <inheritdoc />
    public override string Heading => "Lend a tool";

    /// <inheritdoc />
    protected override FieldFault? FaultIn(LoanSaid thing, Shop shop) =>
        thing.Who is null ? new("who", "Type who has it.") : null;

    /// <inheritdoc />
    protected override bool Record(LoanSaid thing) => Sitting.Record(thing.Entry());

    /// <inheritdoc />
    protected override string Said(LoanSaid thing) => $"{thing.Tool} is lent to {thing.Who}.";
}
