using System.Globalization;
using System.Text;
using ToolWear.Core.Fields;
using ToolWear.Core.Measure;
using ToolWear.Core.Tools;

namespace ToolWear.Storage.Csv;

/// <summary>One row of a CSV file, read cell by cell; a cell that cannot be read is told to the faults.</summary>
/// <remarks>What is empty or faulty reads as null, or as a default where it was needed: look at <see cref="IsFaulty"/>.</remarks>
internal sealed class CsvRow(
    string file,
    long line,
    IReadOnlyDictionary<string, int> header,
    string[] cells,
    DateOnly today,
    CsvFaults faults
)
{
    private const double MostNumber = 1e9;

    /// <summary>The file's name.</summary>
    public string File => file;

    /// <summary>The line on which the row starts.</summary>
    public long Line => line;

    /// <summary>The shop's day.</summary>
    public DateOnly Today => today;

    /// <summary>Whether anything in the row was wrong.</summary>
    public bool IsFaulty { get; private set; }

    /// <summary>Tells a fault of this row.</summary>
    /// <param name="column">The column, empty for the whole row.</param>
    /// <param name="sentence">What is wrong, what would be right.</param>
    public void Fault(string column, string sentence)
    {
        IsFaulty = true;
        faults.Add(file, line, column, sentence);
    }

    /// <summary>Whether a cell has something in it.</summary>
    /// <param name="column">The column.</param>
    /// <returns>True where it is not empty.</returns>
    public bool Has(string column) => Raw(column).Length > 0;

    /// <summary>A described thing; what is faulty in it is as in the blank one.</summary>
    /// <typeparam name="T">The thing.</typeparam>
    /// <param name="fields">Its fields.</param>
    /// <returns>The thing; not to be used where the row is faulty.</returns>
    public T Read<T>(FieldTable<T> fields) =>
        fields.Read(
            fields.Blank,
            field => Raw(field.Name) is var raw && field.IsText && raw.StartsWith('\'') ? raw[1..] : raw,
            new(null, today),
            fault => Fault(fault.Field, fault.Sentence)
        );

    /// <summary>What a cell says, whether or not it may: to know what a faulty row speaks of.</summary>
    /// <param name="column">The column.</param>
    /// <returns>The text, empty for nothing.</returns>
    public string Peek(string column) =>
        Raw(column) is { Length: <= FreeText.MostCharacters } raw ? Unescaped(raw) : "";

    /// <summary>A text on one line of at most 2000 characters, in normal form C, its ' in front taken off.</summary>
    /// <param name="column">The column.</param>
    /// <returns>The text, null where empty or faulty.</returns>
    public string? Text(string column)
    {
        if (Note(column) is not { } text)
        {
            return null;
        }

        foreach (Rune rune in text.EnumerateRunes())
        {
            if (Rune.IsControl(rune) || rune.Value is 0x2028 or 0x2029)
            {
                Fault(column, $"holds the control character or line end U+{rune.Value:X4}; take it out");
                return null;
            }
        }

        return text;
    }

    /// <summary>A note of at most 2000 characters, whatever they are, in normal form C, its ' in front taken off.</summary>
    /// <param name="column">The column.</param>
    /// <returns>The note, null where empty or faulty.</returns>
    public string? Note(string column)
    {
        // what is far too long is not brought to a normal form first
        string raw = Raw(column);
        string text = raw.Length > 4 * FreeText.MostCharacters ? raw : Unescaped(raw);
        if (text.Length > FreeText.MostCharacters)
        {
            Fault(column, $"a text of {text.Length} characters; at most {FreeText.MostCharacters}");
            return null;
        }

        return text.Length == 0 ? null : text;
    }

    /// <summary>A text that must be there.</summary>
    /// <param name="column">The column.</param>
    /// <returns>The text, empty where it is missing.</returns>
    public string NeedText(string column) => Text(column) ?? (Has(column) ? "" : Missing(column, ""));

    /// <summary>A name of 1 to 40 characters.</summary>
    /// <param name="column">The column.</param>
    /// <returns>The name, null where empty.</returns>
    public string? Name(string column)
    {
        if (Text(column) is not { } name)
        {
            return null;
        }

        if (ToolMark.Fault(column, name) is { } fault)
        {
            Fault(column, fault);
        }

        return name;
    }

    /// <summary>A name that must be there.</summary>
    /// <param name="column">The column.</param>
    /// <returns>The name, empty where it is missing.</returns>
    public string NeedName(string column) => Name(column) ?? (Has(column) ? "" : Missing(column, ""));

    /// <summary>A tool's mark.</summary>
    /// <param name="column">The column.</param>
    /// <returns>The mark, null where empty or faulty.</returns>
    public ToolMark? Mark(string column)
    {
        if (Text(column) is not { } text)
        {
            return null;
        }

        if (ToolMark.TryParse(text, out ToolMark mark, out string refusal))
        {
            return mark;
        }

        Fault(column, refusal);
        return null;
    }

    /// <summary>A tool's mark that must be there.</summary>
    /// <param name="column">The column.</param>
    /// <returns>The mark, no mark where it is missing or faulty.</returns>
    public ToolMark NeedMark(string column) => Needed(column, Mark(column));

    /// <summary>A size in mm above zero.</summary>
    /// <param name="column">The column.</param>
    /// <returns>The size, null where empty or faulty.</returns>
    public Length? Size(string column)
    {
        string raw = Raw(column);
        if (raw.Length == 0)
        {
            return null;
        }

        if (SizeText.TryParseMm(raw, out Length size, out string refusal))
        {
            return size;
        }

        Fault(column, refusal);
        return null;
    }

    /// <summary>A size in mm that must be there.</summary>
    /// <param name="column">The column.</param>
    /// <returns>The size, zero where it is missing or faulty.</returns>
    public Length NeedSize(string column) => Needed(column, Size(column));

    /// <summary>A distance in mm, zero or more.</summary>
    /// <param name="column">The column.</param>
    /// <returns>The distance, null where empty or faulty.</returns>
    public Length? Distance(string column) => IsZero(Raw(column)) ? Length.Zero : Size(column);

    /// <summary>A distance in mm that must be there, zero or more.</summary>
    /// <param name="column">The column.</param>
    /// <returns>The distance, zero where it is missing or faulty.</returns>
    public Length NeedDistance(string column) => Needed(column, Distance(column));

    /// <summary>A number, at most a thousand million either way.</summary>
    /// <param name="column">The column.</param>
    /// <returns>The number, null where empty or faulty.</returns>
    public double? Number(string column)
    {
        const NumberStyles Styles =
            NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent;
        string raw = Raw(column);
        if (raw.Length == 0)
        {
            return null;
        }

        if (
            double.TryParse(raw, Styles, CultureInfo.InvariantCulture, out double number)
            && double.Abs(number) <= MostNumber
        )
        {
            return number;
        }

        Fault(column, $"\"{FreeText.Shown(raw)}\" is no number; write it bare with a point, such as 0.25");
        return null;
    }

    /// <summary>A number that must be there.</summary>
    /// <param name="column">The column.</param>
    /// <returns>The number, zero where it is missing or faulty.</returns>
    public double NeedNumber(string column) => Needed(column, Number(column));

    /// <summary>An amount of money or hours, zero or more.</summary>
    /// <param name="column">The column.</param>
    /// <returns>The amount, null where empty or faulty.</returns>
    public decimal? Amount(string column)
    {
        string raw = Raw(column);
        if (raw.Length == 0)
        {
            return null;
        }

        if (
            raw.Length <= 30
            && decimal.TryParse(raw, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out decimal amount)
        )
        {
            return amount;
        }

        Fault(column, $"\"{FreeText.Shown(raw)}\" is no amount; write a bare number from 0 with a point, such as 1.5");
        return null;
    }

    /// <summary>A whole number, zero or more.</summary>
    /// <param name="column">The column.</param>
    /// <returns>The number, null where empty or faulty.</returns>
    public int? Count(string column)
    {
        string raw = Raw(column);
        if (raw.Length == 0)
        {
            return null;
        }

        if (int.TryParse(raw, NumberStyles.None, CultureInfo.InvariantCulture, out int count))
        {
            return count;
        }

        Fault(column, $"\"{FreeText.Shown(raw)}\" is no count; write a bare whole number from 0, such as 12");
        return null;
    }

    /// <summary>A whole number that must be there.</summary>
    /// <param name="column">The column.</param>
    /// <returns>The number, zero where it is missing or faulty.</returns>
    public int NeedCount(string column) => Needed(column, Count(column));

    /// <summary>Heats in steps of a half, from zero to a million.</summary>
    /// <param name="column">The column.</param>
    /// <returns>The heats, null where empty or faulty.</returns>
    public Heats? Heats(string column)
    {
        if (Amount(column) is not { } count)
        {
            return null;
        }

        if (count <= 1_000_000 && count * 2 == decimal.Truncate(count * 2))
        {
            return Core.Measure.Heats.OfHalves((int)(count * 2));
        }

        Fault(column, $"\"{FreeText.Shown(Raw(column))}\" heats cannot be; whole or half ones, such as 3 or 2.5");
        return null;
    }

    /// <summary>Heats that must be there.</summary>
    /// <param name="column">The column.</param>
    /// <returns>The heats, none where they are missing or faulty.</returns>
    public Heats NeedHeats(string column) => Needed(column, Heats(column));

    /// <summary>A day, ISO 8601.</summary>
    /// <param name="column">The column.</param>
    /// <returns>The day, null where empty or faulty.</returns>
    public DateOnly? Day(string column)
    {
        string raw = Raw(column);
        if (raw.Length == 0)
        {
            return null;
        }

        CultureInfo plain = CultureInfo.InvariantCulture;
        if (DateOnly.TryParseExact(raw, "yyyy-MM-dd", plain, DateTimeStyles.None, out DateOnly day))
        {
            return day;
        }

        Fault(column, $"\"{FreeText.Shown(raw)}\" is no day; write one that there is like 2026-05-01");
        return null;
    }

    /// <summary>A day that is not in the future.</summary>
    /// <param name="column">The column.</param>
    /// <returns>The day, null where empty or faulty.</returns>
    public DateOnly? PastDay(string column)
    {
        DateOnly? day = Day(column);
        if (day > today)
        {
            Fault(column, $"{day:yyyy-MM-dd} lies in the future; today is {today:yyyy-MM-dd}");
        }

        return day;
    }

    /// <summary>A day that must be there and not in the future.</summary>
    /// <param name="column">The column.</param>
    /// <returns>The day, the least day where it is missing or faulty.</returns>
    public DateOnly NeedPastDay(string column) => Needed(column, PastDay(column));

    /// <summary>A day that must be there.</summary>
    /// <param name="column">The column.</param>
    /// <returns>The day, the least day where it is missing or faulty.</returns>
    public DateOnly NeedDay(string column) => Needed(column, Day(column));

    /// <summary>A word of a closed list.</summary>
    /// <typeparam name="T">The enum behind the words.</typeparam>
    /// <param name="column">The column.</param>
    /// <param name="words">The list.</param>
    /// <returns>The value, null where empty or faulty.</returns>
    public T? Word<T>(string column, Vocabulary<T> words)
        where T : struct, Enum
    {
        string raw = Raw(column);
        if (raw.Length == 0)
        {
            return null;
        }

        if (words.TryParse(raw, out T value, out _))
        {
            return value;
        }

        Fault(column, $"\"{FreeText.Shown(raw)}\" is not known here; one of {string.Join(", ", words.All)}");
        return null;
    }

    /// <summary>A word that must be there.</summary>
    /// <typeparam name="T">The enum behind the words.</typeparam>
    /// <param name="column">The column.</param>
    /// <param name="words">The list.</param>
    /// <returns>The value, the first of the enum where it is missing or faulty.</returns>
    public T NeedWord<T>(string column, Vocabulary<T> words)
        where T : struct, Enum => Needed(column, Word(column, words));

    /// <summary>A place in the series; the empty cell is no place.</summary>
    /// <param name="column">The column.</param>
    /// <returns>The place.</returns>
    public Place Place(string column) => Word(column, Places.Words) ?? Core.Tools.Place.None;

    /// <summary>yes or no.</summary>
    /// <param name="column">The column.</param>
    /// <returns>The answer, null where empty or faulty.</returns>
    public bool? YesNo(string column)
    {
        string raw = Raw(column);
        if (raw is not ("" or "yes" or "no"))
        {
            Fault(column, $"\"{FreeText.Shown(raw)}\" is neither yes nor no");
            return null;
        }

        return raw.Length == 0 ? null : raw == "yes";
    }

    /// <summary>A form of tool.</summary>
    /// <param name="column">The column.</param>
    /// <returns>The form, null where empty or faulty.</returns>
    public ToolForm? Form(string column)
    {
        string raw = Raw(column);
        if (raw.Length == 0)
        {
            return null;
        }

        if (ToolForms.TryFind(raw, out ToolForm form, out _))
        {
            return form;
        }

        Fault(column, $"\"{FreeText.Shown(raw)}\" is not known here; one of {string.Join(", ", ToolForms.All)}");
        return null;
    }

    /// <summary>A form that must be there.</summary>
    /// <param name="column">The column.</param>
    /// <returns>The form, the last of the list where it is missing or faulty.</returns>
    public ToolForm NeedForm(string column) =>
        Form(column) ?? (Has(column) ? ToolForms.All[^1] : Missing(column, ToolForms.All[^1]));

    private static bool IsZero(string raw) =>
        raw.Length is > 0 and <= 20
        && decimal.TryParse(raw, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out decimal number)
        && number == 0;

    private static string Unescaped(string raw) => NormalFormC.Of(raw.StartsWith('\'') ? raw[1..] : raw);

    private string Raw(string column) => header.TryGetValue(column, out int i) ? cells[i] : "";

    private T Needed<T>(string column, T? value)
        where T : struct => value ?? (Has(column) ? default : Missing(column, default(T)));

    private T Missing<T>(string column, T instead)
    {
        Fault(column, "the cell is empty and cannot be left out");
        return instead;
    }
}
