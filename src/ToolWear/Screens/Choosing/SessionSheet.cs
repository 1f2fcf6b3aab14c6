using ToolWear.Core.Fields;
using ToolWear.Core.Ledger;
using ToolWear.Screens.Guided;

namespace ToolWear.Screens.Choosing;

/// <summary>The day of a session, its lubricant and cooling, who works.</summary>
/// <param name="sitting">The sitting.</param>
/// <param name="details">What was said before.</param>
internal sealed class SessionSheet(Sitting sitting, SessionOpened details)
    : FieldSheet<SessionSaid>(EventFields.Sessions, sitting, new(details, null, null), isNew: false)
{
    /// <inheritdoc />
    public override string Heading => "This session";

    /// <inheritdoc />
    public override string Below => "A session you forgot gets its own day; then tally its heats as usual.";

    /// <inheritdoc />
    protected override bool Record(SessionSaid thing) => true;

    /// <inheritdoc />
    protected override string Said(SessionSaid thing) =>
        $"The session is of {thing.Opened.On:yyyy-MM-dd}. Choose its tools, then Enter.";
}
