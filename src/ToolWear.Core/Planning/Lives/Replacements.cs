using System.Collections.Immutable;
using ToolWear.Core.Measure;
using ToolWear.Core.Sections;

namespace ToolWear.Core.Planning.Lives;

// C_r = P(heats of the tools in service and of r new ones >= H);  needed = least r with C_r >= sure;
// expected = sum over r from 0 of (1 - C_r);  expected short with n new = the same sum from n on
/// <summary>How many new tools a demand of heats takes.</summary>
/// <param name="DemandHeats">H, whole weighted heats.</param>
/// <param name="Sure">The certainty asked for, above 0 and below 1.</param>
/// <param name="Cover">C_r, the certainty with r new tools, 0 first; it goes on beyond the number needed to where it is
/// as good as sure.</param>
/// <param name="Needed">How many new tools it takes.</param>
public sealed record Replacements(int DemandHeats, double Sure, ImmutableArray<double> Cover, int Needed) : Estimated
{
    private const double AsGoodAsSure = 1e-12;
    private const int MostNew = 50_000;

    /// <summary>How many new tools are used up or begun on average.</summary>
    public double Expected => ExpectedShort(0);

    /// <summary>The certainty with one new tool fewer than needed; null where none is needed.</summary>
    public double? SureWithOneFewer => Needed > 0 ? Cover[Needed - 1] : null;

    /// <summary>The refusal of a certainty, or null.</summary>
    /// <param name="sure">A share of one.</param>
    /// <returns>A sentence with the right form, or null where it lies above 0 and below 1.</returns>
    public static string? RefuseSure(double sure) =>
        sure > 0 && sure < 1 ? null
        : sure >= 1 && sure < 100
            ? $"How sure is a share above 0 and below 1, such as 0.9; {sure} is not, write {sure / 100}."
        : "How sure is a share above 0 and below 1, such as 0.9.";

    /// <summary>The refusal of a demand, or null.</summary>
    /// <param name="demandHeats">Weighted heats.</param>
    /// <returns>A sentence with the range, or null.</returns>
    public static string? RefuseDemand(double demandHeats) =>
        FigureRange.Refuse("The demand", demandHeats, 0, WholeHeats.MostDemand, " heats");

    /// <summary>How many tools a new tool's life takes to cover a demand.</summary>
    /// <param name="inService">The chance for each tool in service that it is used up after k more heats.</param>
    /// <param name="newTool">The same for a new tool.</param>
    /// <param name="demandHeats">H; a part of a heat counts as a whole one.</param>
    /// <param name="sure">The certainty, above 0 and below 1.</param>
    /// <returns>A <see cref="Replacements"/>, or <see cref="NotEnoughData"/> where no number of such tools covers it.</returns>
    public static Estimated Of(
        IEnumerable<Func<double, double>> inService,
        Func<double, double> newTool,
        double demandHeats,
        double sure
    )
    {
        if ((RefuseSure(sure) ?? RefuseDemand(demandHeats)) is { } refusal)
        {
            throw new ArgumentOutOfRangeException(nameof(demandHeats), refusal);
        }

        int H = (int)Math.Ceiling(demandHeats);
        WholeHeats one = WholeHeats.Of(newTool, H);
        WholeHeats sum = inService.Aggregate(WholeHeats.None(H), (all, F) => all.And(WholeHeats.Of(F, H)));
        List<double> cover = [sum.Cover];
        while (cover[^1] < 1 - AsGoodAsSure)
        {
            if (cover.Count > MostNew || (H > 0 && one.Chances[0] > 1 - AsGoodAsSure))
            {
                return new NotEnoughData(0, 1, "a new tool of these does not last one heat");
            }

            sum = sum.And(one);
            cover.Add(sum.Cover);
        }

        return FromCover(H, sure, [.. cover]);
    }

    /// <summary>Reads the number out of the certainties.</summary>
    /// <param name="demandHeats">H.</param>
    /// <param name="sure">The certainty, above 0 and below 1.</param>
    /// <param name="cover">C_r from r = 0 on, up to at least the certainty.</param>
    /// <returns>The replacements.</returns>
    internal static Replacements FromCover(int demandHeats, double sure, ImmutableArray<double> cover) =>
        new(demandHeats, sure, cover, cover.TakeWhile(C => C < sure).Count());

    /// <summary>How many tools too few there will be on average with some new ones.</summary>
    /// <param name="newTools">How many new ones, zero or more.</param>
    /// <returns>Tools, zero or more.</returns>
    public double ExpectedShort(int newTools) => Cover.Skip(newTools).Sum(C => 1 - C);
}
