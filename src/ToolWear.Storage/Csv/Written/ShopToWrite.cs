using System.Collections.Immutable;
using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;

namespace ToolWear.Storage.Csv.Written;

/// <summary>A shop made ready for the CSV set: every tool under a mark of its own, everything that happened in one order.</summary>
internal sealed class ShopToWrite
{
    /// <summary>Makes a shop ready.</summary>
    /// <param name="shop">The shop.</param>
    public ShopToWrite(Shop shop)
    {
        Shop = shop;
        ImmutableDictionary<long, ToolMark> marks = UniqueMarks.Of(shop);
        Tools = [.. shop.Tools.Values.Select(each => each.Tool with { Mark = marks[each.Id] })];
        Events = new EventRanks(shop, marks).Ranked();
    }

    /// <summary>The shop.</summary>
    public Shop Shop { get; }

    /// <summary>The tools in the order in which they were added, their marks unique.</summary>
    public ImmutableArray<Tool> Tools { get; }

    /// <summary>What happened, in the order in which it is to be entered again; the first has rank 1.</summary>
    public ImmutableArray<LedgerEntry> Events { get; }
}
