using ToolWear.Core.Ledger;

namespace ToolWear.Testing.NaiveShop;

/// <summary>
/// The shop the slow, obvious way: a list of entries, and every question answered by reading all of it again. It is
/// there to disagree with the real one.
/// </summary>
public sealed class SlowShop
{
    private readonly List<Entered> ledger = [];

    private SlowPresent Present => new(Standing());

    /// <summary>Enters what can be.</summary>
    /// <param name="entered">The entry.</param>
    /// <returns>True where it was taken.</returns>
    public bool Takes(Entered entered)
    {
        bool can = entered.What switch
        {
            EntryCrossedOut e => Standing().Exists(each => each.Number == e.Entry) && Holds(e.Entry, Without(e.Entry)),
            EntryCountsAgain e => Crossed().Contains(e.Entry) && Holds(e.Entry, With(e.Entry)),
            _ => new SlowRules(Present, entered).Holds(),
        };
        if (can)
        {
            ledger.Add(entered);
        }

        return can;
    }

    /// <summary>The present of the shop in the words of <see cref="ShopTold"/>.</summary>
    /// <returns>Lines.</returns>
    public string Tell()
    {
        SlowPresent present = Present;
        IEnumerable<string> tools = present
            .Tools()
            .OrderBy(tool => tool.Id)
            .Select(tool =>
                ShopTold.Tool(tool.Id, tool.Mark.Text, tool.State, tool.StateOn, tool.StartUnknown, History(tool))
            );
        IEnumerable<string> sessions = present
            .All<SessionOpened>()
            .OrderBy(each => each.Session, StringComparer.Ordinal)
            .Select(each =>
                ShopTold.Session(
                    each,
                    present.IsOpen(each.Session),
                    present.HeadsOf(each.Session),
                    present.StagesOf(each.Session)
                )
            );
        IEnumerable<string> eyes = Standing().Where(each => each.What is EyeMeasured).Select(Told.Of);
        return string.Join('\n', [.. tools, .. sessions, .. Described(present), .. eyes]);

        IEnumerable<string> History(SlowTool tool) =>
            present
                .HistoryOf(tool)
                .Select(number => tool.Events.Find(each => each.Number == number)!)
                .Select(each =>
                    ShopTold.Event(each, each.What is HeatsWorked heats ? present.Weighted(tool, heats) : null)
                );
    }

    private static IEnumerable<string> Described(SlowPresent present) =>
        [
            .. Last(present.All<EyeDescribed>(), each => each.Name),
            .. Last(present.All<HandleDescribed>(), each => each.Name),
            .. Last(present.All<PatternDescribed>(), each => each.Pattern),
            .. Last(present.All<BarDescribed>(), each => each.Bar),
            .. Last(present.All<OrderDescribed>(), each => each.Order),
            .. Last(
                present.All<SeriesDescribed>().Select(each => each.Series),
                each => (each.Eye, each.Place, each.Form.Name)
            ),
            .. present
                .All<SettingChanged>()
                .Reverse()
                .DistinctBy(each => each.Setting, StringComparer.Ordinal)
                .Where(each => each.Value.Length > 0)
                .OrderBy(each => each.Setting, StringComparer.Ordinal)
                .Select(each => each.Setting + "=" + each.Value),
        ];

    private static IEnumerable<string> Last<T, TKey>(IEnumerable<T> described, Func<T, TKey> key) =>
        described.Reverse().DistinctBy(key).Select(each => Told.Of(each)).Order(StringComparer.Ordinal);

    private List<Entered> Standing() => Without(0);

    /// <summary>The numbers that are crossed out after all was said of them.</summary>
    private HashSet<long> Crossed()
    {
        HashSet<long> crossed = [];
        foreach (LedgerEntry what in ledger.Select(each => each.What))
        {
            switch (what)
            {
                case EntryCrossedOut e:
                    crossed.Add(e.Entry);
                    break;
                case EntryCountsAgain e:
                    crossed.Remove(e.Entry);
                    break;
            }
        }

        return crossed;
    }

    /// <summary>What counts, less one entry: all but what speaks of entries, and what is crossed out.</summary>
    private List<Entered> Without(long number) => Only(Crossed(), number);

    /// <summary>What counts, and one entry that is crossed out.</summary>
    private List<Entered> With(long number)
    {
        HashSet<long> crossed = Crossed();
        crossed.Remove(number);
        return Only(crossed, 0);
    }

    private List<Entered> Only(HashSet<long> crossed, long without) =>
        ledger.FindAll(each =>
            each.What is not (EntryCrossedOut or EntryCountsAgain)
            && !crossed.Contains(each.Number)
            && each.Number != without
        );

    /// <summary>Whether all that would stand could be entered one after another, and would speak of the same tools.</summary>
    private bool Holds(long turned, List<Entered> then)
    {
        List<Entered> now = Standing();
        for (int i = 0; i < then.Count; i++)
        {
            SlowPresent before = new(then[..i]);
            SlowPresent asItIs = new(now.FindAll(each => each.Number < then[i].Number));
            bool isSame = then[i].Number == turned || SpeaksOfTheSame(asItIs, before, then[i].What);
            if (!new SlowRules(before, then[i]).Holds() || !isSame)
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>Whether the marks in an entry still mean the same tools.</summary>
    private static bool SpeaksOfTheSame(SlowPresent one, SlowPresent other, LedgerEntry what) =>
        what is ToolAdded || what.Tools.All(mark => one.Find(mark)?.Id == other.Find(mark)?.Id);
}
