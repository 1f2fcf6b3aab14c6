using System.Collections.Immutable;
using System.Globalization;
using ToolWear.Core.Measure;
using ToolWear.Core.Tools;
using ToolWear.Core.Tools.Forms;

namespace ToolWear.Core.Fields;

/// <summary>The kinds of value that fields hold.</summary>
public static class FieldKinds
{
    private const double MostNumber = 1e9;
    private const double SteepestTyped = 0.5;
    private static readonly CultureInfo Plain = CultureInfo.InvariantCulture;

    /// <summary>A name of 1 to 40 characters.</summary>
    public static FieldKind<string?> Name { get; } = OfText("a name", name => ToolMark.Fault("name", name));

    /// <summary>A text on one line of at most 2000 characters.</summary>
    public static FieldKind<string?> Text { get; } = OfText("a word or two", FreeText.NameFault);

    /// <summary>A note of at most 2000 characters, whatever they are.</summary>
    public static FieldKind<string?> Note { get; } = OfText("a note", FreeText.NoteFault);

    /// <summary>A tool's mark.</summary>
    public static FieldKind<ToolMark?> Mark { get; } =
        new(
            (text, source, out value) =>
            {
                bool isMark = ToolMark.TryParse(
                    source.IsFile ? text : text.Trim(),
                    out ToolMark mark,
                    out string fault
                );
                value = mark;
                return isMark ? null : fault;
            },
            mark => mark?.Text,
            "a tool's mark"
        )
        {
            IsText = true,
        };

    /// <summary>A size above zero, at most 10 m.</summary>
    public static FieldKind<Length?> Size { get; } =
        OfLength(
            ReadSize,
            size => size <= Length.Zero || size > SizeText.Longest ? "a size is above zero and at most 10 m" : null
        );

    /// <summary>A distance from zero to 10 m.</summary>
    public static FieldKind<Length?> Distance { get; } =
        OfLength(
            (string text, Source source, out Length? value) =>
            {
                value = Length.Zero;
                return IsZero(text) ? null : ReadSize(text, source, out value);
            },
            size => size < Length.Zero || size > SizeText.Longest ? "a distance is from 0 to 10 m" : null
        );

    /// <summary>A taper, from 0 to 1; typed at most 0.5, as steep as is reckoned with anywhere.</summary>
    public static FieldKind<double?> Taper { get; } =
        Number(0, 1) with
        {
            Read = (text, source, out value) =>
                ReadNumber(text, source, out value)
                ?? (
                    source.IsFile || value <= SteepestTyped
                        ? null
                        : $"{value} lies outside; a number from 0 to {SteepestTyped}"
                ),
        };

    /// <summary>Heats that one of these usually lasts.</summary>
    public static FieldKind<double?> GuessHeats { get; } =
        Number(GuessedLife.Least, GuessedLife.Most) with
        {
            Unit = "heats",
        };

    /// <summary>An amount of money or hours, zero or more.</summary>
    public static FieldKind<decimal?> Amount { get; } =
        new(ReadAmount, amount => amount?.ToString(Plain), "an amount, such as 1.5")
        {
            Unit = "money",
            IsNumber = true,
            Fault = amount => amount < 0 ? $"{amount} lies outside; a number from 0" : null,
        };

    /// <summary>Hours, zero or more.</summary>
    public static FieldKind<decimal?> Hours { get; } = Amount with { Unit = "hours" };

    /// <summary>Heats as worked, in halves, from none to a million.</summary>
    public static FieldKind<Heats?> HeatsInHalves { get; } =
        new(
            (text, source, out value) =>
            {
                value = null;
                if (ReadAmount(source.IsFile ? text : Heats.Pointed(text), source, out decimal? count) is { } fault)
                {
                    return fault;
                }

                if (count > 1_000_000 || count * 2 != decimal.Truncate(count!.Value * 2))
                {
                    return $"\"{FreeText.Shown(text)}\" heats cannot be; whole or half ones, such as 3 or 2.5";
                }

                value = Heats.OfHalves((int)(count.Value * 2));
                return null;
            },
            heats => heats?.ToString(),
            "heats, such as 3 or 2.5"
        )
        {
            Unit = "heats",
            IsNumber = true,
        };

