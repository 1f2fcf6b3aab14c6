using System.Collections.Immutable;
using ToolWear.Core.Shops;
using ToolWear.Pens;
using ToolWear.Screens.Drawing;
using ToolWear.Wording;

namespace ToolWear.Screens.ShopPage;

/// <summary>The text of the shop page.</summary>
internal static class ShopPageText
{
    private const int Value = 28;

    /// <summary>The settings that can be changed here.</summary>
    public static ImmutableArray<ShopSetting> Settings { get; } =
    [.. ShopSetting.All.Where(setting => setting != ShopSetting.Demo)];

    /// <summary>Draws the page.</summary>
    /// <param name="body">Where to.</param>
    /// <param name="shop">The shop.</param>
    /// <param name="place">Where one is.</param>
    /// <param name="typed">The value that is typed, null where none is.</param>
    /// <param name="kept">How the ranges held that were said before readings.</param>
    public static void Draw(Picture body, Shop shop, ListPlace place, string? typed, string kept)
    {
        (string Line, Ink Ink)[] below = [.. Below(body.Width, Settings[place.Chosen], kept)];
        int height = below.Length + 7 <= body.Height ? body.Height - 1 - below.Length : Math.Max(1, body.Height - 1);
        int y = body.PutList(
            0,
            height,
            Settings.Length,
            place,
            width =>
                [
                    ListColumn.Mark(place),
                    new("", Value - 3, row => Settings[row].Name),
                    new(
                        "",
                        Math.Max(0, width - Value),
                        row => typed is not null && row == place.Chosen ? "" : shop.Settings.Get(Settings[row])
                    ),
                ]
        );
        if (typed is not null)
        {
            body.PutTyped(Value, place.Chosen - place.First, typed);
        }

        foreach ((string line, Ink ink) in below)
        {
            body.Put(0, ++y, line, ink);
        }
    }

    private static IEnumerable<(string, Ink)> Below(int width, ShopSetting setting, string kept)
    {
        int room = Math.Max(10, width);
        string[] meaning = [.. Picture.Wrap($"{setting.Name}: {setting.Meaning}", room)];
        yield return (meaning[0], Ink.Quiet);
        yield return (meaning.Length > 2 ? meaning[1] + " …" : meaning.ElementAtOrDefault(1) ?? "", Ink.Quiet);
        foreach (string line in Picture.Wrap(kept, room))
        {
            yield return (line, Ink.Quiet);
        }

        string lubricant = setting == ShopSetting.Lubricant ? Cautions.BlindHoleCaution + "\n" : "";
        foreach (string line in Picture.Wrap($"{lubricant}{Cautions.ShopCaution} {Cautions.ForecastCaution}", room))
        {
            yield return (line, Ink.Warn);
        }
    }
}
