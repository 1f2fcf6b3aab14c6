using System.Diagnostics.CodeAnalysis;
using ToolWear.Core.Sections;

namespace ToolWear.Core.Eyes;

/// <summary>A temperature of carbon steel, 20 to 1200 degrees Celsius; the default is 20, cold.</summary>
public readonly record struct SteelTemperature
{
    private const double ColdC = 20;
    private readonly double aboveColdC;

    private SteelTemperature(double celsius) => aboveColdC = celsius - ColdC;

    /// <summary>Degrees Celsius.</summary>
    public double Celsius => aboveColdC + ColdC;

    /// <summary>The elongation e since 20 C, as a share of the length at 20 C; 0 when cold, 0.0178 at 1200 C.</summary>
    /// <remarks>
    /// EN 1993-1-2:2005, 3.4.1.1, carbon steel: for 20 to below 750 C e = 1.2e-5 T + 0.4e-8 T^2 - 2.416e-4; for 750 to
    /// 860 C e = 1.1e-2; above, to 1200 C, e = 2e-5 T - 6.2e-3. The step back of 8.4e-6 at 750 C is the standard's own.
    /// A tool steel differs by some 0.01 mm on an eye; that is not reckoned with.
    /// </remarks>
    public double Elongation
    {
        get
        {
            double T = Celsius;
            return T < 750 ? (1.2e-5 * T) + (0.4e-8 * T * T) - 2.416e-4
                : T <= 860 ? 1.1e-2
                : (2e-5 * T) - 6.2e-3;
        }
    }

    /// <summary>Takes a temperature as typed.</summary>
    /// <param name="what">What is so hot, as a sentence begins: "The drift".</param>
    /// <param name="celsius">Degrees Celsius, 20 to 1200.</param>
    /// <param name="temperature">The temperature, where it can be.</param>
    /// <param name="refusal">Otherwise the reason, with the allowed range.</param>
    /// <returns>True where it can be.</returns>
    public static bool TryMake(
        string what,
        double celsius,
        out SteelTemperature temperature,
        [NotNullWhen(false)] out string? refusal
    )
    {
        refusal = FigureRange.Refuse(what, celsius, 20, 1200, " C");
        temperature = refusal is null ? new SteelTemperature(celsius) : default;
        return refusal is null;
    }

    /// <summary>Takes a temperature that the program itself knows.</summary>
    /// <param name="celsius">Degrees Celsius, 20 to 1200.</param>
    /// <returns>The temperature.</returns>
    /// <exception cref="ArgumentOutOfRangeException">It lies outside the range: a bug.</exception>
    public static SteelTemperature Of(double celsius) =>
        TryMake("The temperature", celsius, out SteelTemperature temperature, out string? refusal)
            ? temperature
            : throw new ArgumentOutOfRangeException(nameof(celsius), refusal);
}
