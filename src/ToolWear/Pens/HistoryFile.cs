using System.Text;
using ToolWear.Core.Measure;
using ToolWear.Core.Wear;
using ToolWear.Doors;
using ToolWear.Results;
using ToolWear.Results.Tools;
using ToolWear.Storage;
using ToolWear.Storage.Backups;
using ToolWear.Storage.Disks;

namespace ToolWear.Pens;

/// <summary>The wear history of the whole shop as a file.</summary>
internal static class HistoryFile
{
    /// <summary>Writes it, whole or not at all.</summary>
    /// <param name="site">The world around.</param>
    /// <param name="path">A full path.</param>
    /// <param name="forecasts">The shop with its forecasts.</param>
    /// <param name="units">The unit for people.</param>
    /// <param name="asJson">JSON lines instead of CSV.</param>
    /// <param name="isForced">Whether a foreign file may be replaced.</param>
    /// <returns>How many readings it holds.</returns>
    /// <exception cref="StoreRefusedException">What stands there is none that this program wrote; it was left as it is.</exception>
    /// <exception cref="IOException">It cannot be written.</exception>
    public static int Write(
        Site site,
        string path,
        ShopForecasts forecasts,
        LengthUnit units,
        bool asJson = false,
        bool isForced = false
    )
    {
        Table history = HistoryTable.Columns.Over(HistoryTable.Rows(forecasts.Shop, forecasts.All));
        string text = asJson ? history.ToJsonLines() : history.ToCsv();
        string begins = asJson ? "{\"tool\":" : text[..(text.IndexOf('\n', StringComparison.Ordinal) + 1)];
        Replacing.MustBeAllowed(site.Disk, path, Encoding.UTF8.GetBytes(begins), isForced);
        WholeFile.Write(site.Disk, path, Encoding.UTF8.GetBytes(text));
        return history.Rows.Length;
    }
}
