namespace ToolWear.Storage.Journal;

/// <summary>What the store must be told about entries, time and chance.</summary>
/// <param name="Kinds">The kinds of entry this program can read and write.</param>
/// <param name="Clock">The time.</param>
/// <param name="NewShopId">A new random id, 32 lower hex digits; asked once in the life of a shop.</param>
/// <param name="WatchLimit">How long work on the documents may go on without a sign of life; null for twenty seconds.</param>
/// <param name="Alone">Whether the smith answers for it that nobody else writes, where the file system has no locks.</param>
public sealed record StoreSettings(
    KnownKinds Kinds,
    TimeProvider Clock,
    Func<string> NewShopId,
    TimeSpan? WatchLimit = null,
    bool Alone = false
);
