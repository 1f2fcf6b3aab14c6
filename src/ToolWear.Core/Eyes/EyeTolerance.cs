using System.Diagnostics.CodeAnalysis;
using ToolWear.Core.Measure;

namespace ToolWear.Core.Eyes;

/// <summary>The least and the greatest eye that still takes its handle, both ways, cold.</summary>
/// <remarks>Two-sided: too large an eye throws the head as surely as too small a one splits the handle.</remarks>
public sealed record EyeTolerance
{
    private EyeTolerance(Length leastLength, Length greatestLength, Length leastWidth, Length greatestWidth)
    {
        LeastLength = leastLength;
        GreatestLength = greatestLength;
        LeastWidth = leastWidth;
        GreatestWidth = greatestWidth;
    }

    /// <summary>The least length.</summary>
    public Length LeastLength { get; }

    /// <summary>The greatest length, above the least.</summary>
    public Length GreatestLength { get; }

    /// <summary>The least width.</summary>
    public Length LeastWidth { get; }

    /// <summary>The greatest width, above the least.</summary>
    public Length GreatestWidth { get; }

    /// <summary>Makes a tolerance of its four figures.</summary>
    /// <param name="leastLength">Above zero.</param>
    /// <param name="greatestLength">Above the least.</param>
    /// <param name="leastWidth">Above zero.</param>
    /// <param name="greatestWidth">Above the least.</param>
    /// <param name="tolerance">The tolerance, where the figures can be.</param>
    /// <param name="refusal">Otherwise the reason, with what is allowed.</param>
    /// <returns>True where a tolerance was made.</returns>
    public static bool TryMake(
        Length leastLength,
        Length greatestLength,
        Length leastWidth,
        Length greatestWidth,
        [NotNullWhen(true)] out EyeTolerance? tolerance,
        [NotNullWhen(false)] out string? refusal
    )
    {
        refusal = Refuse("length", leastLength, greatestLength) ?? Refuse("width", leastWidth, greatestWidth);
        tolerance = refusal is null ? new EyeTolerance(leastLength, greatestLength, leastWidth, greatestWidth) : null;
        return refusal is null;
    }

    /// <summary>Makes a tolerance of an ISO 286 grade, half of it to each side of the wanted eye (position JS).</summary>
    /// <param name="length">The wanted length, over 3 to 120 mm.</param>
    /// <param name="width">The wanted width, over 3 to 120 mm.</param>
    /// <param name="grade">The IT number, 11 to 16.</param>
    /// <param name="tolerance">The tolerance, where the figures can be.</param>
    /// <param name="refusal">Otherwise the reason, with what is allowed.</param>
    /// <returns>True where a tolerance was made.</returns>
    public static bool TryFromGrade(
        Length length,
        Length width,
        int grade,
        [NotNullWhen(true)] out EyeTolerance? tolerance,
        [NotNullWhen(false)] out string? refusal
    )
    {
        tolerance = null;
        if (
            !IsoGrade.TryTolerance(grade, length.Mm, out double lengthMm, out refusal)
            || !IsoGrade.TryTolerance(grade, width.Mm, out double widthMm, out refusal)
        )
        {
            return false;
        }

        Length ofLength = Length.FromMm(lengthMm / 2);
        Length ofWidth = Length.FromMm(widthMm / 2);
        return TryMake(
            length - ofLength,
            length + ofLength,
            width - ofWidth,
            width + ofWidth,
            out tolerance,
            out refusal
        );
    }

    /// <summary>Whether an eye lies inside the tolerance both ways, ends included.</summary>
    /// <param name="eye">The cold eye.</param>
    /// <returns>True where both length and width do.</returns>
    public bool Holds(EyeSize eye) =>
        eye.LengthMm >= LeastLength.Mm
        && eye.LengthMm <= GreatestLength.Mm
        && eye.WidthMm >= LeastWidth.Mm
        && eye.WidthMm <= GreatestWidth.Mm;

    private static string? Refuse(string what, Length least, Length greatest) =>
        least > Length.Zero && greatest > least
            ? null
            : $"The least {what} must be above 0 and below the greatest; {least} and {greatest} are not.";
}
