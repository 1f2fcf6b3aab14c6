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
    private const string Note = "note";

    private readonly ImmutableArray<Heading> headings = [.. table.Headings.Select(Heading.Of)];
    private readonly SortedDictionary<int, Field<T>> fields = [];
    private readonly Dictionary<string, int> columns = new(StringComparer.Ordinal);
    private readonly Dictionary<string, string> above = new(StringComparer.Ordinal);
    private readonly Dictionary<string, long> lines = new(StringComparer.Ordinal);
    private readonly SortedSet<string> blanks = new(StringComparer.Ordinal);
    private readonly List<RowRemark> doubts = [];
    private readonly List<RowRemark> faults = [];
    private readonly List<LedgerEntry> entries = [];
    private readonly List<BroughtRow> rows = [];
    private readonly HashSet<LedgerEntry> before =
    [
        .. shop.Ledger.Where(each => !shop.CrossedOut.ContainsKey(each.Number)).Select(each => each.What),
    ];
    private ImmutableArray<int> unknown = [];
    private ImmutableArray<string?> carried = [];
    private string decimalMarks = "";
    private Source source = new(units, today);
    private Shop now = shop;

    /// <summary>The columns, and those that are filled from elsewhere: the note that keeps others, the day.</summary>
    private IEnumerable<Field<T>> Shown =>
        fields.Values.Union(
            kind.Fields.All.Where(each => each.Name == Note ? wishes.KeepUnknown && !unknown.IsEmpty : IsDayGiven(each))
        );

    /// <summary>Reads it.</summary>
    /// <returns>What it comes to.</returns>
    public Brought Run()
    {
        TakeHeadings();
        string[] cells =
        [
            .. table.Rows.SelectMany(row => fields.Where(each => !each.Value.IsText).Select(each => row[each.Key])),
        ];
        decimalMarks = Marks(cells.Where(cell => !Thousands().IsMatch(cell)));
        source = source with { MonthFirst = DayText.IsMonthFirst(cells) };
        foreach (SaidRow row in faults.Count == 0 ? table.Rows : [])
        {
            Take(row);
        }

        return new(
            kind.Name,
            [.. Shown.Select(field => new BroughtColumn(field.Name, field.IsNumber))],
            [.. rows],
            faults.Count == 0 ? [.. entries] : [],
            [.. doubts],
            [.. faults],
            Understood(cells),
            [.. blanks]
        );
    }

    private string Understood(string[] cells)
    {
        string marks = Marks(cells);
        string?[] said =
        [
            marks.Length == 0 ? null
            : marks == "," ? "decimal comma"
            : marks == "." ? "decimal point"
            : "decimal point and comma",
            fields.Any(each => each.Value.Unit == "mm" && headings[each.Key].Unit is null)
                ? $"bare sizes in {SizeShown.Mark(units)}"
                : null,
            source.MonthFirst is { } first ? $"days as {(first ? "month/day/year" : "day/month/year")}" : null,
        ];
        return string.Join(", ", said.OfType<string>());
    }

    private static string Marks(IEnumerable<string> cells) =>
        string.Concat(
            cells.Select(cell => Decimal().Match(cell).Groups["mark"].Value).Distinct(StringComparer.Ordinal)
        );

    private void TakeHeadings()
    {
        for (int i = 0; i < headings.Length; i++)
        {
            if (kind.Fields.All.FirstOrDefault(headings[i].Names) is not { } field)
            {
                unknown = table.Rows.Any(row => row[i].Length > 0) ? unknown.Add(i) : unknown;
            }
            else if (columns.TryAdd(field.Name, i))
            {
                fields.Add(i, field);
            }
            else
            {
                Fault(table.Line, headings[i].Typed, $"means the same as {HeadingOf(field.Name)}; keep one of the two");
            }
        }

        if (columns.Count == 0)
        {
            string kinds = string.Join("|", Tables.All.Select(each => each.Name));
            Fault(
                table.Line,
                "",
                headings.Length == 1
                    ? "there is one cell in this row; part cells by commas, semicolons or tabs"
                    : $"no heading is known; \"toolwear template {kinds}\" shows those that are"
            );
            return;
        }

        foreach (Field<T> field in kind.Missing(headings, wishes).Where(field => field.IsKey || !wishes.Update))
        {
            Fault(table.Line, field.Name, $"there is no such column; add one: {field.Right}{OrOn(field.Name)}");
        }

        carried = [.. wishes.CarryDown.Select(name => kind.Fields.All.FirstOrDefault(Heading.Of(name).Names)?.Name)];
        if (carried.Contains(null, StringComparer.Ordinal))
        {
            Fault(table.Line, wishes.CarryDown[carried.IndexOf(null)], "there is no such column to carry down");
        }

        if (!unknown.IsEmpty)
        {
            TakeUnknown();
        }
    }

    private void TakeUnknown()
    {
        string names = string.Join(
            ", ",
            unknown
                .Take(MostNamed)
                .Select(i => headings[i].Typed.Length > 0 ? FreeText.Shown(headings[i].Typed) : $"column {i + 1}")
        );
        names += unknown.Length > MostNamed ? $" and {unknown.Length - MostNamed} more" : "";
        bool canNote = kind.Fields.All.Any(each => each.Name == Note);
        if ((wishes.KeepUnknown && canNote) || wishes.IgnoreUnknown)
        {
            doubts.Add(new(table.Line, names, wishes.KeepUnknown && canNote ? "kept in the note" : "left out"));
            return;
        }

        string free = string.Join(
            ", ",
            kind.Fields.All.Select(each => each.Name).Except(columns.Keys, StringComparer.Ordinal)
        );
        Fault(
            table.Line,
            names,
            $"a table of {kind.Name} has no such column. Rename it to one of {free}, add --ignore-unknown to leave it out"
                + (
                    canNote ? ", or --keep-unknown to keep it in the note"
                    : wishes.KeepUnknown ? "; there is no note to keep it in"
                    : ""
                )
        );
    }

    private void Take(SaidRow row)
    {
        int sound = faults.Count;
        if (row.Cells.Skip(headings.Length).Any(cell => !string.IsNullOrWhiteSpace(cell)))
        {
            Fault(
                row.Line,
                "",
                $"{row.Cells.Length} cells under {headings.Length} headings; put a decimal comma in quotes, or part the cells by semicolons"
            );
            return;
        }

        Dictionary<string, string> cells = fields.ToDictionary(
            each => each.Value.Name,
            each => Carried(row[each.Key], each.Value.Name),
            StringComparer.Ordinal
        );
        string CellOf(string name) => cells.GetValueOrDefault(name, "");
        T? known = kind.Known(now, CellOf);
        CheckKey(row.Line, CellOf, known);
        CheckThousands(row.Line, CellOf);
        T said = kind.Fields.Read(
            known ?? kind.Fields.Blank,
            field => Text(row, field, CellOf(field.Name), known is not null),
            source,
            fault => Fault(row.Line, HeadingOf(fault.Field), Mended(fault, CellOf(fault.Field)))
        );
        RowAsked asked = new(
            now,
            wishes.On ?? today,
            name => CellOf(name).Length > 0,
            name => SizeText.TryParse(CellOf(name), units, out TypedSize size, out _) ? size.Resolution : null,
            (name, sentence) => doubts.Add(new(row.Line, HeadingOf(name), sentence)),
            (name, sentence) => Fault(row.Line, HeadingOf(name), sentence)
        );
        if (faults.Count == sound && kind.Fields.Check(said) is { } wrong)
        {
            asked.Fault(wrong.Field, wrong.Sentence);
        }

        ImmutableArray<LedgerEntry> what = faults.Count == sound ? [.. kind.Entries(said, known, asked)] : [];
        if (faults.Count == sound && IsEntered(row.Line, what))
        {
            rows.Add(
                new([.. Shown.Select(field => field.Write(said))], [.. Shown.Select(field => field.Offer(said, units))])
            );
        }
    }

    private void CheckKey(long line, Func<string, string> cell, T? known)
    {
        Field<T>[] keys = [.. kind.Fields.All.Where(field => field.IsKey)];
        string mark = string.Join(' ', keys.Select(key => cell(key.Name)));
        if (mark.Length > 0 && !lines.TryAdd(mark, line))
        {
            Fault(
                line,
                HeadingOf(keys[0].Name),
                $"{FreeText.Shown(mark)} stands in line {lines[mark]} already; once is right"
            );
        }
        else if (known is not null && !wishes.Update)
        {
            Fault(
                line,
                HeadingOf(keys[0].Name),
                $"{FreeText.Shown(mark)} is in the shop already; leave the row out, or add --update to correct it"
            );
        }
    }

    /// <summary>Where other cells have a decimal comma, "1.800" can be eighteen hundred.</summary>
    private void CheckThousands(long line, Func<string, string> cell)
    {
        foreach (Field<T> field in fields.Values.Where(field => field.IsNumber))
        {
            string typed = cell(field.Name);
            string mark = Thousands().Match(typed).Groups["mark"].Value;
            if (mark.Length > 0 && decimalMarks.Contains(mark == "," ? '.' : ',', StringComparison.Ordinal))
            {
                string whole = typed.Replace(mark, "", StringComparison.Ordinal);
                string part = typed.Replace(mark, mark == "," ? "." : ",", StringComparison.Ordinal);
                Fault(
                    line,
                    HeadingOf(field.Name),
                    $"{FreeText.Shown(typed)} can be {whole} or {part}; write one of these"
                );
            }
        }
    }

    private bool IsEntered(long line, ImmutableArray<LedgerEntry> what)
    {
        // a table that is brought a second time tells of no second reading
        what = [.. what.Where(each => each is not (ToolMeasured or HeatsWorked) || !before.Contains(each))];
        if (what.IsEmpty)
        {
            doubts.Add(new(line, "", "the shop knows this already; left out"));
        }

        foreach (LedgerEntry each in what)
        {
            Step step = now.After(new(now.NextNumber, DateTimeOffset.UnixEpoch, today, each));
            if (step.Fault is { } fault)
            {
                Fault(line, HeadingOf(fault.Field), fault.Sentence);
                return false;
            }

            now = step.After!;
            entries.Add(each);
        }

        return !what.IsEmpty;
    }

    /// <summary>The text that a field is read from; null leaves it as it is.</summary>
    private string? Text(SaidRow row, Field<T> field, string cell, bool isKnown)
    {
        if (field.Name == Note && wishes.KeepUnknown)
        {
            IEnumerable<string> kept = unknown
                .Where(i => row[i].Length > 0)
                .Select(i => $"{headings[i].Typed}: {row[i]}");
            cell = string.Join("; ", kept.Prepend(cell).Where(text => text.Length > 0));
        }

        return cell.Length == 0 && IsDayGiven(field) ? FormattableString.Invariant($"{wishes.On:yyyy-MM-dd}")
            : cell.Length == 0 && (isKnown || kind.Filled.Contains(field.Name, StringComparer.Ordinal)) ? null
            : field.IsText && cell.StartsWith('\'') ? cell[1..]
            // a bare size has the unit of its heading
            : field.Unit == "mm" && cell is [.., >= '0' and <= '9'] && headings[columns[field.Name]].Unit is { } unit
                ? $"{cell} {SizeShown.Mark(unit)}"
            : cell;
    }

    private string Carried(string cell, string field)
    {
        if (cell.Length > 0)
        {
            above[field] = cell;
        }
        else if (above.ContainsKey(field) && field != Note && CanBeCarried(field))
        {
            blanks.Add(field);
        }

        return carried.Contains(field, StringComparer.Ordinal) ? above.GetValueOrDefault(field, "") : cell;
    }

    private string Mended(FieldFault fault, string cell) =>
        cell.Length > 0
            ? fault.Sentence
            : $"the cell is empty; {fault.Sentence}{OrOn(fault.Field)}"
                + (
                    CanBeCarried(fault.Field) && above.TryGetValue(fault.Field, out string? over)
                        ? $", or add --carry-down {fault.Field} to repeat {FreeText.Shown(over)}"
                        : ""
                );

    private bool IsDayGiven(Field<T> field) =>
        field is { Name: TableKind.Day, Need: Need.Always } && wishes.On is not null;

    private string OrOn(string field) =>
        field == TableKind.Day && wishes.On is null ? ", or add --on with the day of all rows that name none" : "";

    private bool CanBeCarried(string field) => kind.Fields[field] is { IsKey: false, IsNumber: false };

    private string HeadingOf(string field) =>
        columns.TryGetValue(field, out int column) ? headings[column].Typed : field;

    private void Fault(long line, string column, string sentence) => faults.Add(new(line, column, sentence));

    [GeneratedRegex("""^[0-9]*(?<mark>[.,])[0-9]+[^0-9.,]*$""", RegexOptions.ExplicitCapture)]
    private static partial Regex Decimal();

    [GeneratedRegex("""^[1-9][0-9]{0,2}(?<mark>[.,])[0-9]{3}(?![0-9.,])""", RegexOptions.ExplicitCapture)]
    private static partial Regex Thousands();
}
