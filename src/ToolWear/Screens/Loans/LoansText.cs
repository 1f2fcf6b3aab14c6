using System.Collections.Immutable;
using ToolWear.Core.Shops;
using ToolWear.Pens;
using ToolWear.Results;
using ToolWear.Results.Tools;
using ToolWear.Screens.CaliperRound;
using ToolWear.Screens.Drawing;
using ToolWear.Screens.Guided;
using ToolWear.Wording;

namespace ToolWear.Screens.Loans;

/// <summary>The text of the loans.</summary>
internal static class LoansText
{
    private const string NoLoans = "No tool is lent out. Press a to lend one.";

    // empty row, two lines of what it means
    private const int Below = 3;

    /// <summary>Draws the loans.</summary>
    /// <param name="body">Where to.</param>
    /// <param name="loans">The loans.</param>
    /// <param name="place">Where one is in the list.</param>
    public static void Draw(Picture body, ImmutableArray<Loan> loans, ListPlace place)
    {
        int y = 0;
        if (loans.IsEmpty)
        {
            body.Put(0, y++, NoLoans, Ink.Quiet);
        }
        else
        {
            Table table = LoanTable.Columns.Over(loans);
            y = body.PutList(0, body.Height - Below, loans.Length, place, width => table.Columns(place, width));
        }

        body.PutWrapped(y + 1, Words.LoansLegend, Ink.Quiet);
    }

    /// <summary>Draws the question what was found on a tool that came back.</summary>
    /// <param name="body">Where to.</param>
    /// <param name="tool">The tool.</param>
    /// <param name="asked">The question.</param>
    public static void DrawReturn(Picture body, ToolInShop tool, LookQuestion asked)
    {
        body.Put(0, 0, FoundOnReturn(tool.Mark.Text), Ink.Strong);
        int y = 2;
        foreach (
            string line in asked
                .Lines(tool.Mark.Text)
                .Concat(asked.AsksPart ? [] : CaliperRoundText.FindingLines(body.Width))
                .SelectMany(each => Picture.Wrap(each, Math.Max(10, body.Width)))
        )
        {
            body.Put(0, y++, line);
        }

        body.PutWrapped(y + 1, Cautions.FindingCaution, Ink.Warn);
    }

    private static string FoundOnReturn(string mark) => $"{mark} is back. What was found on it?";
}
