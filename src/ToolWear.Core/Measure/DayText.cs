using System.Globalization;

namespace ToolWear.Core.Measure;

/// <summary>Reads days as files hold them and as a smith types them.</summary>
public static class DayText
{
    private const int MostDays = 3650;

    // the invariant culture's two-digit years end in 2049
    private static readonly string[] Plain =
        "yyyy-M-d|yyyy/M/d|d.M.yyyy|d.M.yy|d MMM yyyy|d MMMM yyyy|d-MMM-yyyy|d-MMM-yy|MMM d, yyyy|MMMM d, yyyy".Split(
            '|'
        );
    private static readonly string[] DayFirst = ["d/M/yyyy", "d/M/yy"];
    private static readonly string[] MonthFirst = ["M/d/yyyy", "M/d/yy"];

    /// <summary>Reads a day of ISO 8601.</summary>
    /// <param name="text">"2027-01-15".</param>
    /// <returns>The day; null where it is none.</returns>
    public static DateOnly? Iso(string text) =>
        DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly day)
            ? day
            : null;

    /// <summary>Reads a day as people write it.</summary>
    /// <param name="text">"2026-10-31", "31.10.2026", "31 Oct 2026", "31/10/2026"; of a year of two digits the last before 2050.</param>
    /// <param name="monthFirst">Whether the month stands first in 10/31/2026; null where nobody knows.</param>
    /// <returns>The day; null where it is none, or where it can be two.</returns>
    public static DateOnly? Typed(string text, bool? monthFirst = null)
    {
        (DateOnly? dayFirst, DateOnly? other) = (Exact(text, DayFirst), Exact(text, MonthFirst));
        return Exact(text, Plain)
            ?? (
                monthFirst is { } isFirst ? (isFirst ? other : dayFirst)
                : dayFirst is null || other is null || dayFirst == other ? dayFirst ?? other
                : null
            );
    }

    /// <summary>Why a text can be two days.</summary>
    /// <param name="text">The text.</param>
    /// <returns>A sentence; null where it cannot.</returns>
    public static string? Fault(string text) =>
        Exact(text, DayFirst) is { } one && Exact(text, MonthFirst) is { } other && one != other
            ? $"\"{FreeText.Shown(text)}\" can be {one:yyyy-MM-dd} or {other:yyyy-MM-dd}; write one of these"
            : null;

    /// <summary>Whether the month stands first in days such as 10/31/2026.</summary>
    /// <param name="texts">Texts of one hand; those that are no such days say nothing.</param>
    /// <returns>Null where none of them says it, or they say both.</returns>
    public static bool? IsMonthFirst(IEnumerable<string> texts)
    {
        bool[] said =
        [
            .. texts
                .Where(text => Exact(text, DayFirst) is null != Exact(text, MonthFirst) is null)
                .Select(text => Exact(text, DayFirst) is null)
                .Distinct(),
        ];
        return said is [var only] ? only : null;
    }

    /// <summary>Reads a day that is to come.</summary>
    /// <param name="text">"2027-01-15", "01-15" for the next such day, "+28" for in so many days, or as <see cref="Typed"/>.</param>
    /// <param name="today">The shop's day.</param>
    /// <param name="monthFirst">As for <see cref="Typed"/>.</param>
    /// <returns>The day; null where it is none.</returns>
    public static DateOnly? Coming(string text, DateOnly today, bool? monthFirst = null)
    {
        CultureInfo invariant = CultureInfo.InvariantCulture;
        if (text.StartsWith('+'))
        {
            return int.TryParse(text[1..], NumberStyles.None, invariant, out int days) && days <= MostDays
                ? today.AddDays(days)
                : null;
        }

        if (Typed(text, monthFirst) is { } day)
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

    private static DateOnly? Exact(string text, string[] formats) =>
        DateOnly.TryParseExact(
            text,
            formats,
            CultureInfo.InvariantCulture,
            DateTimeStyles.AllowWhiteSpaces,
            out DateOnly day
        )
            ? day
            : null;
}
