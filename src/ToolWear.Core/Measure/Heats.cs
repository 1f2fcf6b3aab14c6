using System.Globalization;

namespace ToolWear.Core.Measure;

/// <summary>A number of heats as worked: whole or half ones, since twin drifts can share a heat.</summary>
/// <remarks>Zero or more; equality is exact; the default is none. Weighted heats are doubles named so.</remarks>
public readonly record struct Heats : IComparable<Heats>
{
    private Heats(int halves) => Halves = halves;

    /// <summary>No heat at all.</summary>
    public static Heats None => default;

    /// <summary>Half a heat: the least that can be tallied.</summary>
    public static Heats Half => new(1);

    /// <summary>The most that one entry can hold: 1000 heats.</summary>
    public static Heats MostAtOnce => new(2000);

    /// <summary>The number of half heats, zero or more.</summary>
    public int Halves { get; }

    /// <summary>The number of heats, in steps of a half.</summary>
    public double Count => Halves / 2.0;

    /// <summary>Makes a number of heats from half heats.</summary>
    /// <param name="halves">Half heats, zero or more.</param>
    /// <returns>The heats.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The number is negative.</exception>
    public static Heats OfHalves(int halves)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(halves);
        return new(halves);
    }

    /// <summary>Makes whole heats.</summary>
    /// <param name="count">Heats, zero or more.</param>
    /// <returns>The heats.</returns>
    public static Heats Of(int count) => OfHalves(count * 2);

    /// <summary>The sum of two numbers of heats.</summary>
    /// <param name="left">Heats.</param>
    /// <param name="right">More heats.</param>
    /// <returns>Their sum.</returns>
    public static Heats operator +(Heats left, Heats right) => new(left.Halves + right.Halves);

    /// <summary>Whether the left is fewer.</summary>
    /// <param name="left">Heats.</param>
    /// <param name="right">Heats.</param>
    /// <returns>True where left is fewer.</returns>
    public static bool operator <(Heats left, Heats right) => left.Halves < right.Halves;

    /// <summary>Whether the left is more.</summary>
    /// <param name="left">Heats.</param>
    /// <param name="right">Heats.</param>
    /// <returns>True where left is more.</returns>
    public static bool operator >(Heats left, Heats right) => left.Halves > right.Halves;

    /// <summary>Whether the left is no more than the right.</summary>
    /// <param name="left">Heats.</param>
    /// <param name="right">Heats.</param>
    /// <returns>True where left is fewer or as many.</returns>
    public static bool operator <=(Heats left, Heats right) => left.Halves <= right.Halves;

    /// <summary>Whether the left is no fewer than the right.</summary>
    /// <param name="left">Heats.</param>
    /// <param name="right">Heats.</param>
    /// <returns>True where left is more or as many.</returns>
    public static bool operator >=(Heats left, Heats right) => left.Halves >= right.Halves;

    /// <summary>The half as decimals, where it is typed as a fraction.</summary>
    /// <param name="text">"2 1/2", "2½", "2,5".</param>
    /// <returns>"2.5".</returns>
    public static string Pointed(string text)
    {
        string bare = text.Trim().Replace(',', '.');
        return bare.EndsWith('½') ? bare[..^1].TrimEnd() + ".5"
            : bare == "1/2" || bare.EndsWith(" 1/2", StringComparison.Ordinal) ? bare[..^3].TrimEnd() + ".5"
            : bare;
    }

    /// <summary>Reads heats as typed: "3", "2.5", "2,5", "2 1/2", "2½".</summary>
    /// <param name="text">What was typed.</param>
    /// <param name="heats">The heats, where it is a number that can be.</param>
    /// <param name="refusal">What is wrong and what would be right, where it is not.</param>
    /// <returns>True where it was read.</returns>
    public static bool TryParse(string text, out Heats heats, out string refusal)
    {
        heats = default;
        if (
            !decimal.TryParse(
                Pointed(text),
                NumberStyles.AllowDecimalPoint,
                CultureInfo.InvariantCulture,
                out decimal count
            )
            || count < 0.5m
            || count > 1000
            || count * 2 != decimal.Truncate(count * 2)
        )
        {
            refusal =
                $"heats \"{FreeText.Shown(text)}\": type a number from 0.5 to 1000 in steps of a half, such as 3 or 2.5";
            return false;
        }

        heats = new((int)(count * 2));
        refusal = "";
        return true;
    }

    /// <inheritdoc />
    public int CompareTo(Heats other) => Halves.CompareTo(other.Halves);

    /// <summary>The bare number with a point: "3", "2.5".</summary>
    /// <returns>The number.</returns>
    public override string ToString() => Count.ToString("0.#", CultureInfo.InvariantCulture);
}
