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
        bool can = entered.What is EntryCrossedOut crossing
            ? CanCrossOut(crossing)
            : new SlowRules(Present, entered).Holds();
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
            .Select(each => ShopTold.Session(each, present.IsOpen(each.Session), present.HeadsOf(each.Session)));
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

    /// <summary>What counts: all but crossings out, what they crossed out, and one more entry.</summary>
    private List<Entered> Without(long number)
    {
        HashSet<long> crossed = [.. ledger.Select(each => each.What).OfType<EntryCrossedOut>().Select(x => x.Entry)];
        return ledger.FindAll(each =>
            each.What is not EntryCrossedOut && !crossed.Contains(each.Number) && each.Number != number
        );
    }

    private bool CanCrossOut(EntryCrossedOut crossing)
    {
        List<Entered> standing = Standing();
        if (!standing.Exists(each => each.Number == crossing.Entry))
        {
            return false;
        }

        List<Entered> rest = Without(crossing.Entry);
        for (int i = 0; i < rest.Count; i++)
        {
            SlowPresent without = new(rest[..i]);
            SlowPresent with = new(standing.FindAll(each => each.Number < rest[i].Number));
            if (!new SlowRules(without, rest[i]).Holds() || !SpeaksOfTheSame(with, without, rest[i].What))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>Whether the marks in an entry still mean the same tools.</summary>
    private static bool SpeaksOfTheSame(SlowPresent with, SlowPresent without, LedgerEntry what) =>
        what is ToolAdded || what.Tools.All(mark => with.Find(mark)?.Id == without.Find(mark)?.Id);
}
