using System.CommandLine;
using ToolWear.Commands.Calls;
using ToolWear.Core.Deeds;
using ToolWear.Core.Ledger;
using ToolWear.Core.Tools;
using ToolWear.Results.Tools;

namespace ToolWear.Commands.Evening;

/// <summary>look-over: records what was found when a tool was looked over.</summary>
internal static class LookOverVerb
{
    private static readonly Argument<ToolMark> Tool = Said.Tool();
    private static readonly Argument<Finding> Found = Said.Word("FINDING", ToolLookedOver.FindingWords);

    private static readonly Option<ToolPart?> Part = Said.Word(
        "--part",
        "PART",
        ToolLookedOver.PartWords,
        $"where: {string.Join(", ", ToolLookedOver.PartWords.All)}; where it is left out the strictest place counts"
    );

    public static Verb Verb { get; } =
        new(
            "look-over",
            "Records what you found when you looked a tool over.",
            "look-over H5 sound --by Ada",
            [Tool, Found, Part, Said.Looked, Said.Note],
            Run
        );

    private static void Run(Call call)
    {
        call.ToWrite();
        LookingOver deed = LookingOver.Of(
            call.Shop,
            new(call.Mark(Tool), call.On, call.Get(Found), call.Get(Said.Looked), call.Get(Said.Note), call.Get(Part))
        );
        call.Record(deed.Entry);
        if (deed.Doubt is { } doubt)
        {
            call.Warn(FindingWords.SaidOtherwise(deed.Entry.Tool, doubt));
        }

        call.Warn(FindingWords.Found(call.Shop, deed.Entry));
    }
}
