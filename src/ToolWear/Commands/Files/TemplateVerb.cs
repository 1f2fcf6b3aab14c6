using System.Collections.Immutable;
using System.CommandLine;
using ToolWear.Commands.Calls;
using ToolWear.Core.Deeds.Bringing;
using ToolWear.Core.Measure;
using ToolWear.Doors;
using ToolWear.Storage.Csv;

namespace ToolWear.Commands.Files;

/// <summary>template: an empty table to fill in with a spreadsheet and to import.</summary>
internal static class TemplateVerb
{
    private static readonly Argument<string> Kind = Said.Argument(
            "TABLE",
            string.Join(", ", Names),
            (it, text) =>
                Names.Contains(text, StringComparer.Ordinal)
                    ? text
                    : it.Refuse<string>(Call.NoSuch("table", text, Names))!
        )
        .Offering(Names);

    public static Verb Verb { get; } =
        new(
            "template",
            "Prints an empty table to fill in and import.",
            "template tools",
            [Kind],
            Run,
            "It has headings, the meaning of each and two examples. Open it in a spreadsheet, write a row for each thing below the examples, save it as CSV, then try it with \"toolwear import my-tools.csv --try\". Lines that begin with # and the examples are not imported."
        )
        {
            IsCsv = true,
        };

    private static ImmutableArray<string> Names => [.. Tables.All.Select(kind => kind.Name)];

    private static void Run(Call call)
    {
        LengthUnit units =
            call.Get(Said.Units) ?? (Bench.IsThere(call.Site, call.StorePath) ? call.Units : LengthUnit.Mm);
        TemplateColumn[] columns = [.. Tables.All.First(kind => kind.Name == call.Get(Kind)).Template(units)];
        IEnumerable<IEnumerable<CsvCell>> rows =
        [
            .. columns.Select(column => Padded($"# {column.Heading}", MeaningOf(column))),
            columns.Select(column => CsvCell.Text(column.Heading)),
            columns.Select(column => Example(column, column.First)),
            columns.Select(column => Example(column, column.Second)),
        ];
        call.PrintAsIs(
            CsvTable.ToText(
                ["# Write your rows below the examples.", .. Enumerable.Repeat("", columns.Length - 1)],
                rows.Select(row => (IReadOnlyList<CsvCell>)[.. row]),
                call.HasSemicolons
            )
        );

        IEnumerable<CsvCell> Padded(string heading, string meaning) =>
            [CsvCell.Text(heading), CsvCell.Text(meaning), .. Enumerable.Repeat(default(CsvCell), columns.Length - 2)];

        // a decimal comma where the cells are parted by semicolons
        CsvCell Example(TemplateColumn column, string text) =>
            CsvCell.Text(call.HasSemicolons && column.IsNumber ? text.Replace('.', ',') : text);
    }

    private static string MeaningOf(TemplateColumn column) =>
        column.Meaning.Length > 0 ? column.Meaning : ColumnTable.All.First(each => each.Name == column.Name).Meaning!;
}
