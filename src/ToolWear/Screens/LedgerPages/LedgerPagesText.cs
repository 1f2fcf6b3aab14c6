using System.Collections.Immutable;
using System.Globalization;
using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;
using ToolWear.Results.Tools;
using ToolWear.Screens.Drawing;

namespace ToolWear.Screens.LedgerPages;

/// <summary>The text of the ledger.</summary>
internal static class LedgerPagesText
{
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
                    new("", 6, row => Marks(entries[row]), InkOf),
                    new("", Math.Max(0, width - 16), row => Said(shop, entries[row]), InkOf),
                ]
        );
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
