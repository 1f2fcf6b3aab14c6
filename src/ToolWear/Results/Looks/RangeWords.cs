using System.Globalization;
using ToolWear.Core.Wear.Ranges;

namespace ToolWear.Results.Looks;

/// <summary>How the ranges held that were said before readings.</summary>
internal static class RangeWords
{
    /// <summary>By place, in one sentence: "of 143 readings 127 lay in the range said before; ... rough drift 84 of 94".</summary>
    public static string Kept(IReadOnlyCollection<KeptRanges> ranges) =>
        ranges.Count == 0
            ? "No tool was measured twice yet, so no range was put to the test."
            : $"Ranges put to the test: of {ranges.Sum(each => each.Readings)} readings {ranges.Sum(each => each.Inside)} lay in the range said before; nine in ten should. By place: "
                + string.Join("; ", ranges.Select(Kept))
                + ".";

    /// <summary>Why a range is wider than worked out; empty where it is not.</summary>
    public static string Widened(KeptRanges? ranges) =>
        ranges is { Widening: > 1 }
            ? $"This range is {Times(ranges)} times as wide as worked out: of the last {ranges.Readings} readings of such tools only {ranges.InsideModel} lay in the range worked out before them."
            : "";

    private static string Kept(KeptRanges ranges) =>
        $"{YearTables.Sort(ranges.Form, ranges.Place)} {ranges.Inside} of {ranges.Readings}"
        + (ranges.Widening > 1 ? $", now {Times(ranges)} times as wide as worked out" : "");

    private static string Times(KeptRanges ranges) => ranges.Widening.ToString("0.00", CultureInfo.InvariantCulture);
}
