using System.CommandLine;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Core.Wear.Histories;

namespace ToolWear.Commands;

/// <summary>measure: records a caliper reading.</summary>
internal static class MeasureVerb
{
    private static readonly Argument<string> Tool = Common.Mark();
    private static readonly Argument<string> Gauge = new("GAUGE")
    {
        Description = "the gauge mark's name, such as width",
    };
    private static readonly Argument<string> Size = new("SIZE")
    {
        Description = "the size read, such as 13.55 or 1 7/16",
    };
    private static readonly Option<string?> Session = Common.Text("--session", "SESSION", Words.HelpSession);
    private static readonly Option<string?> By = Common.Text("--by", "NAME", Words.HelpBy);
    private static readonly Option<string?> Note = Common.Text("--note", "TEXT", Words.HelpNote);

    public static Command Make(Site site) =>
        Common.Verb(
            site,
            "measure",
            $"Records a caliper reading. It counts after the tool's last session. {Words.MeasureCaution}",
            "measure H5 width 13.55",
            [Tool, Gauge, Size, Session, By, Note],
            Run
        );

    private static void Run(Call call)
    {
        ToolMark mark = call.Mark(Tool);
        using Bench bench = call.ToWrite();
        TypedSize size = call.Size(bench.Shop, call.Get(Size));
        ToolInShop tool = Call.Find(bench.Shop, mark);
        string? session = call.Get(Session) ?? SessionBefore(bench.Shop, tool, call.On);
        ToolMeasured reading = new(
            mark,
            call.Get(Gauge),
            call.On,
            session,
            size.Length,
            size.Resolution,
            call.Note(By),
            call.Note(Note)
        );
        call.Record(bench, reading);
        AfterReading(call, bench.Shop, mark, reading);
    }

    /// <summary>The last session the tool worked in by that day, unless it was reworked since: then the day itself counts.</summary>
    private static string? SessionBefore(Shop shop, ToolInShop tool, DateOnly on)
    {
        LedgerEntry? last = shop.HistoryOf(tool)
            .Where(each => each.Place.Day <= on)
            .Select(each => each.Entered.What)
            .LastOrDefault(what => what is HeatsWorked or ToolReworked);
        return (last as HeatsWorked)?.Session;
    }

    private static void AfterReading(Call call, Shop shop, ToolMark mark, ToolMeasured reading)
    {
        GaugeHistory history = ShopHistories
            .Of(shop, Call.Find(shop, mark))
            .First(each => each.Gauge.Name == reading.Gauge);
        LengthUnit units = call.Units(shop);
        string read = $"{mark} {reading.Gauge}: {SizeShown.Caliper(reading.Size, units)} {SizeShown.Mark(units)}";
        string worn =
            history.Wear.LimitMm is { } limit && history.LastKnownWearMm is { } wear
                ? $", {SizeShown.Wear(limit - wear, units)} to go of {SizeShown.Wear(limit, units)}"
                : "";
        call.PrintLine(read + worn);
        if (reading.Resolution is { } resolution)
        {
            call.Warn(
                $"taken to {SizeShown.Wear(resolution.Mm, units)} {SizeShown.Mark(units)}, as fine as the fraction it was written in"
            );
        }

        if (Improbable(history, reading) is { } doubt)
        {
            call.Warn(doubt);
        }
    }

    private static string? Improbable(GaugeHistory history, ToolMeasured reading)
    {
        if (history.Readings.Length < 2 || history.Wear.LimitMm is not { } limit)
        {
            return null;
        }

        // common practice, no source: a worn surface repeats to 0.15 mm; half the limit in one go is no heat's work
        double since = history.Readings[^1].WearMm - history.Readings[^2].WearMm;
        return since < -0.3 || since > limit / 2
            ? $"{reading.Gauge} changed by {since:0.##} mm since the last reading: end ground back? jaw on scale? If it is wrong, cross the entry out."
            : null;
    }
}
