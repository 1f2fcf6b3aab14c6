using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Core.Tools.Forms;
using ToolWear.Testing.Generators;
using Xunit;

namespace ToolWear.Core.Tests.Shops;

/// <summary>A shop to which things happen one after another, told in short words.</summary>
internal sealed class Story
{
    public Shop Shop { get; private set; } = Shop.Empty;

    /// <summary>The shop's day; the first is 1 May 2026.</summary>
    public DateOnly Today { get; set; } = Day(1);

    public static DateOnly Day(int day) => new(2026, 5, day);

    public static ToolMark Mark(string text) => Texts.MarkOf(text);

    public static Length Mm(double mm) => Length.FromMm(mm);

    /// <summary>A drift measured at its width, 16 mm new, done under 15.2.</summary>
    public static Tool Drift(string mark, Place place = Place.Rough, DateOnly? madeOn = null) =>
        new(
            Mark(mark),
            Form("drift"),
            "hatchet",
            place,
            null,
            null,
            null,
            madeOn,
            ToolStart.New,
            null,
            ToolCost.Unknown,
            null,
            null,
            [new("width", Wears.Smaller, Measures.Width, null, Mm(16), Mm(15.2), null, null)],
            []
        );

    public static ToolForm Form(string name) =>
        ToolForms.TryFind(name, out ToolForm form, out string refusal)
            ? form
            : throw new InvalidOperationException(refusal);

    public static SessionOpened Opening(string session, DateOnly on, string? pattern = null) =>
        new(session, on, pattern, Care.Usual, null, null);

    public static HeatsWorked Worked(string session, string mark, int heats = 1, Work work = Work.Cheeks) =>
        new(session, Mark(mark), work, Heats.Of(heats), HeatsHow.Counted);

    public static ToolMeasured Measured(string mark, DateOnly on, string? session = null, double mm = 15.8) =>
        new(Mark(mark), "width", on, session, Mm(mm), null, null, null);

    public static ToolReworked Reworked(string mark, DateOnly on, string? gauge = null) =>
        new(Mark(mark), on, Rework.Dressed, gauge, null, null, null, null, null);

    public static ToolLookedOver LookedOver(string mark, DateOnly on, Finding finding = Finding.Sound) =>
        new(Mark(mark), on, finding, null, null);

    public static ToolScrapped Scrapped(string mark, DateOnly on) => new(Mark(mark), on, ScrapCause.Worn, null, null);

    /// <summary>Enters what must be taken.</summary>
    /// <returns>Its number.</returns>
    public long Enter(LedgerEntry what)
    {
        Step step = Try(what);
        Assert.Null(step.Refusal);
        Assert.NotNull(step.After);
        Assert.Same(what, step.After.Ledger[^1].What);
        Shop = step.After;
        return Shop.Ledger.Count;
    }

    /// <summary>Tries what must be refused, and says why.</summary>
    public string Refused(LedgerEntry what)
    {
        Step step = Try(what);
        Assert.Null(step.After);
        Assert.NotNull(step.Refusal);
        return step.Refusal;
    }

    public long Add(string mark, Place place = Place.Rough) => Enter(new ToolAdded(Drift(mark, place)));

    public long Open(string session, DateOnly? on = null, string? pattern = null) =>
        Enter(Opening(session, on ?? Today, pattern));

    public long Close(string session) => Enter(new SessionClosed(session, null));

    public long CrossOut(long entry) => Enter(new EntryCrossedOut(entry, "a slip"));

    public long CountAgain(long entry) => Enter(new EntryCountsAgain(entry, "it was right"));

    public ToolInShop Tool(string mark) =>
        Shop.TryFind(Mark(mark), out ToolInShop? tool) ? tool : throw new InvalidOperationException(mark);

    /// <summary>The numbers of a tool's entries in the order of its history.</summary>
    public long[] History(string mark) => [.. Shop.HistoryOf(Tool(mark)).Select(each => each.Entered.Number)];

    private Step Try(LedgerEntry what) => Shop.After(Ledgers.Number(Shop, new Attempt(Today, what)));
}
