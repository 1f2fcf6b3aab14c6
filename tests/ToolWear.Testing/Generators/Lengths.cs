using CsCheck;
using ToolWear.Core.Measure;

namespace ToolWear.Testing.Generators;

/// <summary>Lengths of every grain that the shop meets.</summary>
public static class Lengths
{
    /// <summary>Any size that can be typed, to the nanometre: 1 nm to 10 m.</summary>
    public static Gen<Length> Any { get; } = Gen.Long[1, SizeText.Longest.Nanometres].Select(nm => new Length(nm));

    /// <summary>What a caliper shows: 0.01 to 300 mm in steps of 0.01.</summary>
    public static Gen<Length> Caliper { get; } = Gen.Int[1, 30_000].Select(step => new Length(step * 10_000L));

    /// <summary>Fractions of an inch: 1/64 to 40 in.</summary>
    public static Gen<Length> SixtyFourths { get; } = Gen.Int[1, 2560].Select(step => new Length(step * 396_875L));

    /// <summary>Sizes of tools as they come: caliper readings, fractions, thousandths, and now and then any.</summary>
    public static Gen<Length> Size { get; } =
        Gen.Frequency(
            (5, Caliper),
            (2, SixtyFourths),
            (2, Gen.Int[1, 12_000].Select(step => new Length(step * 25_400L))),
            (1, Any)
        );
}
