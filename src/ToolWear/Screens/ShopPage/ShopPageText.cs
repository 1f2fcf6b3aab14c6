using System.Collections.Immutable;
using ToolWear.Core.Shops;
using ToolWear.Screens.Drawing;

namespace ToolWear.Screens.ShopPage;

/// <summary>The text of the shop page.</summary>
public static class ShopPageText
{
    private const int Value = 28;

    /// <summary>The settings that can be changed here.</summary>
    public static ImmutableArray<ShopSetting> Settings { get; } =
    [.. ShopSetting.All.Where(setting => setting != ShopSetting.Demo)];

    /// <summary>How many settings fit.</summary>
    /// <param name="width">Columns.</param>
    /// <param name="room">Rows of the body.</param>
    /// <param name="setting">The chosen setting.</param>
    /// <returns>Rows, at least one.</returns>
    public static int RowsFor(int width, int room, ShopSetting setting)
    {
        int below = Below(width, setting).Count() + 1;
        return below + 6 <= room ? room - below : Math.Max(1, room - 1);
    }

    /// <summary>Draws the page.</summary>
    /// <param name="body">Where to.</param>
    /// <param name="shop">The shop.</param>
    /// <param name="place">Where one is.</param>
    /// <param name="typed">The value that is typed, null where none is.</param>
    public static void Draw(Picture body, Shop shop, ListPlace place, string? typed)
    {
        int rows = RowsFor(body.Width, body.Height, Settings[place.Chosen]);
        int first = place.Show(Settings.Length, rows);
        for (int i = first; i < Math.Min(Settings.Length, first + rows); i++)
        {
            int y = i - first;
            ShopSetting setting = Settings[i];
            bool isAt = i == place.Chosen;
            body.Put(0, y, isAt ? ">" : "", Ink.Strong);
            body.Put(2, y, setting.Name, isAt ? Ink.Strong : Ink.Plain, Value - 3);
            string value = shop.Settings.Get(setting);
            if (isAt && typed is not null)
            {
                body.PutTyped(Value, y, typed);
            }
            else
            {
                body.Put(Value, y, value);
            }
        }

        int at = rows + 1;
        foreach ((string line, Ink ink) in Below(body.Width, Settings[place.Chosen]))
        {
            body.Put(0, at++, line, ink);
        }
    }

    private static IEnumerable<(string, Ink)> Below(int width, ShopSetting setting)
    {
        int room = Math.Max(10, width);
        string[] meaning = [.. Picture.Wrap($"{setting.Name}: {setting.Meaning}", room)];
        yield return (meaning[0], Ink.Quiet);
        yield return (meaning.Length > 2 ? meaning[1] + " …" : meaning.ElementAtOrDefault(1) ?? "", Ink.Quiet);
        string lubricant = setting == ShopSetting.Lubricant ? Words.OneLine(Words.BlindHoleCaution) + "\n" : "";
        foreach (
            string line in Picture.Wrap($"{lubricant}{Words.ShopCaution} {Words.OneLine(Words.ForecastCaution)}", room)
        )
        {
            yield return (line, Ink.Warn);
        }
    }
}
