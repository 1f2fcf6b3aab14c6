using System.Collections.Immutable;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Planning.Years;
using ToolWear.Core.Shops;
using ToolWear.Core.Wear;
using ToolWear.Core.Wear.Trials;
using ToolWear.Doors;
using ToolWear.Keys;
using ToolWear.Pens;
using ToolWear.Results.Looks;
using ToolWear.Results.Tools;
using ToolWear.Storage;
using ToolWear.Wording;

namespace ToolWear.Screens;

/// <summary>One sitting at the screens: the bench, the forecasts, what was said last, what can be taken back.</summary>
internal sealed class Sitting : IDisposable
{
    private const string TakenBackAtOnce = "undone at once";

    private readonly Stack<Undoable> recorded = new();
    private readonly DateOnly? day;
    private readonly Action<Action> onScreen;
    private readonly int before;
    private readonly ImmutableArray<IBeside> workers;
    private int seen;
    private Task backup = Task.CompletedTask;

    /// <summary>Begins a sitting.</summary>
    /// <param name="site">The world around.</param>
    /// <param name="bench">The bench, open to write; the sitting does not close it.</param>
    /// <param name="day">The shop's day where it is not today's.</param>
    /// <param name="onScreen">Does something on the screens' thread.</param>
    public Sitting(Site site, Bench bench, DateOnly? day, Action<Action> onScreen)
    {
        Site = site;
        Bench = bench;
        before = bench.Shop.Ledger.Count;
        (this.day, this.onScreen) = (day, onScreen);
        Forecaster = new(onScreen, (shop, stop) => ShopForecasts.Of(shop, Forecasts).WithRack(stop));
        Plans = new Beside<Core.Planning.ForgeList>(onScreen, Plan);
        Supposed = new Beside<Core.Planning.ForgeList>(onScreen, Plan);
        Costs = new Beside<Core.Planning.ToolingCosts>(onScreen, Cost);
        Years = new Beside<ShopYears>(onScreen, LookBack);
        Charts = new Charts(onScreen);
        Kept = new Beside<string>(
            onScreen,
            (Shop shop, CancellationToken _) => RangeWords.Kept(ShopForecasts.Of(shop, Forecasts).Ranges)
        );
        Trials = new Beside<ShopTrialList>(onScreen, (shop, stop) => new ShopTrialList(ShopTrials.Of(shop, stop)));
        workers = [Forecaster, Plans, Supposed, Costs, Years, Charts, Trials, Kept];
    }

    /// <summary>The world around.</summary>
    public Site Site { get; }

    /// <summary>The one door to the ledger.</summary>
    public Bench Bench { get; }

    /// <summary>The shop as its ledger says now.</summary>
    public Shop Shop => Bench.Shop;

    /// <summary>The shop's day.</summary>
    public DateOnly Today => day ?? Site.Today;

    /// <summary>The unit the shop speaks in.</summary>
    public LengthUnit Units => Shop.Settings.Units;

    /// <summary>What works the forecasts out.</summary>
    public Beside<ShopForecasts> Forecaster { get; }

    /// <summary>What works the forge list out, once it is asked for.</summary>
    public Beside<Core.Planning.ForgeList> Plans { get; }

    /// <summary>What works the forge list of a supposed shop out, once it is asked for.</summary>
    public Beside<Core.Planning.ForgeList> Supposed { get; }

    /// <summary>What works the costs out, once they are asked for.</summary>
    public Beside<Core.Planning.ToolingCosts> Costs { get; }

    /// <summary>What gathers the years, once they are asked for.</summary>
    public Beside<ShopYears> Years { get; }

    /// <summary>What works the charts of wear cards out.</summary>
    public Charts Charts { get; }

    /// <summary>What works the comparisons out, once they are asked for.</summary>
    public Beside<ShopTrialList> Trials { get; }

    /// <summary>What works out how the ranges held, in words, once it is asked for.</summary>
    public Beside<string> Kept { get; }

