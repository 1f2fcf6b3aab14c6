using System.CommandLine;
using ToolWear.Commands.Calls;
using ToolWear.Core.Ledger;
using ToolWear.Core.Tools;

namespace ToolWear.Commands.Evening;

/// <summary>look-over: records what was found when a tool was looked over.</summary>
internal static class LookOverVerb
{
    private static readonly Argument<string> Tool = Common.Mark();
    private static readonly Argument<string> Found = new("FINDING")
    {
        Description = string.Join(", ", ToolLookedOver.FindingWords.All),
    };
    private static readonly Option<string?> By = Common.Text("--by", "NAME", "who looked");
    private static readonly Option<string?> Note = Common.Text("--note", "TEXT", Words.HelpNote);

    public static Command Make(Site site) =>
        Common.Verb(
            site,
            "look-over",
            "Records what was found when a tool was looked over.",
            "look-over H5 sound --by Ada",
            [Tool, Found, By, Note],
            Run
        );

    private static void Run(Call call)
    {
        ToolMark mark = call.Mark(Tool);
        Finding finding = Call.ReadWord(ToolLookedOver.FindingWords, call.Get(Found));
        using Bench bench = call.ToWrite();
        call.Record(bench, new ToolLookedOver(mark, call.On, finding, call.Name(By), call.Note(Note)));
        call.Warn(Words.FindingCaution);
        if (finding is Finding.Soft or Finding.GlassHard or Finding.Stuck or Finding.Cracked)
        {
            call.Warn(Words.OverheatedCaution);
        }
    }
}
