using System.Collections.Immutable;
using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;
using ToolWear.Results.Tools;
using ToolWear.Screens.Drawing;

namespace ToolWear.Screens.LedgerPages;

/// <summary>The text of the ledger.</summary>
public static class LedgerPagesText
{
    private const int NumberEnd = 6;
    private const int Mark = 8;
    private const int Tool = 10;
    private const int What = 17;

    /// <summary>The entries that have all the words, the last first.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="words">Words with spaces between; empty for all entries.</param>
    /// <returns>The entries.</returns>
    public static ImmutableArray<Entered> Found(Shop shop, string words)
    {
        string[] wanted = words.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        return
        [
            .. shop
                .Ledger.Reverse()
                .Where(each => wanted.All(word => Line(shop, each).Contains(word, StringComparison.OrdinalIgnoreCase))),
        ];
    }

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
        int rows = RowsFor(body.Height);
        int first = place.Show(entries.Length, rows);
        for (int i = first; i < Math.Min(entries.Length, first + rows); i++)
        {
            int y = i - first;
            Entered entered = entries[i];
            bool isCrossed = shop.CrossedOut.ContainsKey(entered.Number);
            Ink ink = isCrossed ? Ink.Quiet : Ink.Plain;
            body.PutRight(
                NumberEnd,
                y,
                entered.Number.ToString(System.Globalization.CultureInfo.InvariantCulture),
                ink
            );
            body.Put(Mark, y, isCrossed ? "x" : "", Ink.Warn);
            body.Put(Tool, y, Marks(entered), ink, What - Tool - 1);
            body.Put(What, y, Said(shop, entered), ink);
            if (i == place.Chosen)
            {
                body.Tint(y, Ink.Chosen);
            }
        }

        if (entries.IsEmpty)
        {
            body.Put(0, 0, Words.NoEntries, Ink.Quiet);
        }

        if (prompt.Length > 0)
        {
            int at = body.Put(0, body.Height - 1, prompt, Ink.Strong);
            body.PutTyped(at + 1, body.Height - 1, typed);
        }
    }

    /// <summary>How many entries fit.</summary>
    /// <param name="room">Rows of the body.</param>
    /// <returns>Rows, at least one.</returns>
    public static int RowsFor(int room) => Math.Max(1, room - 1);

    private static string Line(Shop shop, Entered entered) =>
        $"{entered.Number} {Marks(entered)} {Said(shop, entered)}";

    private static string Marks(Entered entered) => string.Join(' ', entered.What.Tools.Distinct());

    private static string Said(Shop shop, Entered entered) =>
        EntryWords.Of(entered.What, shop.Settings.Units)
        + (
            shop.CrossedOut.TryGetValue(entered.Number, out Entered? by) && by.What is EntryCrossedOut crossing
                ? $"  ({Words.CrossedOut(by.Number, crossing.Why)})"
                : ""
        );
}
