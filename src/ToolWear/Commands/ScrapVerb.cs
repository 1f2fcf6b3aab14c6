using System.CommandLine;
using ToolWear.Core.Ledger;
using ToolWear.Core.Tools;

namespace ToolWear.Commands;

/// <summary>scrap: a tool is done, or was made into another.</summary>
internal static class ScrapVerb
{
    private static readonly Argument<string> Tool = Common.Mark();
    private static readonly Argument<string> Cause = new("CAUSE")
    {
        Description = string.Join(", ", ToolScrapped.CauseWords.All),
    };
    private static readonly Option<string?> Into = Common.Text("--into", "TOOL", "the tool it was made into");
    private static readonly Option<string?> Note = Common.Text("--note", "TEXT", Words.HelpNote);

    public static Command Make(Site site) =>
        Common.Verb(
            site,
            "scrap",
            "Records that a tool is done, or was made into another one that has been added.",
            "scrap H1 worn",
            [Tool, Cause, Into, Note],
            Run
        );

    private static void Run(Call call)
    {
        ToolMark mark = call.Mark(Tool);
        ScrapCause cause = Call.ReadWord(ToolScrapped.CauseWords, call.Get(Cause));
        ToolMark? into = call.Get(Into) is { } text ? Call.ReadMark(text) : null;
        using Bench bench = call.ToWrite();
        call.Record(bench, new ToolScrapped(mark, call.On, cause, into, call.Note(Note)));
    }
}
