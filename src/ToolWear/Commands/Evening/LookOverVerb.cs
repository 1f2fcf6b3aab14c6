using System.CommandLine;
using ToolWear.Commands.Calls;
using ToolWear.Core.Deeds;
using ToolWear.Core.Ledger;
using ToolWear.Core.Tools;
using ToolWear.Wording;

namespace ToolWear.Commands.Evening;

/// <summary>look-over: records what was found when a tool was looked over.</summary>
internal static class LookOverVerb
{
    private static readonly Argument<ToolMark> Tool = Said.Tool();
    private static readonly Argument<Finding> Found = Said.Word("FINDING", ToolLookedOver.FindingWords);

    public static Verb Verb { get; } =
        new(
            "look-over",
            "Records what was found when a tool was looked over.",
            "look-over H5 sound --by Ada",
            [Tool, Found, Said.Looked, Said.Note],
            Run
        );

    private static void Run(Call call)
    {
        Finding finding = call.Get(Found);
        call.Record(new ToolLookedOver(call.Get(Tool), call.On, finding, call.Get(Said.Looked), call.Get(Said.Note)));
        call.Warn(Cautions.FindingCaution);
        if (LookingOver.MayBeOverheated(finding))
        {
            call.Warn(Cautions.OverheatedCaution);
        }
    }
}
