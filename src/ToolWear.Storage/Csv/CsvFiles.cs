using System.Collections.Immutable;
using ToolWear.Core.Fields;
using ToolWear.Core.Ledger;
using ToolWear.Core.Tools;
using ToolWear.Storage.Csv.Written;

namespace ToolWear.Storage.Csv;

/// <summary>The files of the CSV set: what of a shop stands in each, and what its rows stand for.</summary>
internal static class CsvFiles
{
    /// <summary>The table of tools in use: read, never written.</summary>
    public static SetFile InUse { get; } = new TableFile<InUse>(InUseFields.Table, _ => [], TakeInUse);

    /// <summary>Every file in the order in which it is read; what a file refers to stands above it.</summary>
    public static ImmutableArray<SetFile> All { get; } =
    [
        Described(
            SettingFields.Table,
            shop => shop.Shop.Settings.Said.Select(said => new SettingChanged(said.Key, said.Value)),
            isAlwaysWritten: true
        ),
        Described(EyeFields.Table, shop => shop.Shop.Eyes.Values),
        Described(HandleFields.Table, shop => shop.Shop.Handles.Values),
        Described(SeriesFields.Table, shop => shop.Shop.Series.Values.Select(series => new SeriesDescribed(series))),
        new TableFile<StageOf>(
            PatternFields.Table,
            shop => shop.Shop.Patterns.Values.SelectMany(StageOf.All),
            (row, stage, shop, _) => shop.Add(row, stage)
        ),
        Described(BarFields.Table, shop => shop.Shop.Bars.Values),
        new TableFile<Tool>(ToolFields.Table, shop => shop.Tools, TakeTool) { IsAlwaysWritten = true },
        new TableFile<OfTool<StationSaid>>(
            StationFields.Table,
            shop => OfTools(shop, tool => tool.Stations.Select(StationSaid.Of)),
            TakeStation
        ),
        new TableFile<OfTool<GaugeMark>>(
            GaugeMarkFields.Table,
            shop => OfTools(shop, tool => tool.GaugeMarks),
            (row, gauge, _, tool) => tool?.Add(row, gauge.What)
        ),
        InUse,
        new EventFile<SessionSaid>(EventFields.Sessions, SessionOf, Opened, "session")
        {
            Then = said => said.Closed == false ? null : new SessionClosed(said.Opened.Session, said.Heads),
        },
        Happened(EventFields.Worked),
        Happened(EventFields.Readings),
        Happened(EventFields.Reworks),
        Happened(EventFields.Findings),
        Happened(EventFields.EyesMeasured),
        Happened(EventFields.Scrapped, "tool"),
        new EventFile<AsideSaid>(
            EventFields.Aside,
            (what, _) => AsideSaid.Of(what),
            (_, said, _) => said.Entry(),
            "tool"
        ),
        new EventFile<LoanSaid>(EventFields.Loans, (what, _) => LoanSaid.Of(what), LoanEntry, "tool"),
        Happened(EventFields.StockTakes),
        Described(OrderFields.Table, shop => shop.Shop.Orders.Values, into: shop => shop.Orders),
    ];

    private static TableFile<T> Described<T>(
        FieldTable<T> fields,
        Func<ShopToWrite, IEnumerable<T>> things,
        bool isAlwaysWritten = false,
        Func<ShopRead, List<EntryRead>>? into = null
    )
        where T : LedgerEntry =>
        new(
            fields,
            things,
            (row, what, shop, _) => shop.Take(row, fields, what, into?.Invoke(shop) ?? shop.Descriptions)
        )
        {
            IsAlwaysWritten = isAlwaysWritten,
        };

    private static EventFile<T> Happened<T>(FieldTable<T> fields, string? doubtful = null)
        where T : LedgerEntry => new(fields, (what, _) => what as T, (_, entry, _) => entry, doubtful);

    private static IEnumerable<OfTool<T>> OfTools<T>(ShopToWrite shop, Func<Tool, IEnumerable<T>> parts) =>
        shop.Tools.SelectMany(tool => parts(tool).Select(part => new OfTool<T>(tool.Mark, part)));

    /// <summary>Where only heats before are told of, the tool was in use.</summary>
    private static void TakeTool(CsvRow row, Tool tool, ShopRead shop, ToolRead? named)
    {
        bool wasInUse = !row.Has("started_as") && (tool.Start.HeatsBefore is not null || tool.Start.How is not null);
        Add(row, wasInUse ? tool with { Start = tool.Start with { As = StartedAs.InUse } } : tool, shop);
    }

    private static void TakeInUse(CsvRow row, InUse said, ShopRead shop, ToolRead? named)
    {
        Tool tool = said.Whole();
        if (!row.IsFaulty && said.GaugeMark().Refusal() is { } refusal)
        {
            row.Fault("scrap_mm", refusal);
        }

        Add(row, tool, shop);
        if (!row.IsFaulty)
        {
            shop.SizesNow.Add(new(row, "size_mm", said.Reading(row.Today)));
        }
    }

    private static void Add(CsvRow row, Tool tool, ShopRead shop)
    {
        if (!row.IsFaulty && tool.Start.Refusal() is { } refusal)
        {
            row.Fault("heats_before", refusal);
        }

        shop.Once(row, "tool", tool.Mark.ToString());
        shop.Add(new(row, tool));
    }

    private static void TakeStation(CsvRow row, OfTool<StationSaid> said, ShopRead shop, ToolRead? tool)
    {
        FieldFault? fault = null;
        Core.Sections.Station? station = row.IsFaulty ? null : said.What.Made(out fault);
        row.Fault(fault);
        tool?.Add(row, row.IsFaulty ? null : station);
    }

    private static SessionSaid? SessionOf(LedgerEntry what, ShopToWrite shop) =>
        what is SessionOpened opened && shop.Shop.Sessions[opened.Session] is var session
            ? new(opened, session.Heads, !session.IsOpen)
            : null;

    private static SessionOpened Opened(CsvRow row, SessionSaid said, ShopRead shop)
    {
        if (said.Closed == false && row.Has("heads"))
        {
            row.Fault("heads", "heads are counted when a session is closed; this one is open");
        }

        shop.Once(row, "session", said.Opened.Session);
        shop.Sessions.TryAdd(said.Opened.Session, (said.Opened.On, shop.Sessions.Count));
        return said.Opened;
    }

    private static LedgerEntry LoanEntry(CsvRow row, LoanSaid said, ShopRead shop)
    {
        if (!said.IsOut && said.Who is not null)
        {
            row.Fault("who", "who has it stands in the row \"out\"; empty is right here");
        }

        return said.Entry();
    }
}
