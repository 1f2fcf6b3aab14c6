using System.Collections.Immutable;
using ToolWear.Core.Ledger;

namespace ToolWear.Screens.Guided;

/// <summary>Something done to one tool that takes a few answers.</summary>
/// <param name="heading">What stands over the screen.</param>
/// <param name="below">What stands below the open question.</param>
/// <param name="questions">The questions, at least one.</param>
/// <param name="entry">The entry by the answers, and what to ask once before it is recorded.</param>
/// <param name="said">What is said once it is recorded.</param>
internal sealed class DeedSheet(
    string heading,
    string below,
    ImmutableArray<Question> questions,
    Func<AnswersRead, (LedgerEntry Entry, string? Doubt)> entry,
    Func<LedgerEntry, string> said
) : GuidedEntry(new GuidedLine(questions))
{
    /// <inheritdoc />
    public override string Heading => heading;

    /// <inheritdoc />
    public override string Below => below;

    /// <inheritdoc />
    public override bool Take(AnswersRead read, Sitting sitting)
    {
        (LedgerEntry what, string? doubt) = entry(read);
        if (read.Refusal is not null || !sitting.RecordAsking(doubt, [what]))
        {
            return false;
        }

        sitting.Say(said(what), Pens.Ink.Done);
        return true;
    }
}
