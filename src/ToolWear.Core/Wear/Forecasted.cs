using System.Collections.Immutable;
using ToolWear.Core.Measure;
using ToolWear.Core.Wear.Histories;
using ToolWear.Core.Wear.Sisters;

namespace ToolWear.Core.Wear;

/// <summary>A history with the forecast that its kind gives it.</summary>
/// <param name="History">The history.</param>
/// <param name="Outlook">A <see cref="SisterForecast"/>, or why there is none.</param>
/// <param name="FollowedToItsLimit">Whether a tool of the kind was read close to its limit.</param>
public sealed record Forecasted(WearHistory History, Estimated Outlook, bool FollowedToItsLimit)
{
    /// <summary>Forecasts histories of any kinds.</summary>
    /// <param name="histories">The histories.</param>
    /// <param name="stop">Stops between two kinds.</param>
    /// <returns>One for each, in their order.</returns>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static ImmutableArray<Forecasted> InOrder(
        ImmutableArray<WearHistory> histories,
        CancellationToken stop = default
    )
    {
        ImmutableDictionary<string, SisterForecasts> kinds = SisterForecasts.OfAll(histories, stop);
        Dictionary<string, int> taken = new(StringComparer.Ordinal);
        ImmutableArray<Forecasted>.Builder forecasted = ImmutableArray.CreateBuilder<Forecasted>(histories.Length);
        foreach (WearHistory history in histories)
        {
            // inside a kind the forecasts stand in the order of its histories
            int place = taken.GetValueOrDefault(history.Kind);
            taken[history.Kind] = place + 1;
            SisterForecasts kind = kinds[history.Kind];
            forecasted.Add(new(history, kind.Tools[place], kind.FollowedToItsLimit));
        }

        return forecasted.MoveToImmutable();
    }
}
