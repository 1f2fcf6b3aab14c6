using System.Diagnostics.CodeAnalysis;
using ToolWear.Core.Sections;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;

namespace ToolWear.Core.Planning;

/// <summary>The body that tools of a place are forged to, taken from one that was.</summary>
/// <param name="Body">The body.</param>
/// <param name="Like">The tool it was taken from.</param>
/// <param name="IsOwn">Whether that tool is of the very place; else it was made for another eye.</param>
public sealed record PlaceBody(Body Body, ToolInShop Like, bool IsOwn)
{
    /// <summary>The body of a place: that of the last tool made there, else of the tool for another eye nearest in section.</summary>
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
    )
    {
        found = null;
        Series? series = place.Eye is { } eye
            ? shop.Series.GetValueOrDefault(new SeriesKey(eye, place.Place, place.Form))
            : null;
        ToolInShop? own = Nearest(shop, tool => ToolPlace.Of(tool) == place, series);
        ToolInShop? like =
            own ?? Nearest(shop, tool => tool.Place == place.Place && tool.Form.Name == place.Form, series);
        if (like is null)
        {
            refusal = "the stations of no tool of this sort are entered, so its stock is not known";
            return false;
        }

        Station[] stations =
        [
            .. like.Tool.Stations.Select(each => new Station(BodyPart.Body, each.FromMark, each.Section)),
        ];
        if (Body.TryMake(stations, out Body? body, out refusal))
        {
            found = new PlaceBody(body, like, own is not null);
        }

        return found is not null;
    }

    // the last made; of those for other eyes the one whose section is nearest
    private static ToolInShop? Nearest(Shop shop, Func<Tool, bool> belongs, Series? series) =>
        shop
            .Tools.Values.Where(tool => tool.Tool.Stations.Length > 1 && belongs(tool.Tool))
            .Reverse()
            .MinBy(tool => Math.Abs(Size(shop.SeriesOf(tool.Tool)) - Size(series)));

    private static double Size(Series? series) => (series?.Length?.Mm ?? 0) * (series?.Width?.Mm ?? 0);
}
