namespace ToolWear.Core.Wear.Sisters;

/// <summary>Remembers the forecasts of the kinds asked for last.</summary>
internal static class KindMemo
{
    // each holds some hundred kilobytes a tool that has readings
    private const int Most = 96;

    // an entry crossed out, or a supposed loss, goes back to what was before
    private const int Before = 8;
    private static readonly Memo<KindKey, SisterForecasts> Remembered = new(Most);

    /// <summary>Forgets everything.</summary>
    internal static void Forget() => Remembered.Forget();

    /// <summary>Forgets what a shop has left behind: of an evening each heat makes a state of its own.</summary>
    /// <param name="kinds">How many kinds were just asked for.</param>
    internal static void KeepOf(int kinds) => Remembered.Keep(kinds + Before);

    /// <summary>The forecasts of a kind, remembered or made.</summary>
    /// <param name="histories">The histories of one kind, in their order.</param>
    /// <param name="make">Makes the forecasts.</param>
    /// <returns>The forecasts.</returns>
    internal static SisterForecasts Get(
        IReadOnlyList<WearHistory> histories,
        Func<IReadOnlyList<WearHistory>, SisterForecasts> make
    ) => Remembered.Get(new KindKey([.. histories]), kind => make(kind.Histories));
}
