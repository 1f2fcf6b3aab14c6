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

    // read with a year put in front
    private static readonly string[] Yearless =
        "yyyy M-d|yyyy d.M.|yyyy d.M|yyyy d MMM|yyyy d MMMM|yyyy MMM d|yyyy MMMM d".Split('|');

    /// <summary>Reads a day of ISO 8601.</summary>
    /// <param name="text">"2027-01-15".</param>
    /// <returns>The day; null where it is none.</returns>
    public static DateOnly? Iso(string text) =>
        DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly day)
            ? day
            : null;

    /// <summary>Reads a day as people write it.</summary>
    /// <param name="text">"2026-10-31", "31.10.2026", "31 Oct 2026", "31/10/2026", and nearest to today "today", "yesterday",
    /// "monday", "31.10.", "10-31"; of a day to come also "tomorrow" and "+28"; of a year of two digits the last before 2050.</param>
    /// <param name="today">The shop's day.</param>
    /// <param name="day">The day, where it is one.</param>
    /// <param name="refusal">What is wrong and what would be right, where it is none or can be two.</param>
    /// <param name="isToCome">Whether a day without a year or of a week is the next such one, not the last.</param>
    /// <param name="monthFirst">Whether the month stands first in 10/31/2026; null where nobody knows.</param>
    /// <returns>True where it was read.</returns>
    public static bool TryRead(
        string text,
        DateOnly today,
        out DateOnly day,
        out string refusal,
        bool isToCome = false,
        bool? monthFirst = null
    )
    {
        DateOnly[] can = [.. Readings(text.Trim(), today, isToCome, monthFirst).OfType<DateOnly>().Distinct()];
        day = can.Length == 1 ? can[0] : default;
        string shown = FreeText.Shown(text);
        refusal = can switch
        {
            [_] => "",
            [var one, var other] => $"\"{shown}\" can be {one:yyyy-MM-dd} or {other:yyyy-MM-dd}; write one of these",
            _ when isToCome => $"\"{shown}\" is no day; type one like 2026-05-01, 1.5., friday or +28",
            _ => $"\"{shown}\" is no day; type one like 2026-05-01, 1.5., yesterday or monday",
        };
        return can.Length == 1;
    }

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

    private static IEnumerable<DateOnly?> Readings(string text, DateOnly today, bool isToCome, bool? monthFirst)
    {
        int way = isToCome ? 1 : -1;
        DateTimeFormatInfo names = CultureInfo.InvariantCulture.DateTimeFormat;
        int weekday = Enumerable
            .Range(0, 7)
            .FirstOrDefault(each => Is(text, names.DayNames[each]) || Is(text, names.AbbreviatedDayNames[each]), -1);
        if (weekday >= 0)
        {
            int days = ((way * (weekday - (int)today.DayOfWeek)) + 7) % 7;
            // on a Monday nobody knows which is meant
            return days == 0 ? [today, today.AddDays(way * 7)] : [today.AddDays(way * days)];
        }

        if (Is(text, "today") || Is(text, isToCome ? "tomorrow" : "yesterday"))
        {
            return [Is(text, "today") ? today : today.AddDays(way)];
        }

        if (isToCome && text.StartsWith('+'))
        {
            return
                int.TryParse(text[1..], NumberStyles.None, CultureInfo.InvariantCulture, out int ahead)
                && ahead <= MostDays
                ? [today.AddDays(ahead)]
                : [];
        }

        return
        [
            Exact(text, Plain),
            monthFirst == true ? null : Exact(text, DayFirst),
            monthFirst == false ? null : Exact(text, MonthFirst),
            new[] { today.Year, today.Year + way }
                .Select(year => Exact(string.Create(CultureInfo.InvariantCulture, $"{year} {text}"), Yearless))
                .FirstOrDefault(each => isToCome ? each >= today : each <= today),
        ];
    }

    private static bool Is(string text, string word) => text.Equals(word, StringComparison.OrdinalIgnoreCase);

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
