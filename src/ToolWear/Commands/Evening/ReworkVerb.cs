using System.CommandLine;
using ToolWear.Commands.Calls;
using ToolWear.Core.Ledger;
using ToolWear.Core.Tools;
using ToolWear.Wording;

namespace ToolWear.Commands.Evening;

/// <summary>rework: a tool was dressed, re-forged, straightened, welded or re-hardened.</summary>
internal static class ReworkVerb
{
    private static readonly Argument<ToolMark> Tool = Said.Tool();
    private static readonly Argument<Rework> What = Said.Word("WHAT", ToolReworked.WhatWords);
    private static readonly Option<string?> Gauge = Said.Text("--gauge", "G", "the gauge mark whose size it changed")
        .Offering(Offers.Gauges);
    private static readonly Option<string?> Before = Said.Text("--before", "SIZE", "the size there before");
    private static readonly Option<string?> After = Said.Text("--after", "SIZE", "the size there after");
    private static readonly Option<decimal?> Hours = Said.Amount("--hours", "H", "hours it took");
    private static readonly Option<decimal?> Cost = Said.Amount("--cost", "C", "what it cost besides");

    public static Verb Verb { get; } =
        new(
            "rework",
            "Records what you did to a tool, such as dressing it.",
            "rework HS2 dressed --gauge overall --before 188 --after 186.5",
            [Tool, What, Gauge, Before, After, Hours, Cost, Said.Note],
            Run,
            "Name the gauge mark whose size it changed: its wear is counted anew from the size after.\n"
                + Cautions.GrindingCaution
        );

    private static void Run(Call call)
    {
        call.ToWrite();
        ToolReworked rework = new(
            call.Mark(Tool),
            call.On,
            call.Get(What),
            call.Get(Gauge) is { } gauge ? call.Gauge(call.Get(Tool), gauge) : null,
            call.Size(Before),
            call.Size(After),
            call.Get(Hours),
            call.Get(Cost),
            call.Get(Said.Note)
        );
        call.Record(rework);
        if (rework.Gauge is not null && rework.After is null)
        {
            call.PrintLine($"its {rework.Gauge} counts anew from the next reading");
        }

        call.Warn(Cautions.StruckEndCaution);
        call.Warn(Cautions.OverheatedCaution);
        call.Warn(Cautions.GrindingCaution);
    }
}
