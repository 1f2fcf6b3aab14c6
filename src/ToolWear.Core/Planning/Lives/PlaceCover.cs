using ToolWear.Core.Measure;

namespace ToolWear.Core.Planning.Lives;

/// <summary>How surely the tools of one place cover demands up to some heats, by the number of new ones.</summary>
/// <remarks>What a draw gives beyond the demand is no use, so that a draw that has reached it takes no more tools.</remarks>
public sealed class PlaceCover
{
    private const double AsGoodAsSure = 1e-12;

    // no shop keeps so many of one place; beyond it a tool does not last a heat
    private const int MostNew = 400;

    private readonly Func<int, int, double> newTool;
    private readonly int[] sums;
    private readonly List<int[]> atLeast = [];

    /// <summary>Begins with the tools in service.</summary>
    /// <param name="inService">Whole heats that they give together in each draw.</param>
    /// <param name="newTool">The heats of the n-th new tool, from 0, in a draw.</param>
    /// <param name="most">The greatest demand in whole heats.</param>
    internal PlaceCover(ReadOnlySpan<int> inService, Func<int, int, double> newTool, int most)
    {
        this.newTool = newTool;
        Most = most;
        sums = inService.ToArray();
        Count();
    }

    /// <summary>The greatest demand in whole heats.</summary>
    public int Most { get; }

    /// <summary>The certainty that the tools in service and some new ones cover a demand.</summary>
    /// <param name="newTools">How many new ones, zero or more.</param>
    /// <param name="demandHeats">Weighted heats, at most <see cref="Most"/>; a part of a heat counts as a whole one.</param>
    /// <returns>A share of the draws.</returns>
    public double Cover(int newTools, double demandHeats)
    {
        int H = Whole(demandHeats);
        if (H > Most)
        {
            throw new ArgumentOutOfRangeException(nameof(demandHeats), demandHeats, $"is more than {Most} heats");
        }

        while (atLeast.Count <= newTools && atLeast[^1][Most] < sums.Length)
        {
            Add(atLeast.Count - 1);
        }

        // once every draw covers the greatest demand, more tools change nothing
        return atLeast[Math.Min(newTools, atLeast.Count - 1)][Math.Max(0, H)] / (double)sums.Length;
    }

    /// <summary>How many new tools a demand takes.</summary>
    /// <param name="demandHeats">Weighted heats, zero or more, at most <see cref="Most"/>.</param>
    /// <param name="sure">The certainty, above 0 and below 1.</param>
    /// <returns>A <see cref="Replacements"/>, or <see cref="NotEnoughData"/> where no number of such tools covers it.</returns>
    public Estimated Needs(double demandHeats, double sure)
    {
        List<double> cover = [Cover(0, demandHeats)];
        while (cover[^1] < 1 - AsGoodAsSure)
        {
            if (cover.Count > MostNew)
            {
                return new NotEnoughData(0, 1, $"more than {MostNew} new tools would be needed");
            }

            cover.Add(Cover(cover.Count, demandHeats));
        }

        return Replacements.FromCover(Whole(demandHeats), sure, [.. cover]);
    }

    // sums of weighted heats may stand a rounding above a whole number
    internal static int Whole(double heats) => (int)Math.Ceiling(heats - 1e-9);

    private void Add(int n)
    {
        for (int i = 0; i < sums.Length; i++)
        {
            if (sums[i] < Most)
            {
                sums[i] += (int)Math.Floor(Math.Min(newTool(n, i), Most));
            }
        }

        Count();
    }

    // how many draws give h heats or more, for every h up to the demand
    private void Count()
    {
        int[] count = new int[Most + 1];
        foreach (int sum in sums)
        {
            count[Math.Min(sum, Most)]++;
        }

        for (int h = Most - 1; h >= 0; h--)
        {
            count[h] += count[h + 1];
        }

        atLeast.Add(count);
    }
}
