namespace ToolWear.Core.Shops;

/// <summary>Where an entry stands in the history of the shop, which is not always where it stands in the ledger.</summary>
/// <remarks>
/// The order: by day, then by the opening of sessions; within a session heats and reworks as entered; after it the
/// readings that name it; then that day's entries without a session. A rework or a finding names no session: it stands
/// before the next session of its day that was opened after it, or inside the one whose heats of that tool go on after
/// it, else after all sessions of its day. A start anew stands after the heats that the tool had when it was entered,
/// so that a reading of the next morning, which names that session, is the first that counts; before all sessions of
/// its day where the tool had none. A reading without a session that was entered before the tool's first session was
/// opened, on its day, stands before it: whoever enters what hangs there and then forges read what the evening began
/// with.
/// </remarks>
/// <param name="Day">The day.</param>
/// <param name="Opening">The number of the entry that opened the session; the greatest number where none.</param>
/// <param name="Stage">Where it stands about that session.</param>
/// <param name="Number">The entry's own number.</param>
public readonly record struct HistoryPlace(DateOnly Day, long Opening, HistoryStage Stage, long Number)
    : IComparable<HistoryPlace>
{
    /// <summary>The place of an entry without a session: after all sessions of its day.</summary>
    /// <param name="day">The day.</param>
    /// <param name="number">The entry's number.</param>
    /// <returns>The place.</returns>
    public static HistoryPlace AfterAll(DateOnly day, long number) =>
        new(day, long.MaxValue, HistoryStage.After, number);

    /// <summary>Whether the left comes first.</summary>
    /// <param name="left">A place.</param>
    /// <param name="right">Another.</param>
    /// <returns>True where left comes before right.</returns>
    public static bool operator <(HistoryPlace left, HistoryPlace right) => left.CompareTo(right) < 0;

    /// <summary>Whether the left comes later.</summary>
    /// <param name="left">A place.</param>
    /// <param name="right">Another.</param>
    /// <returns>True where left comes after right.</returns>
    public static bool operator >(HistoryPlace left, HistoryPlace right) => left.CompareTo(right) > 0;

    /// <summary>Whether the left does not come later.</summary>
    /// <param name="left">A place.</param>
    /// <param name="right">Another.</param>
    /// <returns>True where left is right or comes before it.</returns>
    public static bool operator <=(HistoryPlace left, HistoryPlace right) => left.CompareTo(right) <= 0;

    /// <summary>Whether the left does not come first.</summary>
    /// <param name="left">A place.</param>
    /// <param name="right">Another.</param>
    /// <returns>True where left is right or comes after it.</returns>
    public static bool operator >=(HistoryPlace left, HistoryPlace right) => left.CompareTo(right) >= 0;

    /// <inheritdoc />
    public int CompareTo(HistoryPlace other) =>
        Day != other.Day ? Day.CompareTo(other.Day)
        : Opening != other.Opening ? Opening.CompareTo(other.Opening)
        : Stage != other.Stage ? ((int)Stage).CompareTo((int)other.Stage)
        : Number.CompareTo(other.Number);
}

/// <summary>Where an entry stands about a session.</summary>
public enum HistoryStage
{
    /// <summary>Just before the session opens.</summary>
    Before,

    /// <summary>The opening itself.</summary>
    Opening,

    /// <summary>Among its heats.</summary>
    During,

    /// <summary>After its last heat.</summary>
    After,
}
