using System.Collections.Immutable;
using ToolWear.Core.Fields;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Sections;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Core.Tools.Forms;

namespace ToolWear.Core.Deeds.Bringing;

/// <summary>The tables that a person can bring.</summary>
public static class Tables
{
    private static readonly DateOnly Example = new(2026, 10, 31);

    /// <summary>Every kind; where a table fits two alike it is the first of them.</summary>
    public static ImmutableArray<TableKind> All { get; } =
    [
        new TableKind<InUse>(
            "tools",
            InUseFields.Table,
            [],
            KnownTool,
            Tool,
            new(Drift("example 1", "H", Place.Rough, "4140"), null, null, Mm(13.6m), Mm(12.8m), Mm(14m), Example),
            new(Drift("example 2", "H", Place.Second, "4140"), null, null, Mm(16m), Mm(15.2m), null, null)
        ),
        new TableKind<ToolMeasured>(
            "readings",
            EventFields.Readings,
            ["gauge"],
            static (_, _) => null,
            Reading,
            new(Mark("example 1"), "width", Example, null, Mm(13.4m), null, "Orla", null),
            new(Mark("example 1"), "width", Example.AddDays(7), null, Mm(13.3m), null, null, "corner chipped")
        ),
        new TableKind<HeatsOfDay>(
            "heats",
            HeatsOfDay.Fields,
            ["session", "work"],
            static (_, _) => null,
            Worked,
            new(Example, new("", Mark("example 1"), Work.Cheeks, Heats.Of(18), HeatsHow.Counted)),
            new(Example.AddDays(7), new("", Mark("example 1"), Work.Cheeks, Heats.Of(12), HeatsHow.Estimated))
        ),
        new TableKind<BarDescribed>(
            "bars",
            BarFields.Table,
            [],
            (shop, cell) => shop.Bars.GetValueOrDefault(cell("bar")),
            (bar, known, _) => bar == known ? [] : [bar],
            new("example 1", "4140", SectionKind.Round, Mm(32m), null, Mm(1800m), null, 2.5m),
            new("example 2", "H13", SectionKind.Rectangle, Mm(40m), Mm(20m), Mm(500m), null, null)
        ),
        new TableKind<OrderDescribed>(
            "orders",
            OrderFields.Table,
            [],
            (shop, cell) => shop.Orders.GetValueOrDefault(cell("order")),
            (order, known, _) => order == known ? [] : [order],
            new("example 1", "hatchet", 18, Example, OrderState.Open),
            new("example 2", "hammer", 24, Example.AddDays(28), OrderState.Open)
        ),
    ];

    /// <summary>Reads a table as what its headings fit best.</summary>
    /// <inheritdoc cref="TableKind.Read" />
    public static Brought Read(SaidTable table, Shop shop, LengthUnit units, DateOnly today, BringingWishes wishes)
    {
        ImmutableArray<Heading> headings = [.. table.Headings.Select(Heading.Of)];
        // tools without a form or readings without a day: of tools while there are none, or to correct them
        bool isOfTools = shop.Tools.IsEmpty || wishes.Update;
        return All.MaxBy(kind => (kind.Fit(headings, wishes), (kind == All[0]) == isOfTools))!
            .Read(table, shop, units, today, wishes);
    }

    private static Length Mm(decimal mm) => Length.FromMm(mm);

    private static ToolMark Mark(string text) => ToolMark.TryParse(text, out ToolMark mark, out _) ? mark : default;

    private static Tool Drift(string mark, string eye, Place place, string steel) =>
        ToolFields.Blank with
        {
            Mark = Mark(mark),
            Form = ToolForms.All.First(form => form.Name == ToolForms.Drift),
            Eye = eye,
            Place = place,
            Steel = steel,
        };

    private static InUse? KnownTool(Shop shop, Func<string, string> cell)
    {
        if (!shop.TryFind(Mark(cell("tool")), out ToolInShop? found) || found.State == ToolState.Scrapped)
        {
            return null;
        }

        GaugeMark? gauge = cell("gauge") is { Length: > 0 } name
            ? found.Tool.Gauge(name)
            : found.Tool.GaugeMarks.FirstOrDefault();
        return new(found.Tool, gauge?.Name, gauge?.Wears, Length.Zero, gauge?.ScrapSize, gauge?.Start, null);
    }

