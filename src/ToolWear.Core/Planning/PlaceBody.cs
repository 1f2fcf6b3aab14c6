using System.Diagnostics.CodeAnalysis;
using ToolWear.Core.Ledger;
using ToolWear.Core.Sections;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;

namespace ToolWear.Core.Planning;

/// <summary>The body that tools of a place are forged to.</summary>
/// <param name="Body">The body.</param>
/// <param name="Own">The tool of the very place that it was taken from; null where it is estimated.</param>
/// <param name="Blank">The estimate from the series; null where the body is a tool's own or another tool's.</param>
/// <param name="Like">The tool for other eyes that it was taken from; null for the others.</param>
public sealed record PlaceBody(Body Body, ToolInShop? Own, ToolBlank? Blank, ToolInShop? Like)
{
    /// <summary>Where the body comes from, without a full stop; null where it is a tool's own.</summary>
    public string? Estimated =>
        Own is not null ? null
        : Like is { } like ? $"estimated: the body is that of {like.Mark}"
        : "estimated: the body is that of its series, scaled to its eye";

    /// <summary>The body of a place: that of the last tool made there; else that of its series, scaled to its eye; else that
    /// of the last tool of its form and place.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="place">The place.</param>
    /// <param name="series">What its tools are made like; null where nobody said.</param>
    /// <param name="eye">Its eye; null where it has none or nobody described it.</param>
    /// <param name="found">The body, where one is known.</param>
    /// <param name="refusal">Otherwise the reason, without a full stop.</param>
    /// <returns>True where one is known.</returns>
    public static bool TryFind(
        Shop shop,
        ToolPlace place,
        Series? series,
        EyeDescribed? eye,
        [NotNullWhen(true)] out PlaceBody? found,
        [NotNullWhen(false)] out string? refusal
    )
    {
        refusal = null;
        ToolInShop? own = Last(shop, tool => ToolPlace.Of(tool) == place);
        ToolInShop? like = own ?? Last(shop, tool => tool.Place == place.Place && tool.Form.Name == place.Form);
        found =
            own is not null && BodyOf(own) is { } made ? new PlaceBody(made, own, null, null)
            : series is not null && ToolBlank.TryFor(series, eye?.Depth?.Mm, out ToolBlank? blank, out _)
                ? new PlaceBody(blank.Body, null, blank, null)
            : like is not null && BodyOf(like) is { } body ? new PlaceBody(body, null, null, like)
            : null;
        refusal = found is null ? "no tool of this sort has its body on record, so the cut length is not known" : null;
        return found is not null;
    }

    /// <summary>The body of a place of the shop, with its series and eye as entered.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="place">The place.</param>
    /// <param name="found">The body, where one is known.</param>
    /// <param name="refusal">Otherwise the reason, without a full stop.</param>
    /// <returns>True where one is known.</returns>
    public static bool TryFind(
        Shop shop,
        ToolPlace place,
        [NotNullWhen(true)] out PlaceBody? found,
        [NotNullWhen(false)] out string? refusal
    ) =>
        TryFind(
            shop,
            place,
            place.SeriesIn(shop),
            place.Eye is { } eye ? shop.Eyes.GetValueOrDefault(eye) : null,
            out found,
            out refusal
        );

    private static Body? BodyOf(ToolInShop tool) =>
        Body.TryMake(
            [.. tool.Tool.Stations.Select(each => new Station(BodyPart.Body, each.FromMark, each.Section))],
            out Body? body,
            out _
        )
            ? body
            : null;

    private static ToolInShop? Last(Shop shop, Func<Tool, bool> belongs) =>
        shop.Tools.Values.LastOrDefault(tool => tool.Tool.Stations.Length > 1 && belongs(tool.Tool));
}
