using ToolWear.Core.Measure;
using ToolWear.Core.Wear.Figures;

namespace ToolWear.Core.Planning.Lives;

/// <summary>The heats that the tools of one place give, those in service and new ones, drawn together.</summary>
/// <remarks>A tool's own end is the earliest over its gauge marks, or a crack where the records tell of cracks. Gauge
/// marks share their chance, so that the end lies near the largest F(k) over them, on the short side.</remarks>
public sealed class PlaceLives
{
    private readonly Func<int, int, double> newTool;
    private readonly int[] inService;
    private readonly Lazy<Estimate> newLife;

    /// <summary>Takes the draws.</summary>
    /// <param name="inService">The heats left of each tool in service in each draw.</param>
    /// <param name="newTool">The heats of the n-th new tool, from 0, in a draw.</param>
    /// <param name="draws">How many draws there are.</param>
    internal PlaceLives(IEnumerable<double[]> inService, Func<int, int, double> newTool, int draws)
    {
        this.newTool = newTool;
        this.inService = new int[draws];
        foreach (double[] heats in inService)
        {
            for (int i = 0; i < draws; i++)
            {
                this.inService[i] += (int)Math.Floor(heats[i]);
            }
        }

        newLife = new Lazy<Estimate>(OneLife);
    }

    /// <summary>How many draws there are.</summary>
    public int Draws => inService.Length;

    /// <summary>How long a new tool lasts: its median, nine times in ten between the ends.</summary>
    public Estimate NewLife => newLife.Value;

    /// <summary>How long a new tool lasts on average, weighted heats.</summary>
    public double MeanNewLife => Enumerable.Range(0, Draws).Average(i => newTool(0, i));

    /// <summary>The certainties for demands up to some heats.</summary>
    /// <param name="demandHeats">The greatest demand, weighted heats.</param>
    /// <returns>The certainties by number of new tools.</returns>
    public PlaceCover UpTo(double demandHeats) => new(inService, newTool, Math.Max(0, PlaceCover.Whole(demandHeats)));

    /// <summary>How many new tools a demand takes.</summary>
    /// <param name="demandHeats">Weighted heats, zero or more.</param>
    /// <param name="sure">The certainty, above 0 and below 1.</param>
    /// <returns>A <see cref="Replacements"/>, or <see cref="NotEnoughData"/> where no number of such tools covers it.</returns>
    public Estimated Needs(double demandHeats, double sure) => UpTo(demandHeats).Needs(demandHeats, sure);

    private Estimate OneLife()
    {
        double[] ordered = [.. Enumerable.Range(0, Draws).Select(i => newTool(0, i)).Order()];
        double At(double p) => ordered[(int)(p * (ordered.Length - 1))];
        return new Estimate(At(0.5), At(0.05), At(0.95) < HeatsLeft.Most ? At(0.95) : null);
    }
}
