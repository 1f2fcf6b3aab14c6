using System.Globalization;
using System.Text.RegularExpressions;

namespace ToolWear.Core.Measure;

/// <summary>A size as the smith typed it.</summary>
/// <param name="Length">The size, above zero, exact.</param>
/// <param name="Resolution"><see cref="SizeText.FinestFraction"/> for a fraction, or null for a decimal.</param>
public readonly record struct TypedSize(Length Length, Length? Resolution);

/// <summary>Reads and writes sizes in every way a smith writes them.</summary>
/// <remarks>
/// A mark wins (mm, ", in); a fraction without a mark is inches; any other bare number is in the shop's unit; a comma
/// is a decimal comma. Nothing is rounded: what is no whole number of nanometres is refused.
/// </remarks>
public static partial class SizeText
{
    /// <summary>The longest size that is taken, 10 m: a bar, never a slip of the thumb.</summary>
    public static readonly Length Longest = Length.FromMm(10_000m);

    /// <summary>The finest step that is typed as a fraction, 1/64 in. A fraction is written reduced, so that 1/2" means
    /// 12.70 and its look says nothing of how finely it was read.</summary>
    public static readonly Length FinestFraction = new(Length.NanometresInInch / 64);

    private const int MostCharacters = 40;

    private const string Right = "write it like 36.5, 36,5 mm, 1.44\", 1 7/16 or 1-7/16";

    /// <summary>Reads a size.</summary>
    /// <param name="text">What was typed.</param>
    /// <param name="unit">The unit of a bare number.</param>
    /// <param name="size">The size, where it can be one.</param>
    /// <param name="refusal">What is wrong and what would be right, where it cannot.</param>
    /// <returns>True where it was read.</returns>
    public static bool TryParse(string text, LengthUnit unit, out TypedSize size, out string refusal)
    {
        size = default;
        refusal = "";
        string shown = FreeText.Shown(text);
        Match match = text.Length > MostCharacters ? Match.Empty : Pattern().Match(text);
        if (!match.Success)
        {
            refusal = $"size \"{shown}\" cannot be read: {Right}";
            return false;
        }

        bool isFraction = match.Groups["bottom"].Success;
        LengthUnit spoken = match.Groups["mark"].Value.ToUpperInvariant() switch
        {
            "MM" => LengthUnit.Mm,
            "" => isFraction ? LengthUnit.Inch : unit,
            _ => LengthUnit.Inch,
        };
        string? fault = isFraction ? Fraction(match, spoken, out size) : Decimal(match, spoken, out size);
        fault ??= OutOfRange(size.Length);
        if (fault is not null)
        {
            size = default;
            refusal = $"size \"{shown}\": {fault}";
        }

        return fault is null;
    }

    /// <summary>Reads bare millimetres as files hold them, a point for the decimals.</summary>
    /// <param name="text">The cell.</param>
    /// <param name="length">The size, above zero.</param>
    /// <param name="refusal">What is wrong and what would be right, where it cannot be one.</param>
    /// <returns>True where it was read.</returns>
    public static bool TryParseMm(string text, out Length length, out string refusal)
    {
        length = default;
        refusal = "";
        if (
            !decimal.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out decimal mm)
            || text.Length > 20
        )
        {
            refusal = $"\"{FreeText.Shown(text)}\" is no size in mm: a bare number with a point, such as 36.5";
            return false;
        }

        string? fault =
            mm > Longest.Nanometres
                ? OutOfRange(Longest + Longest)
                : Exact(mm * Length.NanometresInMm, out length) ?? OutOfRange(length);
        refusal = fault is null ? "" : $"{FreeText.Shown(text)}: {fault}";
        return fault is null;
    }

    /// <summary>Writes a size so that typed back it is the same to the nanometre.</summary>
    /// <param name="size">The size; null for none.</param>
    /// <param name="units">The unit of bare sizes.</param>
    /// <returns>For example "36.5", "1 7/16 in" or, in a shop of inches, "36.5 mm"; null for none.</returns>
    public static string? Offer(Length? size, LengthUnit units)
    {
        return size is not { } known ? null
            : units == LengthUnit.Mm ? known.ToMmText()
            : known.Nanometres % FinestFraction.Nanometres == 0 ? SizeShown.Eye(known, units) + " in"
            : known.ToString();
    }

    private static string? OutOfRange(Length length) =>
        length <= Length.Zero ? "a size is above zero"
        : length > Longest ? "more than 10 m is no size of a tool or a bar"
        : null;

    private static string? Decimal(Match match, LengthUnit unit, out TypedSize size)
    {
        size = default;
        string number = match.Groups["number"].Value.Replace(',', '.');
        if (
            !decimal.TryParse(number, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out decimal value)
            || value > 1_000_000
        )
        {
            return "more than 10 m is no size of a tool or a bar";
        }

        string? fault = Exact(value * NanometresIn(unit), out Length length);
        size = new(length, null);
        return fault;
    }

    private static string? Fraction(Match match, LengthUnit unit, out TypedSize size)
    {
        size = default;
        long whole = match.Groups["whole"].Success ? Number(match, "whole") : 0;
        long top = Number(match, "top");
        long bottom = Number(match, "bottom");
        if (unit == LengthUnit.Mm)
        {
            return "fractions are inches: write millimetres as a decimal, such as 36.5 mm";
        }

        if (bottom is not (2 or 4 or 8 or 16 or 32 or 64))
        {
            return "a fraction of an inch is in halves, quarters, 8ths, 16ths, 32nds or 64ths";
        }

        if (top == 0)
        {
            return whole == 0 ? "a size is above zero" : $"leave the fraction 0/{bottom} away: {whole} in";
        }

        if (top >= bottom)
        {
            return $"the fraction {top}/{bottom} is not below one: write the whole inches in front, such as 1 7/16";
        }

        long step = Length.NanometresInInch / bottom;
        size = new(new((whole * Length.NanometresInInch) + (top * step)), FinestFraction);
        return null;
    }

    private static long Number(Match match, string group) =>
        long.Parse(match.Groups[group].Value, NumberStyles.None, CultureInfo.InvariantCulture);

    private static long NanometresIn(LengthUnit unit) =>
        unit == LengthUnit.Mm ? Length.NanometresInMm : Length.NanometresInInch;

    private static string? Exact(decimal nanometres, out Length length)
    {
        bool isWhole = nanometres == decimal.Truncate(nanometres);
        length = isWhole ? new((long)nanometres) : default;
        return isWhole ? null : "too many decimals: at most 6 in millimetres, 5 in inches";
    }

    [GeneratedRegex(
        """^\s*(?:(?:(?<whole>[0-9]{1,3})(?:\s+|\s*-\s*))?(?<top>[0-9]{1,2})\s*/\s*(?<bottom>[0-9]{1,3})|(?<number>[0-9]{1,8}(?:[.,][0-9]{1,12})?|[.,][0-9]{1,12}))\s*(?<mark>mm|in|inch|inches|"|”|″|)\s*$""",
        RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant | RegexOptions.IgnoreCase
    )]
    private static partial Regex Pattern();
}
