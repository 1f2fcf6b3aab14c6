using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using ToolWear.Core.Ledger;
using ToolWear.Core.Tools;

namespace ToolWear.Core.Shops;

/// <summary>The present state of the shop: the fold of its ledger and nothing else. Immutable.</summary>
/// <remarks>Made from <see cref="Empty"/> by <see cref="After"/>, one entry at a time, or by <see cref="Fold"/>.</remarks>
public sealed partial record Shop
{
    /// <summary>The most heads that a session, or a stage of it, counts.</summary>
    public const int MostHeads = 10_000;

    private Shop() { }

    internal ImmutableDictionary<ToolMark, long> Marks { get; init; } = ImmutableDictionary<ToolMark, long>.Empty;

    internal ImmutableDictionary<ToolMark, long> MarksGone { get; init; } = ImmutableDictionary<ToolMark, long>.Empty;

    internal Shelf<long, ToolInShop> ToolShelf { get; init; } = Shelf<long, ToolInShop>.Empty();

    internal Shelf<string, Session> SessionShelf { get; init; } = Shelf<string, Session>.Empty(StringComparer.Ordinal);

    internal Shelf<DateOnly, ImmutableList<string>> DayShelf { get; init; } =
        Shelf<DateOnly, ImmutableList<string>>.Empty();

    internal string? OpenName { get; init; }

    /// <summary>A shop in which nothing has happened yet.</summary>
    public static Shop Empty { get; } = new();

    /// <summary>Every entry, in the order of the ledger; entry n stands at n - 1.</summary>
    public Entries Ledger { get; internal init; } = [];

    /// <summary>The entries that were crossed out, by number, with the entry that did it.</summary>
    public ImmutableDictionary<long, Entered> CrossedOut { get; internal init; } =
        ImmutableDictionary<long, Entered>.Empty;

    /// <summary>Every tool there ever was, by its unchanging number.</summary>
    public ImmutableSortedDictionary<long, ToolInShop> Tools => ToolShelf.All;

    /// <summary>Every session by its name.</summary>
    public ImmutableSortedDictionary<string, Session> Sessions => SessionShelf.All;

    /// <summary>The session that goes on, null where none does.</summary>
    public Session? OpenSession => OpenName is null ? null : SessionShelf[OpenName];

    /// <summary>The eyes by name.</summary>
    public ImmutableSortedDictionary<string, EyeDescribed> Eyes { get; internal init; } = ByName<EyeDescribed>();

    /// <summary>The handles by name.</summary>
    public ImmutableSortedDictionary<string, HandleDescribed> Handles { get; internal init; } =
        ByName<HandleDescribed>();

    /// <summary>The series by eye, place and form.</summary>
    public ImmutableSortedDictionary<SeriesKey, Series> Series { get; internal init; } =
        ImmutableSortedDictionary<SeriesKey, Series>.Empty;

    /// <summary>The patterns by name.</summary>
    public ImmutableSortedDictionary<string, PatternDescribed> Patterns { get; internal init; } =
        ByName<PatternDescribed>();

    /// <summary>The bars in the stock rack by name.</summary>
    public ImmutableSortedDictionary<string, BarDescribed> Bars { get; internal init; } = ByName<BarDescribed>();

    /// <summary>The orders by name.</summary>
    public ImmutableSortedDictionary<string, OrderDescribed> Orders { get; internal init; } = ByName<OrderDescribed>();

    /// <summary>The cold eyes that were measured, in the order of the ledger.</summary>
    public Entries EyesMeasured { get; internal init; } = [];

    /// <summary>The drift that made each measured eye, by the number of the eye's entry; none where nobody said.</summary>
    /// <remarks>Tools are meant by their unchanging numbers, for a mark may be another tool's by now.</remarks>
    public ImmutableDictionary<long, long> EyeMakers { get; internal init; } = ImmutableDictionary<long, long>.Empty;

    /// <summary>The shop's settings.</summary>
    public ShopSettings Settings { get; internal init; } = ShopSettings.Usual;

    /// <summary>The number the next entry will have.</summary>
    public long NextNumber => Ledger.Count + 1;

    /// <summary>Finds a tool by its mark: the one that is not scrapped, else the one scrapped last under that mark.</summary>
    /// <param name="mark">The mark.</param>
    /// <param name="tool">The tool.</param>
    /// <returns>True where there is or was one.</returns>
    public bool TryFind(ToolMark mark, [NotNullWhen(true)] out ToolInShop? tool)
    {
        tool = Marks.TryGetValue(mark, out long id) || MarksGone.TryGetValue(mark, out id) ? ToolShelf[id] : null;
        return tool is not null;
    }