    /// <summary>Has something done whenever one of those beside the screens is further.</summary>
    /// <param name="ready">What.</param>
    public void WhenFurther(Action ready)
    {
        foreach (IBeside worker in workers)
        {
            worker.Ready = ready;
        }
    }

    /// <summary>The forecasts last worked out; null before the first.</summary>
    public ShopForecasts? Forecasts => Forecaster.Latest;

    // the question that was asked last, with the entries it was about
    private string? asked;

    /// <summary>What was said last, and in which ink.</summary>
    public (string Sentence, Ink Ink) Said { get; private set; } = ("", Ink.Plain);

    /// <summary>Whether anything recorded in this sitting can be taken back.</summary>
    public bool CanTakeBack => recorded.Count > 0;

    /// <summary>Says something to the smith.</summary>
    /// <param name="sentence">The sentence; empty for nothing.</param>
    /// <param name="ink">Its ink.</param>
    public void Say(string sentence, Ink ink = Ink.Plain) => Said = (sentence, ink);

    /// <summary>Rings the terminal's bell where the shop wants it.</summary>
    public void Ring()
    {
        if (Shop.Settings.HasBell)
        {
            Site.Tty?.WriteRaw("\a"u8.ToArray());
        }
    }

    /// <summary>Records entries all together or not at all; where they cannot be, says why.</summary>
    /// <param name="entries">What happened, in order.</param>
    /// <returns>True where they are on the disk.</returns>
    public bool Record(params ImmutableArray<LedgerEntry> entries) => RecordAsking(null, entries);

    /// <summary>Records entries; where a size is unlikely, asks once before.</summary>
    /// <param name="doubt">What to ask; null for what the rule of sizes asks.</param>
    /// <param name="entries">What happened, in order.</param>
    /// <returns>True where they are on the disk.</returns>
    public bool RecordAsking(string? doubt, ImmutableArray<LedgerEntry> entries)
    {
        IReadOnlyList<string>? doubts = Bench.DoubtsOf(entries);
        doubt =
            doubts is null ? null
            : doubts is [var first, ..] ? doubt ?? Words.AskedOnce(first)
            : doubt;
        string? question = doubt is null ? null : doubt + string.Concat(entries);
        if (doubt is not null && question != asked)
        {
            asked = question;
            Say(doubt, Ink.Warn);
            return false;
        }

        asked = null;
        if (!Try(entries))
        {
            return false;
        }

        recorded.Push(new Undoable(Shop.NextNumber - entries.Length, Shop.Ledger.Count));
        return true;
    }

    /// <summary>Whether an entry is left from a sitting that has ended: a window that is open takes its own back.</summary>
    /// <param name="entered">The entry.</param>
    /// <returns>True where it was there at the start and no other window is open.</returns>
    public bool IsFromBefore(Entered entered) => entered.Number <= before && Bench.IsOnlyWindow;

    /// <summary>Takes in what other windows and commands have entered, and says so.</summary>
    /// <returns>Whether anything is new, or wrong.</returns>
    public bool Look()
    {
        try
        {
            Bench.Look();
        }
        catch (StoreException e)
        {
            bool isNew = Said.Sentence != e.Message;
            Say(e.Message, Ink.Warn);
            return isNew;
        }

        ImmutableArray<Entered> others = Bench.FromOthers[seen..];
        seen += others.Length;
        if (others.IsEmpty)
        {
            return false;
        }

        Say(FromOthers(others, Units));
        return true;
    }

    /// <summary>Records entries that a key cannot take back, such as a whole import.</summary>
    /// <param name="entries">What happened, in order.</param>
    /// <returns>True where they are on the disk.</returns>
    public bool RecordForGood(ImmutableArray<LedgerEntry> entries) => Try(entries);

