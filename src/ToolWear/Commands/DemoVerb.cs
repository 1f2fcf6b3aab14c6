using System.Collections.Immutable;
using System.CommandLine;
using ToolWear.Core.Ledger;
using ToolWear.Demo;

namespace ToolWear.Commands;

/// <summary>demo: the invented shop.</summary>
internal static class DemoVerb
{
    private static readonly Option<bool> NoScreens = new("--no-screens") { Description = "only build it" };

    public static Command Make(Site site) =>
        Common.Verb(
            site,
            "demo",
            "Builds a fresh demo: an invented shop whose last session lies a few days back.",
            "demo --no-screens --store demo.db",
            [NoScreens],
            Run
        );

    private static void Run(Call call)
    {
        if (!call.Has(NoScreens))
        {
            throw RefusedException.WrongUsage(
                "the screens are not built yet: demo --no-screens --store FILE builds the shop for the other verbs"
            );
        }

        string path = call.Get(Common.Store) is null
            ? throw RefusedException.WrongUsage("demo --no-screens wants --store FILE: the file to keep the demo in")
            : call.StorePath;
        if (File.Exists(path) || File.Exists(path + ".journal"))
        {
            throw RefusedException.WrongData($"{path} is there already: a demo goes into a new file");
        }

        ImmutableArray<LedgerEntry> entries = DemoShop.Entries(call.On);
        using Bench bench = call.ToWrite();
        // a demo of a later day than today holds days up to then
        ImportVerb.Into(bench, entries, call.On > call.Site.Today ? call.On : call.Site.Today);
        call.PrintLine(
            $"demo shop with {bench.Shop.Tools.Count} tools and {bench.Shop.Sessions.Count} sessions in {path}"
        );
    }
}
