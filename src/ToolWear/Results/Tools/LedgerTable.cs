using System.Collections.Immutable;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Shops;
using Row = ToolWear.Results.Column<ToolWear.Results.Tools.LedgerRow>;

namespace ToolWear.Results.Tools;

/// <summary>An entry of the ledger, and the one that crosses it out.</summary>
internal sealed record LedgerRow(Shop Shop, Entered Entered)
{
    public Entered? CrossedOutBy => Shop.CrossedOut.GetValueOrDefault(Entered.Number);
}

/// <summary>Entries of the ledger; files say sizes in mm.</summary>
internal static class LedgerTable
{
    public static Columns<LedgerRow> Columns { get; } =
    [
        Row.Number("entry", "Entry", row => row.Entered.Number)
            .Means(
                "the entry's number in the ledger; in the CSV set the rank of the row among all rows of all event files"
            ),
        Row.Day("entered_on", "Entered on", row => row.Entered.Day)
            .Means("the shop's day on which an entry was made")
            .Ranked(3),
        Row.Text("tools", "Tools", row => Marks(row.Entered), none: ""),
        new Row("what", "What", (row, units) => Cell.Of(Said(row, LengthUnit.Mm), Said(row, units))).Means(
            "what happened, in words"
        ),
        new Row(
            "crossed_out_by",
            "Crossed out by",
            (row, _) => row.CrossedOutBy is { } by ? Cell.Of(by.Number) : Cell.Of(null, none: "")
        )
            .Means("the entry that crosses this one out")
            .Ranked(1),
        Row.Text("why", "Why", row => (row.CrossedOutBy?.What as EntryCrossedOut)?.Why, none: "").Ranked(2),
    ];

    private static string Said(LedgerRow row, LengthUnit units) => EntryWords.Of(row.Entered.What, units);

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

    private static string Line(Shop shop, Entered entered) =>
        $"{entered.Number} {Marks(entered)} {Said(shop, entered)}";

    public static string Marks(Entered entered) => string.Join(' ', entered.What.Tools.Distinct());

    public static string Said(Shop shop, Entered entered) =>
        EntryWords.Of(entered.What, shop.Settings.Units)
        + (
            shop.CrossedOut.TryGetValue(entered.Number, out Entered? by) && by.What is EntryCrossedOut crossing
                ? $"  ({CrossedOut(by.Number, crossing.Why)})"
                : ""
        );

    private static string CrossedOut(long entry, string why) => $"crossed out by entry {entry}: {why}";
}