    /// <summary>The sessions of a day in the order of their opening.</summary>
    /// <param name="day">The day.</param>
    /// <returns>The sessions, none where there were none.</returns>
    public IEnumerable<Session> SessionsOn(DateOnly day) =>
        DayShelf.TryFind(day, out ImmutableList<string>? names) ? names.Select(name => SessionShelf[name]) : [];

    /// <summary>The series that a tool belongs to.</summary>
    /// <param name="tool">The tool.</param>
    /// <returns>The series, or null where none was entered.</returns>
    public Series? SeriesOf(Tool tool) =>
        tool.Eye is { } eye ? Series.GetValueOrDefault(new SeriesKey(eye, tool.Place, tool.Form.Name)) : null;

    /// <summary>Folds a whole ledger. What was crossed out later is left out from the start, which comes to the same.</summary>
    /// <param name="ledger">Entries numbered from 1 without gaps.</param>
    /// <returns>The shop after them, or the reason why an entry cannot be, with its number.</returns>
    public static Step Fold(IEnumerable<Entered> ledger)
    {
        Entered[] entries = [.. ledger];
        Dictionary<long, Entered> crossed = [];
        for (int i = 0; i < entries.Length; i++)
        {
            if (OutOfTurn(entries.AsSpan(0, i + 1), crossed) is { } refusal)
            {
                return refusal;
            }
        }

        Shop shop = Empty with
        {
            CrossedOut = crossed.ToImmutableDictionary(),
            ToolShelf = Empty.ToolShelf.Opened(),
            SessionShelf = Empty.SessionShelf.Opened(),
            DayShelf = Empty.DayShelf.Opened(),
        };
        foreach (Entered entered in entries)
        {
            Step step = Turning.IsOf(entered.What) || crossed.ContainsKey(entered.Number) ? shop : shop.Apply(entered);
            if (step.After is not { } after)
            {
                return $"entry {entered.Number}: {step.Refusal}";
            }

            shop = after;
        }

        return shop with
        {
            Ledger = [.. entries],
            ToolShelf = shop.ToolShelf.Shut(),
            SessionShelf = shop.SessionShelf.Shut(),
            DayShelf = shop.DayShelf.Shut(),
        };
    }

    /// <summary>Notes what the last entry crosses out or makes count again, or says why its number or it cannot be.</summary>
    private static string? OutOfTurn(ReadOnlySpan<Entered> entries, Dictionary<long, Entered> crossed)
    {
        Entered last = entries[^1];
        if (last.Number != entries.Length)
        {
            return $"entry {last.Number} stands where entry {entries.Length} comes next";
        }

        if (Turning.NumberOf(last.What) is not { } number)
        {
            return null;
        }

        if (Turning.Fault(last.What, entries[..^1], crossed.ContainsKey) is { } fault)
        {
            return $"entry {last.Number}: {fault}";
        }

        if (last.What is EntryCrossedOut)
        {
            crossed.Add(number, last);
        }
        else
        {
            crossed.Remove(number);
        }

        return null;
    }

    private static ImmutableSortedDictionary<string, T> ByName<T>() =>
        ImmutableSortedDictionary.Create<string, T>(StringComparer.Ordinal);
}

/// <summary>What names a place in a series.</summary>
/// <param name="Eye">The eye's name.</param>
/// <param name="Place">The place.</param>
/// <param name="Form">The form's name.</param>
public readonly record struct SeriesKey(string Eye, Place Place, string Form) : IComparable<SeriesKey>
{
    /// <summary>Whether the left comes first.</summary>
    /// <param name="left">A key.</param>
    /// <param name="right">Another.</param>
    /// <returns>True where left comes before right.</returns>
    public static bool operator <(SeriesKey left, SeriesKey right) => left.CompareTo(right) < 0;

    /// <summary>Whether the left comes later.</summary>
    /// <param name="left">A key.</param>
    /// <param name="right">Another.</param>
    /// <returns>True where left comes after right.</returns>
    public static bool operator >(SeriesKey left, SeriesKey right) => left.CompareTo(right) > 0;

    /// <summary>Whether the left does not come later.</summary>
    /// <param name="left">A key.</param>
    /// <param name="right">Another.</param>
    /// <returns>True where left is right or comes before it.</returns>
    public static bool operator <=(SeriesKey left, SeriesKey right) => left.CompareTo(right) <= 0;

    /// <summary>Whether the left does not come first.</summary>
    /// <param name="left">A key.</param>
    /// <param name="right">Another.</param>
    /// <returns>True where left is right or comes after it.</returns>
    public static bool operator >=(SeriesKey left, SeriesKey right) => left.CompareTo(right) >= 0;

    /// <inheritdoc />
    public int CompareTo(SeriesKey other)
    {
        int byEye = string.CompareOrdinal(Eye, other.Eye);
        int byPlace = byEye != 0 ? byEye : Place.CompareTo(other.Place);
        return byPlace != 0 ? byPlace : string.CompareOrdinal(Form, other.Form);
    }
}