    /// <summary>A day, ISO 8601 in files; typed the next such day where it has no year.</summary>
    public static FieldKind<DateOnly?> Day { get; } =
        new(
            (text, source, out value) => ReadDay(text, source, isToCome: true, out value),
            WriteDay,
            "a day, such as 2026-05-01"
        );

    /// <summary>A day that is not in the future; typed the last such day where it has no year.</summary>
    public static FieldKind<DateOnly?> PastDay { get; } =
        new(
            (text, source, out value) =>
                ReadDay(text, source, isToCome: false, out value)
                ?? (
                    value > source.Today
                        ? $"{WriteDay(value)} lies in the future; today is {WriteDay(source.Today)}"
                        : null
                ),
            WriteDay,
            "a day, such as 2026-05-01"
        );

    /// <summary>yes or no.</summary>
    public static FieldKind<bool?> YesNo { get; } = Either("yes", "no");

    /// <summary>A form of tool.</summary>
    public static FieldKind<ToolForm?> Form { get; } =
        new(
            (text, source, out value) =>
            {
                bool isForm = ToolForms.TryFind(
                    Meant(text, source, [.. ToolForms.All.Select(each => each.Name)]),
                    out ToolForm form,
                    out string _
                );
                value = form;
                return isForm ? null : NotAmong(text, [.. ToolForms.All.Select(each => each.Name)]);
            },
            form => form?.Name,
            $"one of {string.Join(", ", ToolForms.All)}"
        )
        {
            Words = [.. ToolForms.All.Select(form => form.Name)],
        };

    /// <summary>A place in the series; none is not known.</summary>
    public static FieldKind<Place?> InSeries { get; } = Word(Places.Words);

    /// <summary>A word of a closed list.</summary>
    /// <typeparam name="TWord">The enum behind the words.</typeparam>
    /// <param name="words">The list.</param>
    /// <returns>The kind.</returns>
    public static FieldKind<TWord?> Word<TWord>(Vocabulary<TWord> words)
        where TWord : struct, Enum =>
        new(
            (text, source, out value) =>
            {
                bool isWord = words.TryParse(Meant(text, source, words.All), out TWord word, out string _);
                value = word;
                return isWord ? null : NotAmong(text, words.All);
            },
            word => word is { } known ? words.Word(known) : null,
            $"one of {string.Join(", ", words.All)}"
        )
        {
            Words = words.All,
        };

    /// <summary>One of two words.</summary>
    /// <param name="yes">The word for true.</param>
    /// <param name="no">The word for false.</param>
    /// <returns>The kind.</returns>
    public static FieldKind<bool?> Either(string yes, string no) =>
        new(
            (text, source, out value) =>
            {
                string said = Meant(text, source, [yes, no]);
                value = said == yes;
                return said == yes || said == no ? null : $"\"{FreeText.Shown(text)}\" is neither {yes} nor {no}";
            },
            answer => answer is { } known ? (known ? yes : no) : null,
            $"{yes} or {no}"
        )
        {
            Words = [yes, no],
        };

    /// <summary>A number in a range.</summary>
    /// <param name="least">The least, which it may be.</param>
    /// <param name="greatest">The greatest, which it may be.</param>
    /// <returns>The kind.</returns>
    public static FieldKind<double?> Number(double least = -MostNumber, double greatest = MostNumber) =>
        OfNumber(number => number >= least && number <= greatest, $"a number from {least} to {greatest}");

    /// <summary>A number above zero.</summary>
    /// <param name="greatest">The greatest, which it may be.</param>
    /// <returns>The kind.</returns>
    public static FieldKind<double?> AboveZero(double greatest) =>
        OfNumber(number => number > 0 && number <= greatest, $"a number above 0 to {greatest}");

    /// <summary>A whole number in a range.</summary>
    /// <param name="least">The least, zero or more.</param>
    /// <param name="greatest">The greatest.</param>
    /// <returns>The kind.</returns>
    public static FieldKind<int?> Whole(int least = 0, int greatest = int.MaxValue)
    {
        string right =
            greatest == int.MaxValue ? $"a whole number from {least}" : $"a whole number from {least} to {greatest}";
        return new(
            (text, source, out value) =>
            {
                bool isWhole = int.TryParse(
                    source.IsFile ? text : text.Trim(),
                    NumberStyles.None,
                    Plain,
                    out int count
                );
                value = count;
                return isWhole
                    ? null
                    : $"\"{FreeText.Shown(text)}\" is no count; write a bare whole number from {least}, such as 12";
            },
            count => count?.ToString(Plain),
            right
        )
        {
            IsNumber = true,
            Fault = count => count < least || count > greatest ? $"{count} lies outside; {right}" : null,
        };
    }

