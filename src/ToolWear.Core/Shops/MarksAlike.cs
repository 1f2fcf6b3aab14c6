using System.Collections.Immutable;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Tools;

namespace ToolWear.Core.Shops;

/// <summary>Marks that differ only in capital and small letters: two tools may bear them, and will be mixed up.</summary>
/// <remarks>One letter typed in two ways (normal form C) is the same mark, and refused as taken.</remarks>
public static class MarksAlike
{
    /// <summary>The mark that is meant: as typed where a tool bears it, else the only one unlike it in case alone.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="typed">As it was typed.</param>
    /// <returns>A mark of the shop; the same one where none is meant.</returns>
    public static ToolMark Meant(this Shop shop, ToolMark typed) =>
        shop.TryFind(typed, out _)
        || shop.Marks.Keys.Where(each => each.Text.Equals(typed.Text, StringComparison.OrdinalIgnoreCase)).ToArray()
            is not [var only]
            ? typed
            : only;

    /// <summary>The marks of the tools that are not scrapped, sorted.</summary>
    /// <param name="shop">The shop.</param>
    /// <returns>Each mark once.</returns>
    public static IEnumerable<string> MarksInUse(this Shop shop) =>
        shop.Marks.Keys.Select(mark => mark.Text).Order(StringComparer.Ordinal);

    /// <summary>Refuses a mark that no tool has.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="mark">The mark.</param>
    /// <returns>What is wrong, and which mark was probably meant.</returns>
    public static string NoTool(this Shop shop, ToolMark mark) =>
        NearNames.Refusal("tool", mark.Text, shop.MarksInUse());

    /// <summary>The marks like one that entries have given.</summary>
    /// <param name="shop">The shop after the entries.</param>
    /// <param name="entries">The entries.</param>
    /// <returns>Each mark given, with another of a tool that is not scrapped; none where all differ in more.</returns>
    public static ImmutableArray<(ToolMark Given, ToolMark Other)> Of(Shop shop, IEnumerable<LedgerEntry> entries)
    {
        ToolMark[] given =
        [
            .. entries
                .Select(entry =>
                    entry switch
                    {
                        ToolAdded e => e.Tool.Mark,
                        ToolRemarked e => e.To,
                        _ => default,
                    }
                )
                .Where(mark => mark != default)
                .Distinct(),
        ];
        if (given.Length == 0)
        {
            return [];
        }

        ILookup<string, ToolMark> borne = shop
            .Tools.Values.Where(tool => tool.State != ToolState.Scrapped)
            .Select(tool => tool.Mark)
            .ToLookup(mark => mark.Text, StringComparer.OrdinalIgnoreCase);
        HashSet<ToolMark> told = [];
        var alike = ImmutableArray.CreateBuilder<(ToolMark Given, ToolMark Other)>();
        foreach (ToolMark mark in given.Where(mark => borne[mark.Text].Contains(mark)))
        {
            foreach (ToolMark other in borne[mark.Text].Where(other => other != mark && !told.Contains(other)))
            {
                told.Add(mark);
                alike.Add((mark, other));
            }
        }

        return alike.ToImmutable();
    }
}
