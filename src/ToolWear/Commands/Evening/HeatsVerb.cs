using System.CommandLine;
using ToolWear.Commands.Calls;
using ToolWear.Core.Deeds;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Tools;
using ToolWear.Results.Tools;

namespace ToolWear.Commands.Evening;

/// <summary>heats: adds heats to a tool.</summary>
internal static class HeatsVerb
{
    private static readonly Argument<ToolMark> Tool = Said.Tool();
    private static readonly Argument<Heats> Number = Said.Argument(
        "N",
        "how many heats, 0.5 to 1000",
        (it, text) => Said.HeatsOf(it, text).GetValueOrDefault()
    );
    private static readonly Option<Work?> Work = Said.Word(
        "--work",
        "WORK",
        Works.Words,
        $"{string.Join(", ", Works.Words.All)}; usually the tool's main work"
    );
    private static readonly Option<bool> Estimated = Said.Switch("--estimated", "they were not counted");

    public static Verb Verb { get; } =
        new(
            "heats",
            "Adds heats to a tool.",
            "heats H5 3 --work cheeks",
            [Tool, Number, Work, Said.Session, Estimated],
            Run,
            "They go to the open session, else to one of that day, which is opened for them."
        );

    private static void Run(Call call)
    {
        call.ToWrite();
        Working deed = Working.Of(
            call.Shop,
            call.Tool(Tool),
            call.Get(Number),
            call.Get(Work),
            call.Get(Estimated) ? HeatsHow.Estimated : HeatsHow.Counted,
            call.Get(Said.Session),
            call.SaidOn,
            call.Site.Today
        );
        long tool = call.Tool(Tool).Id;
        call.Record(deed.Entries);
        if (FindingWords.Against(call.Shop, call.Forecasts, tool) is { } against)
        {
            call.Warn(against);
        }

        if (deed.Opens is { } opened)
        {
            call.Warn($"session {opened.Session} was opened for them");
        }
    }
}
