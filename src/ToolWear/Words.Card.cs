using ToolWear.Core.Ledger;

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
    internal const string WhyCrossOut = "Crossed out, because:";
    internal const string WhyCountAgain = "It counts again, because:";
    internal const string Find = "Find:";
    internal const string NoEntries = "No entry has these words.";
    internal const string ImportFrom = "Folder or file to import:";
    internal const string NothingImported = "it holds nothing to import";

    internal const string ForecastCautionShort =
        "Heats left: an estimate, no permission; it can crack on any heat. Look it over.";

    /// <summary>What is said once, at the first start and on the shop page. Common practice, no source.</summary>
    internal const string ShopCaution =
        "Carbon monoxide, noise, hot metal underfoot; nobody works alone. ToolWear counts heats and sizes; it sees no crack.";

    internal const string FirstWords =
        "Nothing is entered yet. Most shops begin with the table: mark, form, eye, place, steel, size now, scrap size, a few seconds a tool. Everything else can wait. The demo shows what it looks like after half a year.";

    internal static string EndOnChart(double about, double? from, double? to) =>
        $"done in about {About(about)}" + (from is { } low && to is { } high ? $", {About(low)}-{About(high)}" : "");

    internal static string CardHeading(string? mark) => $"Wear card {mark}";

    internal const string CheckByHand = "Check each handle by hand.";

    internal static string CrossedOut(long entry, string why) => $"crossed out by entry {entry}: {why}";

    internal static string EntryTurned(LedgerEntry turning) =>
        turning switch
        {
            EntryCountsAgain again => $"Entry {again.Entry} counts again.",
            EntryCrossedOut crossing => $"Entry {crossing.Entry} is crossed out.",
            _ => "",
        };

    internal static string Imported(int entries, int tools) => $"{entries} entries imported, {tools} tools.";

    internal static string ImportFaults(string first, int more) =>
        more == 0 ? $"{first}. Nothing was taken." : $"{first}, and {more} faults more. Nothing was taken.";
}
