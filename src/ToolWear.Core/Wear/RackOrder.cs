using ToolWear.Core.Shops;

namespace ToolWear.Core.Wear;

/// <summary>The order of tools on the rack: by eye, then as the work goes, then by mark with its numbers in order.</summary>
public sealed class RackOrder : IComparer<ToolInShop>
{
    private RackOrder() { }

    /// <summary>The order.</summary>
    public static RackOrder Instance { get; } = new();

    /// <inheritdoc />
    public int Compare(ToolInShop? x, ToolInShop? y)
    {
        if (x is null || y is null)
        {
            return (x is null ? 0 : 1) - (y is null ? 0 : 1);
        }

        // tools that serve every eye hang at the end
        int byEye = string.CompareOrdinal(x.Tool.Eye ?? "\uFFFF", y.Tool.Eye ?? "\uFFFF");
        int byPlace = byEye != 0 ? byEye : x.Tool.Place.CompareTo(y.Tool.Place);
        int byForm = byPlace != 0 ? byPlace : string.CompareOrdinal(x.Tool.Form.Name, y.Tool.Form.Name);
        return byForm != 0 ? byForm : ByMark(x.Mark.Text, y.Mark.Text);
    }

    private static int ByMark(string x, string y)
    {
        int byHead = string.CompareOrdinal(x.TrimEnd(Digits), y.TrimEnd(Digits));
        int byNumber = byHead != 0 ? byHead : Tail(x).Length.CompareTo(Tail(y).Length);
        return byNumber != 0 ? byNumber : string.CompareOrdinal(x, y);
    }

    private static ReadOnlySpan<char> Tail(string mark) => mark.AsSpan(mark.TrimEnd(Digits).Length).TrimStart('0');

    private static readonly char[] Digits = [.. "0123456789"];
}