    private static IEnumerable<LedgerEntry> Tool(InUse said, InUse? known, RowAsked row)
    {
        if (said.Tool.Start is { HeatsBefore: { } heats, How: null or HeatsBeforeHow.Unknown } start)
        {
            row.Doubt(
                "heats_before",
                $"{heats} heats, taken as estimated; write counted under heats_before_how if they were"
            );
            said = said with { Tool = said.Tool with { Start = start with { How = HeatsBeforeHow.Estimated } } };
        }

        if (said.GaugeMark() is var gauge && gauge.Refusal() is { } refusal)
        {
            row.Fault("scrap_mm", refusal);
        }
        else if (said.Size > Length.Zero && Doubt(said, gauge) is { } doubt)
        {
            row.Doubt("scrap_mm", doubt);
        }

        if (known is null)
        {
            yield return new ToolAdded(said.Whole());
        }
        else if (Corrected(said, known.Tool, row) is var tool && tool != known.Tool)
        {
            yield return new ToolCorrected(tool, known.Tool);
        }

        if (said.Size > Length.Zero)
        {
            yield return said.Reading(row.On) with
            {
                Resolution = row.Resolution("size_mm"),
            };
        }
    }

    private static string? Doubt(InUse said, GaugeMark gauge) =>
        said.Scrap is not { } scrap ? null
        : (gauge.Wears == Wears.Smaller ? said.Size < scrap : said.Size > scrap)
            ? $"the size {said.Size} is past {scrap} already; look whether both are right"
        : (said.Size - scrap).Abs().Nanometres > said.Size.Nanometres / 4
            ? $"{scrap} is more than a quarter away from the size {said.Size}; look whether both are right"
        : null;

    /// <summary>A tool of the shop with what a row says of it; what it does not say stays.</summary>
    private static Tool Corrected(InUse said, Tool was, RowAsked row)
    {
        GaugeMark gauge = said.GaugeMark();
        GaugeMark? old = was.Gauge(gauge.Name);
        GaugeMark now = old is null
            ? gauge
            : old with
            {
                Wears = gauge.Wears,
                Start = gauge.Start,
                Least = gauge.Least ?? old.Least,
                Greatest = gauge.Greatest ?? old.Greatest,
            };
        return said.Tool with
        {
            Start = row.Has("heats_before") || row.Has("heats_before_how") ? said.Whole().Start : was.Start,
            GaugeMarks =
                old is null ? was.GaugeMarks.Insert(0, now)
                : now == old ? was.GaugeMarks
                : was.GaugeMarks.Replace(old, now),
        };
    }

    private static IEnumerable<LedgerEntry> Reading(ToolMeasured said, ToolMeasured? known, RowAsked row)
    {
        if (Named(said.Tool, row) is not { } tool)
        {
            yield break;
        }

        string[] names =
        [
            .. tool.GaugeMarks.Where(each => each.Measures != Measures.Overall).Select(each => each.Name),
        ];
        if (said.Gauge.Length > 0 || names is [_])
        {
            yield return said with
            {
                Tool = tool.Mark,
                Gauge = said.Gauge.Length > 0 ? said.Gauge : names[0],
                Resolution = said.Resolution ?? row.Resolution("size_mm"),
            };
        }
        else
        {
            string there = names.Length == 0 ? "no gauge mark" : string.Join(", ", names);
            row.Fault("gauge", $"{said.Tool} has {there}; write which was read");
        }
    }

    /// <summary>Heats go to a session of their day; where there is none, one is opened for them and closed.</summary>
    private static IEnumerable<LedgerEntry> Worked(HeatsOfDay said, HeatsOfDay? known, RowAsked row)
    {
        if (Named(said.What.Tool, row) is not { } tool)
        {
            yield break;
        }

        string session = said.What.Session is { Length: > 0 } named
            ? named
            : row.Shop.SessionsOn(said.On).FirstOrDefault()?.Name ?? SessionNames.Next(row.Shop, said.On);
        if (!row.Shop.Sessions.ContainsKey(session))
        {
            yield return new SessionOpened(session, said.On, null, Care.Usual, null, null);
            yield return new SessionClosed(session, null);
        }

        yield return said.What with
        {
            Session = session,
            Tool = tool.Mark,
            Work = row.Has("work") ? said.What.Work : tool.MainWork,
        };
    }

    private static Tool? Named(ToolMark mark, RowAsked row)
    {
        if (!row.Shop.TryFind(row.Shop.Meant(mark), out ToolInShop? tool))
        {
            row.Fault("tool", $"no tool is marked {mark}; mend the mark, or import the tool first");
        }

        return tool?.Tool;
    }
}

/// <summary>Heats that were noted by their day.</summary>
/// <param name="On">The day.</param>
/// <param name="What">The heats; the session may be empty.</param>
internal sealed record HeatsOfDay(DateOnly On, HeatsWorked What)
{
    /// <summary>The fields.</summary>
    public static FieldTable<HeatsOfDay> Fields { get; } =
        new FieldTable<HeatsOfDay>("", new(default, EventFields.Worked.Blank))
            .Needs("on", FieldKinds.PastDay, h => h.On, (h, v) => h with { On = v!.Value })
            .Means("the day they were worked")
            .Called("day", "date", "worked on")
            .Of(EventFields.Worked, h => h.What, (h, v) => h with { What = v });
}
