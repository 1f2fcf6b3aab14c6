using System.Globalization;

namespace ToolWear.Core.Measure;

/// <summary>Reads days as files hold them and as a smith types them.</summary>
public static class DayText
{
    private const int MostDays = 3650;

    /// <summary>Reads a day of ISO 8601.</summary>
    /// <param name="text">"2027-01-15".</param>
    /// <returns>The day; null where it is none.</returns>
    public static DateOnly? Iso(string text) =>
        DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly day)
            ? day
            : null;

    /// <summary>Reads a day that is to come.</summary>
    /// <param name="text">"2027-01-15", "01-15" for the next such day, "+28" for in so many days.</param>
    /// <param name="today">The shop's day.</param>
    /// <returns>The day; null where it is none.</returns>
    public static DateOnly? Coming(string text, DateOnly today)
    {
        CultureInfo invariant = CultureInfo.InvariantCulture;
        if (text.StartsWith('+'))
        {
            return int.TryParse(text[1..], NumberStyles.None, invariant, out int days) && days <= MostDays
                ? today.AddDays(days)
                : null;
        }

        if (Iso(text) is { } day)
        {
            return day;
        }

        foreach (int year in (int[])[today.Year, today.Year + 1])
        {
            string whole = string.Create(invariant, $"{year}-{text}");
            if (
                DateOnly.TryParseExact(whole, "yyyy-M-d", invariant, DateTimeStyles.None, out DateOnly next)
                && next >= today
            )
            {
                return next;
            }
        }

        return null;
    }
}