    /// <summary>Takes back what was recorded last in this sitting: it is crossed out, or counts again where it was a
    /// crossing out.</summary>
    /// <returns>The entries taken back, in the order in which they were recorded; none where nothing was.</returns>
    public ImmutableArray<Entered> TakeBack()
    {
        while (recorded.TryPeek(out Undoable? last))
        {
            ImmutableArray<Entered> entries = Standing(last.First, last.Last);
            if (entries.IsEmpty)
            {
                recorded.Pop();
                continue;
            }

            if (!TakeBack(entries))
            {
                return [];
            }

            recorded.Pop();
            return entries;
        }

        Say(KeyWords.NothingToTakeBack);
        return [];
    }

    /// <summary>Takes entries back, the last first, all together.</summary>
    /// <param name="entries">The entries; each of them stands.</param>
    /// <returns>True where they are taken back.</returns>
    public bool TakeBack(ImmutableArray<Entered> entries) =>
        Try([
            .. entries
                .OrderByDescending(each => each.Number)
                .Select(each => Shop.TakingBack(each.Number, TakenBackAtOnce)),
        ]);

    /// <summary>Copies the journal into the backups beside the screens; says only what went wrong.</summary>
    /// <remarks>Copies of a large journal are synced, which takes longer than a key may. One follows the other.</remarks>
    public void BackUp() =>
        backup = backup.ContinueWith(
            _ =>
            {
                string trouble = string.Join(' ', Bench.BackUp());
                if (trouble.Length > 0)
                {
                    onScreen(() =>
                    {
                        Say(trouble, Ink.Warn);
                        Forecaster.Ready?.Invoke();
                    });
                }
            },
            CancellationToken.None,
            TaskContinuationOptions.None,
            TaskScheduler.Default
        );

    /// <inheritdoc />
    public void Dispose()
    {
        // the store is closed behind us: what is being copied is copied to its end
        backup.Wait();
        foreach (IBeside worker in workers)
        {
            worker.Dispose();
        }
    }

    private Core.Planning.ForgeList Plan(Shop shop, Core.Planning.Steps steps) =>
        Core.Planning.ForgeList.Of(LivesOf(shop, steps), Today, shop.Settings.Sure, until: null, steps);

    // what was worked out for the screens is not worked out again
    private Core.Planning.ShopLives LivesOf(Shop shop, Core.Planning.Steps steps) =>
        new(
            Forecasts is { } known && ReferenceEquals(known.Shop, shop)
                ? known
                : ShopForecasts.Of(shop, Forecasts).WithRack(steps.Stop)
        );

    private Core.Planning.ToolingCosts Cost(Shop shop, Core.Planning.Steps steps) =>
        Core.Planning.ToolingCosts.Of(LivesOf(shop, steps), steps);

    private ShopYears LookBack(Shop shop, Core.Planning.Steps steps) =>
        ShopYears.Of(LivesOf(shop, steps), Today, steps);

    private ImmutableArray<Entered> Standing(long first, long last) =>
        [.. Shop.Ledger.Skip((int)first - 1).Take((int)(last - first + 1)).Where(Stands)];

    /// <summary>Whether what an entry says still holds, so that it can be taken back.</summary>
    private bool Stands(Entered entered) =>
        entered.What switch
        {
            EntryCrossedOut e => Shop.CrossedOut.GetValueOrDefault(e.Entry)?.Number == entered.Number,
            EntryCountsAgain e => !Shop.CrossedOut.ContainsKey(e.Entry),
            _ => !Shop.CrossedOut.ContainsKey(entered.Number),
        };

    private bool Try(ImmutableArray<LedgerEntry> entries)
    {
        try
        {
            RecordedAs done = Bench.RecordAll(entries, Today);
            Say(done.Refusal ?? "", Ink.Warn);
            return done.Refusal is null;
        }
        catch (StoreException e)
        {
            Say(e.Message, Ink.Warn);
            return false;
        }
    }

    /// <summary>Something done: entries of the ledger from first to last.</summary>
    private sealed record Undoable(long First, long Last);

    private static string FromOthers(ImmutableArray<Entered> entries, LengthUnit units) =>
        $"Added in another window: {Host.Tools(entries[^1..])}{EntryWords.Of(entries[^1].What, units)}"
        + (entries.Length > 1 ? $" and {entries.Length - 1} more" : "");
}
