using System.Collections.Immutable;
using System.Runtime.InteropServices;
using ToolWear.Core.Shops;

namespace ToolWear.Core.Planning;

/// <summary>Weighted heats on the tools of a place on a day.</summary>
/// <param name="On">The day.</param>
/// <param name="Heats">Weighted heats, above zero.</param>
/// <param name="Order">The name of the first order forged that day that uses the place.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct DayHeats(DateOnly On, double Heats, string Order);

/// <summary>What the open orders ask of the tools of one place.</summary>
/// <param name="Tools">The place.</param>
/// <param name="Days">The days on which it is used, first to last.</param>
/// <param name="IsLearned">Whether the shop's records taught all the heats a head that it rests on, not first guesses.</param>
public sealed record PlaceDemand(ToolPlace Tools, ImmutableArray<DayHeats> Days, bool IsLearned)
{
    /// <summary>All heats together, weighted.</summary>
    public double Heats => Days.Sum(day => day.Heats);

    /// <summary>The heats through a day, weighted.</summary>
    /// <param name="last">The day.</param>
    /// <returns>Weighted heats.</returns>
    public double Through(DateOnly last) => Days.Where(day => day.On <= last).Sum(day => day.Heats);

    /// <summary>Spreads the calendar over the places.</summary>
    /// <param name="shop">The shop, for its patterns.</param>
    /// <param name="calendar">The calendar.</param>
    /// <param name="until">The last day that counts, null for all.</param>
    /// <returns>One for each place that is used, in the order of eye, place and form.</returns>
    public static ImmutableArray<PlaceDemand> Of(Shop shop, SessionCalendar calendar, DateOnly? until)
    {
        ImmutableSortedDictionary<string, ImmutableArray<HeatsAHead>> stages = HeatsAHead.Of(shop);
        return
        [
            .. calendar
                .Days.Where(day => until is null || day.On <= until)
                .SelectMany(day =>
                    day.Heads.SelectMany(each =>
                        stages[each.Order.Pattern]
                            .Where(stage => stage.Tools is not null && stage.Weighted > 0)
                            .Select(stage => (day.On, each, stage))
                    )
                )
                .GroupBy(use => use.stage.Tools!.Value)
                .OrderBy(place => place.Key.Eye is null)
                .ThenBy(place => place.Key.Eye, StringComparer.Ordinal)
                .ThenBy(place => place.Key.Place)
                .ThenBy(place => place.Key.Form, StringComparer.Ordinal)
                .Select(place => new PlaceDemand(
                    place.Key,
                    [
                        .. place
                            .GroupBy(use => use.On)
                            .OrderBy(day => day.Key)
                            .Select(day => new DayHeats(
                                day.Key,
                                day.Sum(use => use.each.Heads * use.stage.Weighted),
                                day.First().each.Order.Order
                            )),
                    ],
                    place.All(use => use.stage.IsLearned)
                )),
        ];
    }
}
