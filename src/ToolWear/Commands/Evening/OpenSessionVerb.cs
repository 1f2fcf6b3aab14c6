using System.CommandLine;
using ToolWear.Commands.Calls;
using ToolWear.Core.Deeds;
using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;

namespace ToolWear.Commands.Evening;

/// <summary>open-session: begins a session at the hammer.</summary>
internal static class OpenSessionVerb
{
    private static readonly Option<string?> Pattern = Common.Text("--pattern", "P", "the pattern that is forged");
    private static readonly Option<string?> Lubricant = Common.Text(
        "--lubricant",
        "L",
        "the lubricant; else the usual"
    );
    private static readonly Option<string?> Cooling = Common.Text(
        "--cooling",
        "C",
        $"{string.Join(", ", Care.CoolingWords.All)}; else the usual"
    );
    private static readonly Option<string?> Blows = Common.Text("--blows", "N", "blows before the tool comes out");
    private static readonly Option<string?> Hand = Common.Text("--hand", "NAME", "who works");
    private static readonly Option<string?> Note = Common.Text("--note", "TEXT", Words.HelpNote);

    public static Command Make(Site site) =>
        Common.Verb(
            site,
            "open-session",
            "Begins a session at the hammer; heats go to it until it is closed.",
            "open-session --pattern hatchet",
            [Pattern, Lubricant, Cooling, Blows, Hand, Note],
            Run
        );

    private static bool IsBlind(Shop shop, string? pattern) =>
        pattern is not null && shop.Patterns[pattern].Stages.Any(stage => stage.Work is Work.Slitting or Work.Opening);

    private static void Run(Call call)
    {
        Care care = new(call.Name(Lubricant), call.Word(Care.CoolingWords, Cooling), call.Whole(Blows));
        string? pattern = call.Get(Pattern);
        using Bench bench = call.ToWrite();
        Shop shop = bench.Shop;
        if (pattern is not null && !shop.Patterns.ContainsKey(pattern))
        {
            string known = shop.Patterns.IsEmpty
                ? "none has been entered yet"
                : $"there are {string.Join(", ", shop.Patterns.Keys)}";
            throw RefusedException.WrongData($"there is no pattern {pattern}: {known}");
        }

        string name = SessionNames.Next(shop, call.On);
        SessionOpened opened = new(name, call.On, pattern, care, call.Name(Hand), call.Note(Note));
        call.Record(bench, opened);
        call.PrintLine($"session {name} is open");
        call.Warn(Words.HammerCaution);
        call.Warn(Words.AnySteelCaution);
        if (call.Get(Lubricant) is not null || IsBlind(shop, pattern))
        {
            call.Warn(Words.BlindHoleCaution);
        }
    }
}
