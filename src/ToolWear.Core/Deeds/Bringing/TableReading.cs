using System.Collections.Immutable;
using System.Text.RegularExpressions;
using ToolWear.Core.Fields;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Shops;

namespace ToolWear.Core.Deeds.Bringing;

/// <summary>One reading of one table.</summary>
/// <param name="kind">What it tells of.</param>
/// <param name="table">The table.</param>
/// <param name="shop">The shop it comes into.</param>
/// <param name="units">The unit of bare sizes.</param>
/// <param name="today">The shop's day.</param>
/// <param name="wishes">How it is to be brought in.</param>
/// <typeparam name="T">What a row tells of.</typeparam>
internal sealed partial class TableReading<T>(
    TableKind<T> kind,
    SaidTable table,
    Shop shop,
    LengthUnit units,
    DateOnly today,
    BringingWishes wishes
)
    where T : class
{
    private const int MostNamed = 8;
    private readonly ImmutableArray<Heading> headings = [.. table.Headings.Select(Heading.Of)];
    private readonly SortedDictionary<int, Field<T>> fields = [];
    private readonly Dictionary<string, int> columns = new(StringComparer.Ordinal);
    private readonly Dictionary<int, string> above = [];
    private readonly Dictionary<string, long> lines = new(StringComparer.Ordinal);
    private readonly List<RowRemark> doubts = [];
    private readonly List<RowRemark> faults = [];
    private readonly List<LedgerEntry> entries = [];
    private readonly List<BroughtRow> rows = [];
    private readonly HashSet<LedgerEntry> before =
    [
        .. shop.Ledger.Where(each => !shop.CrossedOut.ContainsKey(each.Number)).Select(each => each.What),
    ];
    private ImmutableArray<int> unknown = [];
    private Source source = new(units, today);
    private Shop now = shop;

    private bool CanNote => kind.Fields.All.Any(each => each.Name == "note");

    /// <summary>Reads it.</summary>
    /// <returns>What it comes to.</returns>
    public Brought Run()
    {
        TakeHeadings();
        string[] cells =
        [
            .. table.Rows.SelectMany(row => fields.Where(each => !each.Value.IsText).Select(each => row[each.Key])),
        ];
        source = source with { MonthFirst = DayText.IsMonthFirst(cells) };
        foreach (SaidRow row in faults.Count == 0 ? table.Rows : [])
        {
            Take(row);
        }

        return new(
            kind.Name,
            [
                .. fields.Select(each => new BroughtColumn(
                    each.Value.Name,
                    headings[each.Key].Typed,
                    each.Value.IsNumber
                )),
            ],
            [.. rows],
            faults.Count == 0 ? [.. entries] : [],
            [.. doubts],
            [.. faults],
            Understood(cells)
        );
    }

    private string Understood(string[] cells)
    {
        string[] marks =
        [
            .. cells
                .Select(cell => Decimal().Match(cell).Groups["mark"].Value)
                .Where(mark => mark.Length > 0)
                .Distinct(),
        ];
        string?[] said =
        [
            marks is [] ? null
            : marks is [","] ? "decimal comma"
            : marks is ["."] ? "decimal point"
            : "decimal point and comma",
            fields.Any(each => each.Value.Unit == "mm" && headings[each.Key].Unit is null)
                ? $"bare sizes in {SizeShown.Mark(units)}"
                : null,
            source.MonthFirst is { } first ? $"days as {(first ? "month/day/year" : "day/month/year")}" : null,
        ];
        return string.Join(", ", said.OfType<string>());
    }

    private void TakeHeadings()
    {
        for (int i = 0; i < headings.Length; i++)
        {
            if (kind.Fields.All.FirstOrDefault(headings[i].Names) is { } field)
            {
                if (columns.TryAdd(field.Name, i))
                {
                    fields.Add(i, field);
                }
                else
                {
                    Fault(
                        table.Line,
                        i,
                        $"means the same as {headings[columns[field.Name]].Typed}; keep one of the two"
                    );
                }
            }
            else if (table.Rows.Any(row => row[i].Length > 0))
            {
                unknown = unknown.Add(i);
            }
        }

        if (columns.Count == 0)
        {
            string kinds = string.Join("|", Tables.All.Select(each => each.Name));
            faults.Add(
                new(
                    table.Line,
                    "",
                    $"none of these headings is known; \"toolwear template {kinds}\" shows those that are"
                )
            );
            return;
        }

        foreach (Field<T> field in kind.Missing(headings).Where(field => field.IsKey || !wishes.Update))
        {
            faults.Add(new(table.Line, field.Name, $"there is no such column; add one: {field.Right}"));
        }

        foreach (
            string name in wishes.CarryDown.Where(name => !headings.Any(each => each.Bare == Heading.Of(name).Bare))
        )
        {
            faults.Add(new(table.Line, name, "there is no such column to carry down"));
        }

        if (!unknown.IsEmpty)
        {
            string more = unknown.Length > MostNamed ? $" and {unknown.Length - MostNamed} more" : "";
            TakeUnknown(string.Join(", ", unknown.Take(MostNamed).Select(NameOf)) + more);
        }
    }

    private string NameOf(int column) =>
        headings[column].Typed is { Length: > 0 } typed ? FreeText.Shown(typed) : $"column {column + 1}";

    private void TakeUnknown(string names)
    {
        if (wishes.KeepUnknown && CanNote)
        {
            doubts.Add(new(table.Line, "", $"{names}: kept in the note"));
        }
        else if (wishes.IgnoreUnknown)
        {
            doubts.Add(new(table.Line, "", $"{names}: left out"));
        }
        else
        {
            string free = string.Join(
                ", ",
                kind.Fields.All.Select(field => field.Name).Where(name => !columns.ContainsKey(name))
            );
            faults.Add(
                new(
                    table.Line,
                    names,
                    $"a table of {kind.Name} has no such column. Rename it to one of {free}, add --ignore-unknown to leave it out"
                        + (CanNote ? ", or --keep-unknown to keep it in the note" : "")
                )
            );
        }
    }

    private void Take(SaidRow row)
    {
        int sound = faults.Count;
        if (row.Cells.Skip(headings.Length).Any(cell => !string.IsNullOrWhiteSpace(cell)))
        {
            faults.Add(
                new(
                    row.Line,
                    "",
                    $"{row.Cells.Length} cells under {headings.Length} headings; put a decimal comma in quotes, or part the cells by semicolons"
                )
            );
            return;
        }

        Dictionary<string, string> cells = fields.ToDictionary(
            each => each.Value.Name,
            each => Carried(row[each.Key], each.Key),
            StringComparer.Ordinal
        );
        string CellOf(string name) => cells.GetValueOrDefault(name, "");
        T? known = kind.Known(now, CellOf);
        CheckKey(
            row,
            string.Join(' ', kind.Fields.All.Where(field => field.IsKey).Select(field => CellOf(field.Name))),
            known
        );
        T said = kind.Fields.Read(
            known ?? kind.Fields.Blank,
            field => Text(row, field, CellOf(field.Name), known is not null),
            source,
            fault => FaultAt(row, fault.Field, Mended(fault, CellOf(fault.Field)))
        );
        RowAsked asked = new(
            now,
            today,
            name => CellOf(name).Length > 0,
            name => SizeText.TryParse(CellOf(name), units, out TypedSize size, out _) ? size.Resolution : null,
            (name, sentence) => doubts.Add(new(row.Line, HeadingOf(name), sentence)),
            (name, sentence) => FaultAt(row, name, sentence)
        );
        if (faults.Count == sound && kind.Fields.Check(said) is { } wrong)
        {
            FaultAt(row, wrong.Field, wrong.Sentence);
        }

        ImmutableArray<LedgerEntry> what = faults.Count == sound ? [.. kind.Entries(said, known, asked)] : [];
        if (
            faults.Count == sound
            && IsEntered(
                row,
                [.. what.Where(each => each is not (ToolMeasured or HeatsWorked) || !before.Contains(each))]
            )
        )
        {
            rows.Add(
                new(
                    row.Line,
                    [.. fields.Values.Select(field => field.Write(said))],
                    [.. fields.Values.Select(field => field.Offer(said, units))]
                )
            );
        }
    }

    private void CheckKey(SaidRow row, string mark, T? known)
    {
        string? fault =
            mark.Length > 0 && !lines.TryAdd(mark, row.Line) ? $"stands in line {lines[mark]} already; once is right"
            : known is not null && !wishes.Update
                ? "is in the shop already; leave the row out, or add --update to correct it"
            : null;
        if (fault is not null)
        {
            FaultAt(row, kind.Fields.All.First(each => each.IsKey).Name, $"{FreeText.Shown(mark)} {fault}");
        }
    }

    private bool IsEntered(SaidRow row, ImmutableArray<LedgerEntry> what)
    {
        if (what.IsEmpty)
        {
            doubts.Add(new(row.Line, "", "the shop knows this already; left out"));
        }

        foreach (LedgerEntry each in what)
        {
            Step step = now.After(new(now.NextNumber, DateTimeOffset.UnixEpoch, today, each));
            if (step.Fault is { } fault)
            {
                FaultAt(row, fault.Field, fault.Sentence);
                return false;
            }

            now = step.After!;
            entries.Add(each);
        }

        return !what.IsEmpty;
    }

    /// <summary>The text that a field is read from; null leaves it as it is.</summary>
    private string? Text(SaidRow row, Field<T> field, string cell, bool isKnown) =>
        field.Name == "note" && wishes.KeepUnknown
            ? string.Join(
                "; ",
                unknown
                    .Where(i => row[i].Length > 0)
                    .Select(i => $"{headings[i].Typed}: {row[i]}")
                    .Prepend(cell)
                    .Where(text => text.Length > 0)
            )
        : cell.Length == 0 && (isKnown || kind.Filled.Contains(field.Name)) ? null
        : field.IsText && cell.StartsWith('\'') ? cell[1..]
        // a bare size has the unit of its heading
        : field.Unit == "mm"
        && cell.Length > 0
        && char.IsDigit(cell[^1])
        && headings[columns[field.Name]].Unit is { } unit
            ? $"{cell} {SizeShown.Mark(unit)}"
        : cell;

    private string Carried(string cell, int column)
    {
        if (cell.Length > 0)
        {
            above[column] = cell;
        }

        return wishes.CarryDown.Any(name => Heading.Of(name).Bare == headings[column].Bare)
            ? above.GetValueOrDefault(column, "")
            : cell;
    }

    private string Mended(FieldFault fault, string cell) =>
        cell.Length > 0 ? fault.Sentence
        : columns.TryGetValue(fault.Field, out int column)
        && fields[column] is { IsKey: false, IsNumber: false }
        && above.TryGetValue(column, out string? over)
            ? $"the cell is empty; {fault.Sentence}, or add --carry-down {fault.Field} to repeat {FreeText.Shown(over)}"
        : $"the cell is empty; {fault.Sentence}";

    private string HeadingOf(string field) =>
        columns.TryGetValue(field, out int column) ? headings[column].Typed : field;

    private void FaultAt(SaidRow row, string field, string sentence) =>
        faults.Add(new(row.Line, HeadingOf(field), sentence));

    private void Fault(long line, int column, string sentence) =>
        faults.Add(new(line, headings[column].Typed, sentence));

    [GeneratedRegex("""^[0-9]*(?<mark>[.,])[0-9]+[^0-9.,]*$""", RegexOptions.ExplicitCapture)]
    private static partial Regex Decimal();
}
