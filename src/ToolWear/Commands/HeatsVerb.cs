using System.CommandLine;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;

namespace ToolWear.Commands;

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
        string session = call.Get(Session) ?? SessionOf(call, bench, on);
        call.Record(bench, new HeatsWorked(session, mark, named ?? tool.Tool.MainWork, heats, how));
    }

    private static string SessionOf(Call call, Bench bench, DateOnly on)
    {
        if (bench.Shop.OpenSession is { } open && (open.On == on || call.Get(Common.On) is null))
        {
            return open.Name;
        }

        if (bench.Shop.SessionsOn(on).LastOrDefault() is { } last)
        {
            return last.Name;
        }

        string name = SessionNames.Next(bench.Shop, on);
        Recorded opened = bench.Record(new SessionOpened(name, on, null, Care.Usual, null, null));
        call.Warn(
            opened.Number is { } number
                ? $"session {name} opened, entry {number}"
                : throw RefusedException.WrongData(opened.Refusal!)
        );
        return name;
    }
}
