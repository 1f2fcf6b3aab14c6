using System.Globalization;

namespace ToolWear.Core.Measure;

/// <summary>Writes lengths for people: sizes of eyes and bars in the shop's own way, wear always in decimals.</summary>
public static class SizeShown
{
    private const long SixtyFourth = Length.NanometresInInch / 64;

    /// <summary>A size of a tool at a gauge mark: decimals, 0.01 mm or 0.001 in fine.</summary>
    /// <param name="size">The size.</param>
    /// <param name="unit">The shop's unit.</param>
    /// <returns>For example "14.20" or "0.559".</returns>
    public static string Caliper(Length size, LengthUnit unit) => Exact(size, unit, 2, 3);

    /// <summary>Wear, 0.01 mm or 0.001 in fine, with its sign where negative.</summary>
    /// <param name="mm">The wear in mm.</param>
    /// <param name="unit">The shop's unit.</param>
    /// <returns>For example "0.83" or "-0.05".</returns>
    public static string Wear(double mm, LengthUnit unit) => Decimals(mm, unit, 2, 3);

    /// <summary>A wear rate, 0.0001 mm or 0.00001 in a heat fine.</summary>
    /// <param name="mmPerHeat">The rate in mm a heat.</param>
    /// <param name="unit">The shop's unit.</param>
    /// <returns>For example "0.0183".</returns>
    public static string Rate(double mmPerHeat, LengthUnit unit) => Decimals(mmPerHeat, unit, 4, 5);

    /// <summary>A size of an eye or a bar: no finer than 0.1 mm or 1/64 in, inches as fractions.</summary>
    /// <param name="size">The size, zero or more.</param>
    /// <param name="unit">The shop's unit.</param>
    /// <returns>For example "36.5" or "1 7/16".</returns>
    public static string Eye(Length size, LengthUnit unit) =>
        unit == LengthUnit.Mm ? Exact(size, unit, 1, 1) : Fraction(size);

    /// <summary>A length to cut or to forge to: whole mm, or 1/16 in.</summary>
    /// <param name="mm">The length in mm, zero or more.</param>
    /// <param name="unit">The shop's unit.</param>
    /// <returns>For example "112" or "4 7/16".</returns>
    public static string Whole(double mm, LengthUnit unit)
    {
        const long sixteenth = Length.NanometresInInch / 16;
        Length size = Length.FromMm(mm);
        return unit == LengthUnit.Mm
            ? Exact(size, unit, 0, 0)
            : Fraction(new Length((size.Nanometres + (sixteenth / 2)) / sixteenth * sixteenth));
    }

    /// <summary>The mark of the unit.</summary>
    /// <param name="unit">A unit.</param>
    /// <returns>"mm" or "in".</returns>
    public static string Mark(LengthUnit unit) => unit == LengthUnit.Mm ? "mm" : "in";

    private static string Decimals(double mm, LengthUnit unit, int placesMm, int placesInch)
    {
        double value = unit == LengthUnit.Mm ? mm : mm * Length.NanometresInMm / Length.NanometresInInch;
        int places = unit == LengthUnit.Mm ? placesMm : placesInch;
        double rounded = Math.Round(value, places, MidpointRounding.AwayFromZero);
        return (rounded == 0 ? 0.0 : rounded).ToString(Format(places), CultureInfo.InvariantCulture);
    }

    /// <summary>A length is exact, and so is its half step: 1.005 mm is 1.01, which a double would make 1.00.</summary>
    private static string Exact(Length size, LengthUnit unit, int placesMm, int placesInch)
    {
        long one = unit == LengthUnit.Mm ? Length.NanometresInMm : Length.NanometresInInch;
        int places = unit == LengthUnit.Mm ? placesMm : placesInch;
        decimal rounded = decimal.Round((decimal)size.Nanometres / one, places, MidpointRounding.AwayFromZero);
        return (rounded == 0 ? 0m : rounded).ToString(Format(places), CultureInfo.InvariantCulture);
    }

    private static string Format(int places) => "F" + places.ToString(CultureInfo.InvariantCulture);

    private static string Fraction(Length size)
    {
        long parts = (size.Nanometres + (SixtyFourth / 2)) / SixtyFourth;
        long whole = parts / 64;
        long top = parts % 64;
        long bottom = 64;
        while (top > 0 && top % 2 == 0)
        {
            top /= 2;
            bottom /= 2;
        }

        return top == 0 ? $"{whole}"
            : whole == 0 ? $"{top}/{bottom}"
            : $"{whole} {top}/{bottom}";
    }
}
