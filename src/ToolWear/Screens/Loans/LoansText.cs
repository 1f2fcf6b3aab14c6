using System.Collections.Immutable;
using ToolWear.Core.Shops;
using ToolWear.Pens;
using ToolWear.Results.Tools;
using ToolWear.Screens.CaliperRound;
using ToolWear.Screens.Drawing;

namespace ToolWear.Screens.Loans;

/// <summary>The text of the loans.</summary>
public static class LoansText
{
    // heading, empty row, two lines of what it means
    private const int Around = 4;

    /// <summary>How many loans fit.</summary>
    /// <param name="room">Rows of the body.</param>
    /// <returns>Rows, at least one.</returns>
    public static int RowsFor(int room) => Math.Max(1, room - Around);

    /// <summary>Draws the loans.</summary>
    /// <param name="body">Where to.</param>
    /// <param name="loans">The loans.</param>
    /// <param name="place">Where one is in the list.</param>
    public static void Draw(Picture body, ImmutableArray<Loan> loans, ListPlace place)
    {
        int y = 0;
        if (loans.IsEmpty)
        {
            body.Put(0, y++, Words.NoLoans, Ink.Quiet);
        }
        else
        {
            int rows = RowsFor(body.Height);
            int first = place.Show(loans.Length, rows);
            string[] lines = LoanTable.Columns.Over(loans).ToText(body.Width - 2).TrimEnd('\n').Split('\n');
            body.Put(2, y++, lines[0], Ink.Strong);
            for (int i = first; i < Math.Min(loans.Length, first + rows); i++, y++)
            {
                body.Put(0, y, i == place.Chosen ? ">" : "", Ink.Strong);
                body.Put(2, y, lines[1 + i]);
                if (i == place.Chosen)
                {
                    body.Tint(y, Ink.Chosen);
                }
            }
        }

        foreach (string line in Picture.Wrap(Words.LoansLegend, Math.Max(10, body.Width)))
        {
            body.Put(0, ++y, line, Ink.Quiet);
        }
    }

    /// <summary>Draws the question what was found on a tool that came back.</summary>
    /// <param name="body">Where to.</param>
    /// <param name="tool">The tool.</param>
    public static void DrawReturn(Picture body, ToolInShop tool)
    {
        body.Put(0, 0, Words.FoundOnReturn(tool.Mark.Text), Ink.Strong);
        int y = 2;
        foreach (string line in CaliperRoundText.FindingLines(body.Width))
        {
            body.Put(0, y++, line);
        }

        foreach (string line in Picture.Wrap(Words.OneLine(Words.FindingCaution), Math.Max(10, body.Width)))
        {
            body.Put(0, ++y, line, Ink.Warn);
        }
    }
}
