using ToolWear.Core.Measure;
using ToolWear.Core.Wear;

namespace ToolWear.Core.Planning;

/// <summary>The heats that the tools of one place give, those in service and new ones, drawn together.</summary>
/// <remarks>A tool's own end is the earliest over its gauge marks. Gauge marks share their chance, so that the end lies
/// near the largest F(k) over them, on the short side.</remarks>
public sealed class PlaceLives
{
    private const double AsGoodAsSure = 1e-12;

    // no shop keeps so many of one place; beyond it a tool does not last a heat
    private const int MostNew = 400;

    private readonly Func<int, double[]> newTool;
    private readonly List<int[]> sums;

    /// <summary>Takes the draws.</summary>
    /// <param name="inService">The heats left of each tool in service in each draw.</param>
    /// <param name="newTool">The heats of the n-th new tool in each draw, from 0.</param>
    /// <param name="draws">How many draws there are.</param>
    internal PlaceLives(IEnumerable<double[]> inService, Func<int, double[]> newTool, int draws)
    {
        this.newTool = newTool;
        sums = [inService.Aggregate(new int[draws], Add)];
        New = newTool(0);
    }

    /// <summary>How many draws there are.</summary>
    public int Draws => sums[0].Length;

    private double[] New { get; }

    /// <summary>How long a new tool lasts: its median, nine times in ten between the ends.</summary>
    public Estimate NewLife
    {
        get
        {
            double[] ordered = [.. New.Order()];
            double At(double p) => ordered[(int)(p * (ordered.Length - 1))];
            return new Estimate(At(0.5), At(0.05), At(0.95) < HeatsLeft.Most ? At(0.95) : null);
        }
    }

    /// <summary>The certainty that the tools in service and some new ones cover a demand.</summary>
    /// <param name="newTools">How many new ones, zero or more.</param>
    /// <param name="demandHeats">Weighted heats; a part of a heat counts as a whole one.</param>
    /// <returns>A share of the draws.</returns>
    public double Cover(int newTools, double demandHeats)
    {
        int H = Whole(demandHeats);
        return SumsWith(newTools).Count(sum => sum >= H) / (double)Draws;
    }

    /// <summary>How many new tools a demand takes.</summary>
    /// <param name="demandHeats">Weighted heats, zero or more.</param>
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
    private static int Whole(double heats) => (int)Math.Ceiling(heats - 1e-9);

    private int[] SumsWith(int newTools)
    {
        while (sums.Count <= newTools)
        {
            sums.Add(Add(sums[^1], sums.Count == 1 ? New : newTool(sums.Count - 1)));
        }

        return sums[newTools];
    }

    private static int[] Add(int[] sums, double[] heats) => [.. sums.Zip(heats, (sum, k) => sum + (int)Math.Floor(k))];
}
