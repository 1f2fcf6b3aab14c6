using ToolWear.Core.Wear;
using ToolWear.Doors;
using ToolWear.Results;
using ToolWear.Results.Tools;
using ToolWear.Storage;

namespace ToolWear.Pens;

/// <summary>The wear history of the whole shop as a file.</summary>
internal static class HistoryFile
{
    /// <summary>Writes it where the user named, whole or not at all.</summary>
    /// <param name="site">The world around.</param>
    /// <param name="typed">What was named.</param>
    /// <param name="forecasts">The shop with its forecasts.</param>
    /// <param name="asJson">JSON lines instead of CSV.</param>
    /// <param name="isForced">Whether a foreign file may be replaced.</param>
    /// <param name="hasSemicolons">Semicolons and decimal commas instead of commas and points.</param>
    /// <returns>How many readings it holds, and whether they went to a file.</returns>
    /// <exception cref="StoreRefusedException">What stands there is none that this program wrote; it was left as it is.</exception>
    /// <exception cref="IOException">It cannot be written.</exception>
    public static (int Readings, bool IsInFile) Write(
        Site site,
        string typed,
        ShopForecasts forecasts,
        bool asJson = false,
        bool isForced = false,
        bool hasSemicolons = false
    )
    {
        Table history = HistoryTable.Columns.Over(HistoryTable.Rows(forecasts.Shop, forecasts.All));
        string text = asJson ? history.ToJsonLines() : history.ToCsv(hasSemicolons);
        return (
            history.Rows.Length,
            NamedFiles.Write(
                site,
                typed,
                text,
                asJson ? "{\"tool\":" : text[..(text.IndexOf('\n', StringComparison.Ordinal) + 1)],
                isForced
            )
        );
    }
}
