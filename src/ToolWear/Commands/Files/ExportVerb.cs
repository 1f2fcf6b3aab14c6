using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using ToolWear.Commands.Calls;
using ToolWear.Core.Shops;
using ToolWear.Doors;
using ToolWear.Pens;
using ToolWear.Results;
using ToolWear.Storage.Csv;

namespace ToolWear.Commands.Files;

/// <summary>export: the shop as CSV files.</summary>
internal static class ExportVerb
{
    private static readonly Argument<string> Folder = new("DIR")
    {
        Description =
            "the folder to write to, made where there is none; with --as json a file, or - for the standard output",
    };

    public static Verb Verb { get; } =
        new(
            "export",
            "Writes the shop as CSV files.",
            "export my-shop",
            [Folder, Said.Force],
            Run,
            $"It replaces only files that an export wrote, which are listed in {CsvFolder.List}. Crossed-out entries and heads by stage stay behind: a session keeps the heads it finished. backup makes the complete copy. --as json writes one document: a list of rows for each file, with the names and units of \"toolwear columns\"."
        );

    private static void Run(Call call)
    {
        if (call.Format == "json")
        {
            string json = Document(call.Shop).ToJson();
            if (
                NamedFiles.Write(
                    call.Site,
                    call.Get(Folder)!,
                    json,
                    json[..json.IndexOf(',', StringComparison.Ordinal)],
                    call.Get(Said.Force)
                )
            )
            {
                call.PrintLine($"the shop written to {call.Get(Folder)}");
            }

            return;
        }

        string folder = NamedFiles.FullPath("DIR", call.Get(Folder)!);
        if (File.Exists(folder))
        {
            throw RefusedException.WrongData($"{folder} is a file: name a folder");
        }

        IReadOnlyList<CsvFile> files = CsvSet.Export(call.Shop);
        CsvFolder.Write(call.Site.Disk, folder, files, call.Get(Said.Force));
        int stages = call.Shop.Sessions.Values.Count(session => !session.HeadsByStage.IsEmpty);
        if (stages > 0)
        {
            call.Warn(HeadsByStageStay(stages));
        }

        call.PrintLine($"{files.Count} files written to {call.Get(Folder)}");
    }

    /// <summary>The whole shop as one row: a list of rows for each file.</summary>
    private static Table Document(Shop shop)
    {
        (string Name, Table Rows)[] files =
        [
            .. CsvSet
                .Tables(shop)
                .Select(file =>
                    (
                        ColumnTable.KeyOf(file.Name),
                        new Table(
                            [.. file.Columns.Select(column => new Column(column, null))],
                            [.. file.Rows.Select(row => (ImmutableArray<Cell>)[.. row.Select(CellOf)])]
                        )
                    )
                ),
        ];
        return new(
            [new("toolwear", null), .. files.Select(file => new Column(file.Name, null))],
            [
                [Cell.Of("shop"), .. files.Select(file => Cell.Of(file.Rows))],
            ]
        )
        {
            IsOne = true,
        };
    }

    private static Cell CellOf(CsvCell cell) =>
        cell.IsNumber && cell.Said.Length > 0
            ? Cell.Of(double.Parse(cell.Said, CultureInfo.InvariantCulture))
            : Cell.Of(cell.Said);

    private static string HeadsByStageStay(int sessions) =>
        $"heads by stage of {(sessions == 1 ? "one session" : $"{sessions} sessions")} have no column and stay behind; backup takes them along";
}
