using System.CommandLine;
using ToolWear.Commands.Calls;
using ToolWear.Core.Deeds;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;

namespace ToolWear.Commands.Evening;

/// <summary>heats: adds heats to a tool.</summary>
internal static class HeatsVerb
{
    private static readonly Argument<string> Tool = Common.Mark();
    private static readonly Argument<string> Number = new("N") { Description = "how many heats, 0.5 to 1000" };
    private static readonly Option<string?> Work = Common.Text(
        "--work",
        "WORK",
        $"{string.Join(", ", Works.Words.All)}; usually the tool's main work"
    );
    private static readonly Option<string?> Session = Common.Text("--session", "SESSION", Words.HelpSession);
    private static readonly Option<bool> Estimated = new("--estimated") { Description = "they were not counted" };

    public static Command Make(Site site) =>
        Common.Verb(
            site,
            "heats",
            "Adds heats to a tool, in the open session, else in one of that day, which it opens.",
            "heats H5 3 --work cheeks",
            [Tool, Number, Work, Session, Estimated],
            Run
        );

    private static void Run(Call call)
    {
        Heats heats = Call.ReadHeats(call.Get(Number));
        ToolMark mark = call.Mark(Tool);
        Work? named = call.Word(Works.Words, Work);
        HeatsHow how = call.Has(Estimated) ? HeatsHow.Estimated : HeatsHow.Counted;
        DateOnly on = call.On;
        using Bench bench = call.ToWrite();
        ToolInShop tool = Call.Find(bench.Shop, mark);
        string? known = call.Get(Session) ?? SessionOf(call, bench.Shop, on);
        string session = known ?? SessionNames.Next(bench.Shop, on);
        HeatsWorked worked = new(session, mark, named ?? tool.Tool.MainWork, heats, how);
        if (known is not null)
        {
            call.Record(bench, worked);
            return;
        }

        // both or none: no session is left behind that nobody opened
        call.Record(bench, new SessionOpened(session, on, null, Care.Usual, null, null), worked);
        call.Warn($"session {session} was opened for them");
    }

    /// <summary>The open session, else the last of that day; null where there is none.</summary>
    private static string? SessionOf(Call call, Shop shop, DateOnly on) =>
        shop.OpenSession is { } open && (open.On == on || call.Get(Common.On) is null)
            ? open.Name
            : shop.SessionsOn(on).LastOrDefault()?.Name;
}
