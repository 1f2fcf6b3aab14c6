using System.Collections.Immutable;
using System.Globalization;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Sections;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Core.Tools.Forms;
using Xunit;

namespace ToolWear.Storage.Tests.Csv;

/// <summary>A shop that is built entry by entry in a test.</summary>
internal sealed class ShopInHand
{
    public Shop Shop { get; private set; } = Shop.Empty;

    public DateOnly Today { get; set; } = Day("2026-06-30");

    public static DateOnly Day(string day) => DateOnly.ParseExact(day, "yyyy-MM-dd", CultureInfo.InvariantCulture);

    public static Length Mm(decimal mm) => Length.FromMm(mm);

    public static ToolMark Mark(string text) =>
        ToolMark.TryParse(text, out ToolMark mark, out string refusal)
            ? mark
            : throw new InvalidOperationException(refusal);

    public static ToolForm Form(string name) =>
        ToolForms.TryFind(name, out ToolForm form, out string refusal)
            ? form
            : throw new InvalidOperationException(refusal);

    public static Section Section(SectionKind kind, decimal a, decimal b, decimal radius) =>
        Core.Sections.Section.TryMake(kind, Mm(a), Mm(b), Mm(radius), out Section? section, out string? refusal)
            ? section
            : throw new InvalidOperationException(refusal);

    public static Tool Drift(string mark, Place place = Place.Rough) =>
        new(
            Mark(mark),
            Form("drift"),
            "H",
            place,
            SectionKind.Teardrop,
            "4140",
            null,
            null,
            ToolStart.New,
            null,
            ToolCost.Unknown,
            null,
            null,
            [new("width", Wears.Smaller, Measures.Width, Mm(95), Mm(14), Mm(12.8m), null, null)],
            []
        );

    /// <summary>Enters it and gives its number; a refusal fails the test.</summary>
    public long Enter(LedgerEntry entry)
    {
        Assert.Null(TryEnter(entry));
        return Shop.Ledger.Count;
    }

    /// <summary>Enters it where the shop takes it, else gives the refusal.</summary>
    public string? TryEnter(LedgerEntry entry)
    {
        Step step = Shop.After(new(Shop.NextNumber, DateTimeOffset.UnixEpoch, Today, entry));
        Shop = step.After ?? Shop;
        return step.Refusal;
    }

    public void Open(string session, string on, string? pattern = null) =>
        Enter(new SessionOpened(session, Day(on), pattern, Care.Usual, null, null));

    public void Close(string session, int? heads = null) => Enter(new SessionClosed(session, heads));

    public void Work(string session, string tool, int halves, Work work = Core.Tools.Work.Cheeks) =>
        Enter(new HeatsWorked(session, Mark(tool), work, Heats.OfHalves(halves), HeatsHow.Counted));

    public void Measure(string tool, string on, decimal mm, string? session = null, string? note = null) =>
        Enter(new ToolMeasured(Mark(tool), "width", Day(on), session, Mm(mm), null, null, note));

    public void Rework(string tool, string on, Rework what = Core.Ledger.Rework.Straightened) =>
        Enter(new ToolReworked(Mark(tool), Day(on), what, null, null, null, null, null, null));

    public static Shop Folded(IEnumerable<LedgerEntry> entries, DateOnly today)
    {
        ImmutableArray<Entered> ledger =
        [
            .. entries.Select((entry, i) => new Entered(i + 1, DateTimeOffset.UnixEpoch, today, entry)),
        ];
        Step step = Shop.Fold(ledger);
        Assert.Null(step.Refusal);
        return step.After!;
    }
}
