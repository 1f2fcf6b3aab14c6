using System.Collections.Immutable;
using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Pens;
using ToolWear.Screens.Guided;
using ToolWear.Screens.ToolRack;

namespace ToolWear.Screens.Loans;

/// <summary>A tool that is being lent.</summary>
/// <param name="shop">The shop.</param>
internal sealed class LendSheet(Shop shop) : GuidedEntry(new GuidedLine(Questions(shop)))
{
    private const string LendHeading = "A tool is lent out";
    private const string AskLent = "The tool's mark; the arrows show those in service.";
    private const string AskLentTo = "Who has it.";
    private const string AskLentNote = "A note, such as for how long; empty for none.";
    private const string WhoWanted = "Who has it is wanted.";

    private const int Tool = 0;
    private const int To = 1;
    private const int Note = 2;

    /// <inheritdoc />
    public override string Heading => LendHeading;

    /// <inheritdoc />
    public override bool Take(AnswersRead read, Sitting sitting)
    {
        if (!ToolMark.TryParse(read.Text(Tool) ?? "", out ToolMark mark, out string refusal))
        {
            read.Refuse(Tool, refusal);
        }

        string to = read.Text(To) ?? "";
        if (to.Length == 0)
        {
            read.Refuse(To, WhoWanted);
        }

        if (read.Refusal is not null || !sitting.Record(new ToolLent(mark, sitting.Today, to, read.Text(Note))))
        {
            return false;
        }

        sitting.Say(LentNow(mark.Text, to), Ink.Done);
        return true;
    }

    private static ImmutableArray<Question> Questions(Shop shop) =>
        [
            new("Tool", AskLent, [.. ToolRackText.InService(shop).Select(tool => tool.Mark.Text)]),
            new("Lent to", AskLentTo, []),
            new("Note", AskLentNote, []),
        ];

    private static string LentNow(string mark, string to) => $"{mark} is lent to {to}.";
}
