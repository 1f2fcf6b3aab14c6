using System.CommandLine;
using ToolWear.Commands.Calls;
using ToolWear.Core.Deeds;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Wording;

namespace ToolWear.Commands.Evening;

/// <summary>measure: records a caliper reading.</summary>
internal static class MeasureVerb
{
    private static readonly Argument<ToolMark> Tool = Said.Tool();
    private static readonly Argument<string> Gauge = Said.Gauge("the gauge mark's name, such as width");
    private static readonly Argument<string> Size = new("SIZE")
    {
        Description = "the size read, such as 13.55 or 1 7/16",
    };

    public static Verb Verb { get; } =
        new(
            "measure",
            "Records a caliper reading.",
            "measure H5 width 13.55",
            [Tool, Gauge, Size, Said.Session, Said.By, Said.Note],
            Run,
            $"It counts after the tool's last session. {Cautions.MeasureCaution}"
        );

    private static void Run(Call call)
    {
        call.ToWrite();
        TypedSize size = call.Size(call.Get(Size)!);
        ToolInShop tool = call.Tool(Tool);
        ToolMeasured said = new(
            tool.Mark,
            call.Gauge(tool.Mark, call.Get(Gauge)!),
            call.On,
            call.Get(Said.Session),
            size.Length,
            size.Resolution,
            call.Get(Said.By),
            call.Get(Said.Note)
        );
        Measuring deed = Measuring.Of(call.Shop, tool, call.Forecasts.Of(tool.Id), said);
        call.Record(deed.Entry);
        call.PrintLine(
            Words.ReadingTaken(said, Measuring.History(call.Shop, call.Shop.Tools[tool.Id], said.Gauge)!, call.Units)
        );
        call.Warn(Cautions.MeasureCaution);
        if (deed.Doubt is { } expected)
        {
            call.Warn(
                $"{said.Gauge} was expected {expected.InWords(call.Units)}: end ground back? jaw on scale? {call.CrossOut}"
            );
        }

        if (deed.Entry.Session is { } session && call.Shop.OpenSession?.Name == session)
        {
            call.Warn($"session {session} is still open: heats added to it later count before this reading");
        }
    }
}
