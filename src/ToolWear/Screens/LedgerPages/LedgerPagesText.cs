using System.Collections.Immutable;
using System.Globalization;
using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;
using ToolWear.Pens;
using ToolWear.Results.Tools;
using ToolWear.Screens.Drawing;

namespace ToolWear.Screens.LedgerPages;

/// <summary>The text of the ledger.</summary>
internal static class LedgerPagesText
{
    private const string NoEntries = "No entry has these words.";

    /// <summary>Draws the list.</summary>
    /// <param name="body">Where to.</param>
    /// <param name="shop">The shop.</param>
    /// <param name="entries">The entries.</param>
    /// <param name="place">Where one is.</param>
    /// <param name="prompt">What is asked, empty for nothing.</param>
    /// <param name="typed">What is typed.</param>
    public static void Draw(
        Picture body,
        Shop shop,
        ImmutableArray<Entered> entries,
        ListPlace place,
        string prompt,
        string typed
    )
    {
        bool IsCrossed(int row) => shop.CrossedOut.ContainsKey(entries[row].Number);
        Ink InkOf(int row) => IsCrossed(row) ? Ink.Quiet : Ink.Plain;
        body.PutList(
            0,
            body.Height - 1,
            entries.Length,
            place,
            width =>
                [
                    new("", 6, row => entries[row].Number.ToString(CultureInfo.InvariantCulture), InkOf, IsRight: true),
                    new("", 1, row => IsCrossed(row) ? "x" : "", _ => Ink.Warn),
                    new("", 6, row => LedgerTable.Marks(entries[row]), InkOf),
                    new("", Math.Max(0, width - 16), row => LedgerTable.Said(shop, entries[row]), InkOf),
                ]
        );
        if (entries.IsEmpty)
        {
            body.Put(0, 0, NoEntries, Ink.Quiet);
        }

        if (prompt.Length > 0)
        {
            int at = body.Put(0, body.Height - 1, prompt, Ink.Strong);
            body.PutTyped(at + 1, body.Height - 1, typed);
        }
    }
}
