using ToolWear.Core.Ledger;

namespace ToolWear.Storage.Csv;

/// <summary>The order in which things that happened are entered: by the column <c>entry</c>, else by their days.</summary>
internal static class EventOrder
{
    /// <summary>Puts them in order.</summary>
    /// <param name="shop">What was read; ranks that cannot be are told as faults.</param>
    /// <returns>The events in order; none where their ranks cannot be.</returns>
    public static IReadOnlyList<EventRead> Of(ShopRead shop)
    {
        List<EventRead> ranked = [.. shop.Events.Where(each => each.Rank is not null)];
        if (ranked.Count == 0)
        {
            return [.. shop.Events.OrderBy(each => Place(shop, each.Entry.What))];
        }

        if (ranked.Count < shop.Events.Count)
        {
            EventRead bare = shop.Events.First(each => each.Rank is null);
            CsvRow first = ranked[0].Entry.Row;
            bare.Entry.Row.Fault(
                SetFile.EntryColumn,
                $"empty here, but filled in {first.File}:{first.Line}; fill it in every row of every file or in none"
            );
            return [];
        }

        List<EventRead> inOrder = [.. ranked.OrderBy(each => each.Rank)];
        return AreUnique(inOrder) ? inOrder : [];
    }

    private static bool AreUnique(List<EventRead> inOrder)
    {
        bool unique = true;
        foreach ((EventRead before, EventRead after) in inOrder.Zip(inOrder.Skip(1)))
        {
            if (before.Rank == after.Rank)
            {
                CsvRow row = before.Entry.Row;
                after.Entry.Row.Fault(
                    SetFile.EntryColumn,
                    $"{after.Rank} stands in {row.File}:{row.Line} already; each row has a number of its own"
                );
                unique = false;
            }
        }

        return unique;
    }

    /// <summary>
    /// By day; tools brought back; sessions in the order of their rows, each with its heats and then with what names
    /// it; reworks; what names no session; tools set aside and scrapped.
    /// </summary>
    private static (DateOnly Day, int Stage, int Session, int Step) Place(ShopRead shop, LedgerEntry what) =>
        what switch
        {
            SessionOpened e => InSession(shop, e.Session, 0),
            HeatsWorked e => InSession(shop, e.Session, 1),
            ToolMeasured { Session: { } session } => InSession(shop, session, 2),
            EyeMeasured { Session: { } session } => InSession(shop, session, 2),
            ToolBroughtBack e => (e.On, 0, 0, 0),
            ToolTakenBack e => (e.On, 0, 0, 0),
            ToolReworked e => (e.On, 2, 0, 0),
            ToolMeasured e => (e.On, 3, 0, 0),
            ToolLookedOver e => (e.On, 3, 0, 0),
            EyeMeasured e => (e.On, 3, 0, 0),
            ToolLookedFor e => (e.On, 3, 0, 0),
            ToolSetAside e => (e.On, 4, 0, 0),
            ToolLent e => (e.On, 4, 0, 0),
            ToolScrapped e => (e.On, 5, 0, 0),
            _ => (DateOnly.MaxValue, 0, 0, 0),
        };

    private static (DateOnly Day, int Stage, int Session, int Step) InSession(ShopRead shop, string name, int step) =>
        shop.Sessions.TryGetValue(name, out (DateOnly On, int Order) session)
            ? (session.On, 1, session.Order, step)
            : (DateOnly.MaxValue, 0, 0, 0);
}
