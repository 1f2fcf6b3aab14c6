using System.CommandLine;
using ToolWear.Commands.Calls;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Tools;

namespace ToolWear.Commands.Evening;

/// <summary>rework: a tool was dressed, re-forged, straightened, welded or re-hardened.</summary>
internal static class ReworkVerb
{
    private static readonly Argument<string> Tool = Common.Mark();
    private static readonly Argument<string> What = new("WHAT")
    {
        Description = string.Join(", ", ToolReworked.WhatWords.All),
    };
    private static readonly Option<string?> Gauge = Common.Text("--gauge", "G", "the gauge mark whose size it changed");
    private static readonly Option<string?> Before = Common.Text("--before", "SIZE", "the size there before");
    private static readonly Option<string?> After = Common.Text("--after", "SIZE", "the size there after");
    private static readonly Option<string?> Hours = Common.Text("--hours", "H", "hours it took");
    private static readonly Option<string?> Cost = Common.Text("--cost", "C", "what it cost besides");
    private static readonly Option<string?> Note = Common.Text("--note", "TEXT", Words.HelpNote);

    public static Command Make(Site site) =>
        Common.Verb(
            site,
            "rework",
            "Records that a tool was dressed, re-forged, straightened, welded or re-hardened.",
            "rework HS2 dressed --gauge overall --before 188 --after 186.5",
            [Tool, What, Gauge, Before, After, Hours, Cost, Note],
            Run,
            "Name the gauge mark whose size it changed: its wear is counted anew from the size after.\n"
                + Words.GrindingCaution
        );

    private static void Run(Call call)
    {
        ToolMark mark = call.Mark(Tool);
        Rework what = Call.ReadWord(ToolReworked.WhatWords, call.Get(What));
        using Bench bench = call.ToWrite();
        Length? before = call.Size(bench.Shop, Before);
        Length? after = call.Size(bench.Shop, After);
        ToolReworked rework = new(
            mark,
            call.On,
            what,
            call.Get(Gauge),
            before,
            after,
            call.Amount(Hours),
            call.Amount(Cost),
            call.Note(Note)
        );
        call.Record(bench, rework);
        if (rework.Gauge is not null && rework.After is null)
        {
            call.PrintLine($"its {rework.Gauge} counts anew from the next reading");
        }

        call.Warn(Words.StruckEndCaution);
        call.Warn(Words.OverheatedCaution);
        call.Warn(Words.GrindingCaution);
    }
}
