using System.CommandLine;
using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;

namespace ToolWear.Commands;

/// <summary>close-session: ends the open session.</summary>
internal static class CloseSessionVerb
{
    private static readonly Option<string?> Heads = Common.Text("--heads", "N", "heads finished");

    public static Command Make(Site site) =>
        Common.Verb(
            site,
            "close-session",
            "Ends the open session; says which tools want looking over and measuring once cold.",
            "close-session --heads 6",
            [Heads],
            Run
        );

    private static void Run(Call call)
    {
        int? heads = call.Whole(Heads);
        using Bench bench = call.ToWrite();
        Session open =
            bench.Shop.OpenSession
            ?? throw RefusedException.WrongData("no session is open: open one with open-session");
        call.Record(bench, new SessionClosed(open.Name, heads));
        string[] used =
        [
            .. bench
                .Shop.Tools.Values.Where(tool =>
                    tool.Events.Exists(each => each.What is HeatsWorked heats && heats.Session == open.Name)
                )
                .Select(tool => tool.Mark.Text),
        ];
        call.PrintLine($"session {open.Name} is closed");
        call.PrintLine(
            used.Length == 0
                ? "no tool worked in it"
                : $"to look over, and to measure once cold: {string.Join(", ", used)}"
        );
        call.Warn(Words.MeasureCaution);
        foreach (string trouble in bench.BackUp())
        {
            call.Warn(trouble);
        }
    }
}