    private static FieldKind<string?> OfText(string right, Func<string, string?> fault) =>
        new(
            (text, source, out value) =>
            {
                // what is far too long is not brought to a normal form first
                value =
                    text.Length > 4 * FreeText.MostCharacters ? text
                    : source.IsFile ? NormalFormC.Of(text)
                    : NormalFormC.Of(text.Trim());
                return null;
            },
            text => text,
            right
        )
        {
            IsText = true,
            Fault = text => text is null ? null : fault(text),
        };

    private static FieldKind<Length?> OfLength(FieldReader<Length?> read, Func<Length?, string?> fault) =>
        new(read, size => size?.ToMmText(), "a size, such as 36.5 or 1 7/16")
        {
            Unit = "mm",
            IsNumber = true,
            Fault = fault,
            Offer = SizeText.Offer,
        };

    private static string? ReadSize(string text, Source source, out Length? value)
    {
        bool isSize;
        string fault;
        if (source.Units is { } units)
        {
            isSize = SizeText.TryParse(text, units, out TypedSize typed, out fault);
            value = typed.Length;
        }
        else
        {
            isSize = SizeText.TryParseMm(text, out Length length, out fault);
            value = length;
        }

        return isSize ? null : fault;
    }

    private static FieldKind<double?> OfNumber(Func<double, bool> isRight, string right) =>
        new(ReadNumber, number => number?.ToString("R", Plain), right)
        {
            IsNumber = true,
            Fault = number => number is { } value && !isRight(value) ? $"{value} lies outside; {right}" : null,
        };

    private static string? ReadNumber(string text, Source source, out double? value)
    {
        const NumberStyles Styles =
            NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent;
        string bare = Pointed(text, source);
        bool isShare = !source.IsFile && bare.EndsWith('%');
        bool isNumber = double.TryParse(isShare ? bare[..^1].TrimEnd() : bare, Styles, Plain, out double number);
        value = isShare ? number / 100 : number;
        return isNumber && double.Abs(number) <= MostNumber
            ? null
            : $"\"{FreeText.Shown(text)}\" is no number; write it bare with a point, such as 0.25";
    }

    private static string? ReadAmount(string text, Source source, out decimal? value)
    {
        bool isAmount = decimal.TryParse(
            Pointed(text, source),
            NumberStyles.AllowDecimalPoint,
            Plain,
            out decimal amount
        );
        value = amount;
        return isAmount && text.Length <= 30
            ? null
            : $"\"{FreeText.Shown(text)}\" is no amount; write a bare number from 0 with a point, such as 1.5";
    }

    /// <summary>A comma that a person types is a decimal comma; in a file it is none.</summary>
    private static string Pointed(string text, Source source) => source.IsFile ? text : text.Trim().Replace(',', '.');

    private static bool IsZero(string text) =>
        text.Length <= 20
        && decimal.TryParse(text, NumberStyles.AllowDecimalPoint, Plain, out decimal number)
        && number == 0;

    /// <summary>The word of a list that a person means who writes "Slot_punch"; a file has it to the letter.</summary>
    private static string Meant(string text, Source source, ImmutableArray<string> words) =>
        source.IsFile ? text : words.FirstOrDefault(word => FreeText.Bare(word) == FreeText.Bare(text)) ?? text;

    private static string? ReadDay(string text, Source source, bool isToCome, out DateOnly? value)
    {
        if (source.IsFile)
        {
            value = DayText.Iso(text);
            return value is null
                ? $"\"{FreeText.Shown(text)}\" is no day; write one that there is like 2026-05-01"
                : null;
        }

        bool isDay = DayText.TryRead(text, source.Today, out DateOnly day, out string why, isToCome, source.MonthFirst);
        value = isDay ? day : null;
        return isDay ? null : why;
    }

    private static string? WriteDay(DateOnly? day) => day?.ToString("O", Plain);

    private static string NotAmong(string text, ImmutableArray<string> words) =>
        $"\"{FreeText.Shown(text)}\" is not known here. {NearNames.Hint(text, words)}";
}
