using ToolWear.Core.Tools;
using ToolWear.Screens.ForgeList;

namespace ToolWear;

/// <content>What the wear card, the ledger, the shop page and the forge list say.</content>
public static partial class Words
{
    internal const string HeatsAxis = "heats";
    internal const string ChartTooSmall = "The window is too small for the chart.";
    internal const string LedgerHeading = "Ledger";
    internal const string ShopHeadingPage = "Shop";
    internal const string ForgeHeading = "Forge list";
    internal const string FirstHeading = "ToolWear: an empty shop";
    internal const string TableHeading = "The tools I have";
    internal const string NewToolHeading = "A tool more";
    internal const string UsualWhy = "slip of the finger";
    internal const string WhyCrossOut = "Why?";
    internal const string Find = "Find:";
    internal const string NoEntries = "No entry has these words.";
    internal const string ImportFrom = "Folder or file to import:";
    internal const string NothingImported = "it holds nothing to import";

    internal const string ForecastCautionShort =
        "Heats left: an estimate, no permission; a drift can crack on any heat. Look it over.";

    /// <summary>What is said once, at the first start and on the shop page. Common practice, no source.</summary>
    internal const string ShopCaution =
        "Carbon monoxide, noise, hot metal underfoot; nobody works alone. ToolWear counts heats and sizes; it sees no crack.";

    internal const string FirstWords =
        "Nothing is entered yet. Most shops begin with the table: mark, form, eye, place, steel, size now, scrap size, a few seconds a tool. Everything else can wait. The demo shows what it looks like after half a year.";

    internal const string ForgeFirst =
        "A first look: heats that open orders ask of each place of the series, against the heats left in the tools that hang there. Bars, dates and cost are not in it yet.";

    internal const string NoOpenOrders =
        "No order is open, so nothing asks for new tools. \"toolwear order\" enters one.";

    internal static string CardHeading(string? mark) => $"Wear card {mark}";

    internal static string EyeItMakes(string length, string width, string unit) =>
        $"The eye it makes now: about {length} x {width} {unit}. Check each handle by hand.";

    internal static string CrossedOut(long entry, string why) => $"crossed out by entry {entry}: {why}";

    internal static string EntryCrossed(long entry) => $"Entry {entry} is crossed out.";

    internal static string Imported(int entries, int tools) => $"{entries} entries imported, {tools} tools.";

    internal static string ImportFaults(string first, int more) =>
        more == 0 ? $"{first}. Nothing was taken." : $"{first}, and {more} faults more. Nothing was taken.";

    internal const string ForgeColumns = "Eye   Place      asked    left  at the low end   to forge";

    internal static string ForgeRow(PlaceShort place)
    {
        string to = place.By is { } by ? $"{place.Needed} by {by:yyyy-MM-dd}" : "nothing yet";
        string unknown = place.Unknown == 0 ? "" : $"; {place.Unknown} without a forecast";
        return $"{place.Eye, -5} {Places.Words.Word(place.Place), -8} {About(place.Asked), 7} {About(place.Left), 7} "
            + $"{About(place.Low), 15}   {to}{unknown}";
    }
}
