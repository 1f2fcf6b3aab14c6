using System.CommandLine;
using System.Text;
using ToolWear.Core.Wear;
using ToolWear.Results;
using ToolWear.Storage.Disks;
using ToolWear.Tables;

namespace ToolWear.Commands;

/// <summary>export-history: the wear history of every tool as one CSV file.</summary>
internal static class ExportHistoryVerb
{
    private static readonly Argument<string> File = new("FILE") { Description = "the CSV file to write" };

    public static Command Make(Site site) =>
        Common.Verb(
            site,
            "export-history",
            "Writes the wear history, a row a reading, scrapped tools too, as CSV in mm.",
            "export-history wear.csv",
            [File],
            Run
        );

    private static void Run(Call call)
    {
        string path = Call.FullPath("FILE", call.Get(File));
        using Bench bench = call.ToRead();
        Table history = HistoryTable.Of(bench.Shop, ShopForecasts.Of(bench.Shop).All.Values, call.Units(bench.Shop));
        string text = call.Format() == "json" ? history.ToJson() : history.ToCsv();
        WholeFile.Write(call.Site.Disk, path, Encoding.UTF8.GetBytes(text));
        call.PrintLine($"{history.Rows.Length} readings written to {call.Get(File)}");
    }
}
