using System.Collections.Immutable;
using System.CommandLine;
using ToolWear.Commands.Calls;
using ToolWear.Core.Ledger;
using ToolWear.Demo;
using ToolWear.Doors;

namespace ToolWear.Commands.Files;

/// <summary>demo: the invented shop.</summary>
internal static class DemoVerb
{
    private static readonly Option<bool> NoScreens = Said.Switch("--no-screens", "only build it");

    public static Verb Verb { get; } =
        new(
            "demo",
            "Opens the screens on an invented shop, to try things out.",
            "demo --no-screens --store demo.db",
            [NoScreens],
            Run,
            "Its last session lies a few days back. The shop is gone at the end: --store FILE keeps it, --no-screens only builds it."
        );

    private static void Run(Call call)
    {
        bool isKept = call.Has(Said.Store);
        if (!isKept && call.Get(NoScreens))
        {
            throw RefusedException.WrongUsage("demo --no-screens needs --store FILE: the file to keep the demo in");
        }

        if (isKept)
        {
            Build(call);
        }

        call.ExitCode =
            call.Get(NoScreens) ? 0
            : isKept ? Screens.Running.Evening.Run(call.Site, call.StorePath, call.On)
            : Screens.Running.Evening.RunDemo(call.Site, call.On);
    }

    private static void Build(Call call)
    {
        string path = call.StorePath;
        if (File.Exists(path) || File.Exists(path + ".journal"))
        {
            throw RefusedException.WrongData($"{path} is there already: a demo goes into a new file");
        }

        ImmutableArray<LedgerEntry> entries = DemoShop.Entries(call.On);
        using Bench bench = Bench.ToWrite(call.Site, path);
        // a demo of a later day than today holds days up to then
        ImportVerb.Into(bench, entries, call.On > call.Site.Today ? call.On : call.Site.Today);
        call.PrintLine(
            $"demo shop with {bench.Shop.Tools.Count} tools and {bench.Shop.Sessions.Count} sessions in {path}"
        );
    }
}
