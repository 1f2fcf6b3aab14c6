namespace ToolWear.Core.Sections;

/// <summary>The perimeter of an ellipse, exact to the last digits of a double.</summary>
internal static class EllipsePerimeter
{
    /// <summary>The perimeter of an ellipse.</summary>
    /// <remarks>
    /// Gauss: with a0, b0 the half axes, a' = (a + b)/2, b' = sqrt(a b), c' = (a - b)/2, c0^2 = a0^2 - b0^2,
    /// P = 2 pi (a0^2 - sum of 2^(n-1) cn^2) / M, M the common limit (the arithmetic-geometric mean); Abramowitz and
    /// Stegun, 17.6.4. Converges quadratically.
    /// </remarks>
    /// <param name="halfA">One half axis, above zero.</param>
    /// <param name="halfB">The other, above zero.</param>
    /// <returns>The perimeter, in the unit of the half axes.</returns>
    public static double Of(double halfA, double halfB)
    {
        double a = Math.Max(halfA, halfB);
        double b = Math.Min(halfA, halfB);
        double sum = a * a;
        sum -= ((a * a) - (b * b)) / 2;
        double power = 1;
        double c = (a - b) / 2;
        while (c > 1e-9 * a)
        {
            (a, b) = ((a + b) / 2, Math.Sqrt(a * b));
            sum -= power * c * c;
            power *= 2;
            c = (a - b) / 2;
        }

        // one more mean has M to c^2, far below the last digit
        return 2 * Math.PI * (sum - (power * c * c)) / ((a + b) / 2);
    }
}
