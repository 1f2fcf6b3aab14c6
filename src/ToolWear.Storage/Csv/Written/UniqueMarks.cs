using System.Collections.Immutable;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;

namespace ToolWear.Storage.Csv.Written;

/// <summary>A mark for each tool that no other tool has, though a mark may be stamped again once a tool is scrapped.</summary>
internal static class UniqueMarks
{
    /// <summary>
    /// The marks. Of tools with the same mark the one not scrapped keeps it, else the one scrapped last; the others are
    /// named "R3 (scrapped 2026-03-01)", with a 2, 3 ... behind where that is taken too.
    /// </summary>
    /// <param name="shop">The shop.</param>
    /// <returns>Each tool's mark by its number.</returns>
    public static ImmutableDictionary<long, ToolMark> Of(Shop shop)
    {
        Dictionary<long, ToolMark> marks = [];
        HashSet<string> taken = new(StringComparer.Ordinal);
        foreach (ToolInShop each in shop.Tools.Values)
        {
            if (shop.TryFind(each.Mark, out ToolInShop? keeper) && keeper.Id == each.Id)
            {
                marks[each.Id] = each.Mark;
                taken.Add(each.Mark.Text);
            }
        }

        foreach (ToolInShop each in shop.Tools.Values.Where(each => !marks.ContainsKey(each.Id)))
        {
            marks[each.Id] = Another(each, taken);
        }

        return marks.ToImmutableDictionary();
    }

    private static ToolMark Another(ToolInShop tool, HashSet<string> taken)
    {
        string scrapped = $" (scrapped {tool.StateOn:yyyy-MM-dd})";
        for (int number = 1; ; number++)
        {
            string behind = number == 1 ? scrapped : $"{scrapped} {number}";
            string name = Beginning(tool.Mark.Text, ToolMark.MostCharacters - behind.Length) + behind;
            if (taken.Add(name) && ToolMark.TryParse(name, out ToolMark mark, out _))
            {
                return mark;
            }
        }
    }

    private static string Beginning(string text, int most)
    {
        int length = Math.Min(text.Length, most);
        bool splitsPair = length < text.Length && char.IsLowSurrogate(text[length]);
        return text[..(splitsPair ? length - 1 : length)].TrimEnd();
    }
}
