using System.Collections.Immutable;
using System.Runtime.InteropServices;
using ToolWear.Core.Measure;

namespace ToolWear.Core.Planning;

/// <summary>New tools of a place with the day on which the first is needed.</summary>
/// <param name="Number">How many, above zero.</param>
/// <param name="Before">How many new ones come before them.</param>
/// <param name="WantedOn">The session day on which the tools then on hand fall below the certainty.</param>
/// <param name="ReadyBy">That day, or the first on which new ones can be ready, whichever is later.</param>
/// <param name="Order">The order that is forged on the day on which they are needed.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct TimedBatch(int Number, int Before, DateOnly WantedOn, DateOnly ReadyBy, string Order)
{
    /// <summary>When the tools of a place run out, and what is forged together.</summary>
    /// <param name="demand">What is asked of the place.</param>
    /// <param name="cover">The certainty with so many new tools for a demand of heats.</param>
    /// <param name="sure">The certainty asked for.</param>
    /// <param name="windowDays">What is needed within so many days is forged together, zero or more.</param>
    /// <param name="earliest">The first day on which a new one can be ready.</param>
    /// <param name="mostNew">Beyond so many new tools it is given up.</param>
    /// <returns>The batches in order; or <see cref="NotEnoughData"/> where no number of tools lasts.</returns>
    public static (ImmutableArray<TimedBatch> Batches, NotEnoughData? GivenUp) Of(
        PlaceDemand demand,
        Func<int, double, double> cover,
        double sure,
        int windowDays,
        DateOnly earliest,
        int mostNew
    )
    {
        ImmutableArray<TimedBatch>.Builder batches = ImmutableArray.CreateBuilder<TimedBatch>();
        double heats = 0;
        int made = 0;
        foreach (DayHeats day in demand.Days)
        {
            heats += day.Heats;
            int before = made;
            while (cover(made, heats) < sure)
            {
                made++;
                if (made > mostNew)
                {
                    return (
                        batches.ToImmutable(),
                        new NotEnoughData(0, 1, "such tools do not last: no number of them is enough")
                    );
                }
            }

            int more = made - before;
            if (more == 0)
            {
                continue;
            }

            DateOnly ready = day.On < earliest ? earliest : day.On;
            if (batches.Count > 0 && ready.DayNumber - batches[^1].ReadyBy.DayNumber <= windowDays)
            {
                batches[^1] = batches[^1] with { Number = batches[^1].Number + more };
            }
            else
            {
                batches.Add(new TimedBatch(more, before, day.On, ready, day.Order));
            }
        }

        return (batches.ToImmutable(), null);
    }
}
