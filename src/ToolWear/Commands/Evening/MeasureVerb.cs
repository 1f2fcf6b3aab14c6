using System.CommandLine;
using ToolWear.Commands.Calls;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Core.Wear;
using ToolWear.Core.Wear.Histories;
using ToolWear.Results;

namespace ToolWear.Commands.Evening;

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
            "Records a caliper reading, which counts after the tool's last session.",
            "measure H5 width 13.55",
            [Tool, Gauge, Size, Session, By, Note],
            Run,
            Words.MeasureCaution
        );

    private static void Run(Call call)
    {
        ToolMark mark = call.Mark(Tool);
        using Bench bench = call.ToWrite();
        TypedSize size = call.Size(bench.Shop, call.Get(Size));
        ToolInShop tool = Call.Find(bench.Shop, mark);
        string? session = call.Get(Session) ?? ExpectedReading.SessionBefore(bench.Shop, tool, call.On);
        ToolMeasured reading = new(
            mark,
            call.Get(Gauge),
            call.On,
            session,
            size.Length,
            size.Resolution,
            call.Name(By),
            call.Note(Note)
        );
        GaugeForecast? before = ShopForecasts
            .Of(bench.Shop)
            .Of(tool.Id)
            .Gauges.FirstOrDefault(gauge => gauge.History.Gauge.Name == reading.Gauge);
        call.Record(bench, reading);
        AfterReading(call, bench.Shop, mark, reading);
        call.Warn(Words.MeasureCaution);
        if (Improbable(before, reading, call.Units(bench.Shop)) is { } doubt)
        {
            call.Warn(doubt);
        }

        if (session is not null && bench.Shop.OpenSession?.Name == session)
        {
            call.Warn($"session {session} is still open: heats added to it later count before this reading");
        }
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
    }

    private static string? Improbable(GaugeForecast? before, ToolMeasured reading, LengthUnit units) =>
        ExpectedReading.Of(before, before?.History.Wear.HeatsNow ?? 0) is { } expected && !expected.Holds(reading.Size)
            ? $"{reading.Gauge} was expected {expected.InWords(units)}: end ground back? jaw on scale? If it is wrong, cross the entry out."
            : null;
}
