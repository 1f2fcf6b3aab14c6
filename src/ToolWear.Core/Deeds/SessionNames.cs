using System.Globalization;
using ToolWear.Core.Shops;

namespace ToolWear.Core.Deeds;

/// <summary>Names sessions by their day: "2026-05-01", then "2026-05-01-2".</summary>
public static class SessionNames
{
    /// <summary>The first name of a day that no session has yet.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="on">The day.</param>
    /// <returns>The name.</returns>
    public static string Next(Shop shop, DateOnly on)
    {
        string day = on.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
        string name = day;
        for (int rank = 2; shop.Sessions.ContainsKey(name); rank++)
        {
            name = $"{day}-{rank}";
        }

        return name;
    }
}
