using System.Globalization;

namespace ToolWear.Core.Measure;

/// <summary>A length, kept in whole nanometres so that 1/64 in (396 875 nm) and 1/1000 in (25 400 nm) are exact.</summary>
/// <remarks>
/// Range: about 9.2 million kilometres either way; sums and differences are checked for overflow. Equality is exact.
/// The default is zero. A length may be negative where it is a difference, a size that is typed never is.
/// </remarks>
/// <param name="Nanometres">The length in nanometres.</param>
public readonly record struct Length(long Nanometres) : IComparable<Length>
{
    /// <summary>Nanometres in a millimetre.</summary>
    public const long NanometresInMm = 1_000_000;

    /// <summary>Nanometres in an inch (25.4 mm exactly, the international inch).</summary>
    public const long NanometresInInch = 25_400_000;

    /// <summary>No length at all.</summary>
    public static Length Zero => default;

    /// <summary>The length in millimetres, for arithmetic; exact to 15 digits.</summary>
    public double Mm => Nanometres / (double)NanometresInMm;

    /// <summary>The length in inches, for showing; exact to 15 digits.</summary>
    public double Inches => Nanometres / (double)NanometresInInch;

    /// <summary>Makes a length of millimetres written as a decimal, rounded to the nearest nanometre.</summary>
    /// <param name="mm">Millimetres, below 9e12 either way.</param>
    /// <returns>The length.</returns>
    public static Length FromMm(decimal mm) => new((long)decimal.Round(mm * NanometresInMm, MidpointRounding.ToEven));

    /// <summary>Makes a length of a computed number of millimetres, rounded to the nearest nanometre.</summary>
    /// <param name="mm">Millimetres, finite, below 9e12 either way.</param>
    /// <returns>The length.</returns>
    public static Length FromMm(double mm) => new(checked((long)Math.Round(mm * NanometresInMm)));

    /// <summary>The length the other way round.</summary>
    /// <param name="length">A length.</param>
    /// <returns>Its negative.</returns>
    public static Length operator -(Length length) => new(-length.Nanometres);

    /// <summary>The sum of two lengths.</summary>
    /// <param name="left">A length.</param>
    /// <param name="right">Another.</param>
    /// <returns>Their sum, exact.</returns>
    public static Length operator +(Length left, Length right) => new(left.Nanometres + right.Nanometres);

    /// <summary>The difference of two lengths, negative where the second is the larger.</summary>
    /// <param name="left">A length.</param>
    /// <param name="right">What is taken from it.</param>
    /// <returns>Their difference, exact.</returns>
    public static Length operator -(Length left, Length right) => new(left.Nanometres - right.Nanometres);

    /// <summary>Whether the left is shorter.</summary>
    /// <param name="left">A length.</param>
    /// <param name="right">Another.</param>
    /// <returns>True where left is shorter than right.</returns>
    public static bool operator <(Length left, Length right) => left.Nanometres < right.Nanometres;

    /// <summary>Whether the left is longer.</summary>
    /// <param name="left">A length.</param>
    /// <param name="right">Another.</param>
    /// <returns>True where left is longer than right.</returns>
    public static bool operator >(Length left, Length right) => left.Nanometres > right.Nanometres;

    /// <summary>Whether the left is no longer than the right.</summary>
    /// <param name="left">A length.</param>
    /// <param name="right">Another.</param>
    /// <returns>True where left is shorter than or equal to right.</returns>
    public static bool operator <=(Length left, Length right) => left.Nanometres <= right.Nanometres;

    /// <summary>Whether the left is no shorter than the right.</summary>
    /// <param name="left">A length.</param>
    /// <param name="right">Another.</param>
    /// <returns>True where left is longer than or equal to right.</returns>
    public static bool operator >=(Length left, Length right) => left.Nanometres >= right.Nanometres;

    /// <summary>The length without its sign.</summary>
    /// <returns>The length, zero or longer.</returns>
    public Length Abs() => new(Math.Abs(Nanometres));

    /// <inheritdoc />
    public int CompareTo(Length other) => Nanometres.CompareTo(other.Nanometres);

    /// <summary>Bare millimetres with every digit and a point, as files hold them: "36.5", "0.396875".</summary>
    /// <returns>The number without its unit.</returns>
    public string ToMmText() =>
        ((decimal)Nanometres / NanometresInMm).ToString("0.######", CultureInfo.InvariantCulture);

    /// <summary>Millimetres with their unit, for messages and the debugger.</summary>
    /// <returns>For example "36.5 mm".</returns>
    public override string ToString() => ToMmText() + " mm";
}
