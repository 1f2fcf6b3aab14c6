namespace ToolWear.Core.Wear.Sisters;

/// <summary>Makes the pool of a kind from its histories.</summary>
internal static class KindPools
{
    /// <summary>The pool, null where no tool has a limit, and each history's place in it, -1 where it has none.</summary>
    internal static (KindPool? Pool, int[] Place) Of(IReadOnlyList<WearHistory> kind)
    {
        List<string> groups = Groups(kind);
        List<(ToolRecord, int)> records = [];
        int[] place = new int[kind.Count];
        for (int i = 0; i < kind.Count; i++)
        {
            place[i] = -1;
            if (ToolRecord.Of(kind[i]) is { } record)
            {
                place[i] = records.Count;
                records.Add((record, groups.IndexOf(kind[i].Group)));
            }
        }

        return (records.Count > 0 ? KindPool.Of(records, groups.Count) : null, place);
    }

    /// <summary>The number of a group in the pool of its kind.</summary>
    internal static int GroupNumber(IReadOnlyList<WearHistory> kind, string group) => Groups(kind).IndexOf(group);

    private static List<string> Groups(IEnumerable<WearHistory> kind) =>
        [.. kind.Select(history => history.Group).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)];
}
