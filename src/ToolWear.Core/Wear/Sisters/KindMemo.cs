namespace ToolWear.Core.Wear.Sisters;

/// <summary>Remembers the forecasts of the kinds asked for last.</summary>
internal static class KindMemo
{
    // a shop's kinds and as many of the state before; each holds some hundred kilobytes at most
    private const int Most = 96;
    private static readonly Memo<KindKey, SisterForecasts> Remembered = new(Most);

    /// <summary>Forgets everything.</summary>
    internal static void Forget() => Remembered.Forget();

    /// <summary>The forecasts of a kind, remembered or made.</summary>
    /// <param name="histories">The histories of one kind, in their order.</param>
    /// <param name="make">Makes the forecasts.</param>
    /// <returns>The forecasts.</returns>
    internal static SisterForecasts Get(
        IReadOnlyList<WearHistory> histories,
        Func<IReadOnlyList<WearHistory>, SisterForecasts> make
    ) => Remembered.Get(new KindKey([.. histories]), kind => make(kind.Histories));
}
