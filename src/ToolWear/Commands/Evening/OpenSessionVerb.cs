using System.CommandLine;
using ToolWear.Commands.Calls;
using ToolWear.Core.Deeds;
using ToolWear.Core.Ledger;
using ToolWear.Core.Tools;
using ToolWear.Wording;

namespace ToolWear.Commands.Evening;

/// <summary>open-session: begins a session at the hammer.</summary>
internal static class OpenSessionVerb
{
    private static readonly Option<string?> Pattern = Said.Pattern("the pattern that is forged");
    private static readonly Option<string?> Lubricant = Said.Name("--lubricant", "L", "the lubricant; else the usual");
    private static readonly Option<Cooling?> Cooling = Said.Word(
        "--cooling",
        "C",
        Care.CoolingWords,
        $"{string.Join(", ", Care.CoolingWords.All)}; else the usual"
    );
    private static readonly Option<int?> Blows = Said.Whole("--blows", "N", "blows before the tool comes out");
    private static readonly Option<string?> Hand = Said.Name("--hand", "NAME", "who works");

    public static Verb Verb { get; } =
        new(
            "open-session",
            "Begins a session at the hammer.",
            "open-session --pattern hatchet",
            [Pattern, Lubricant, Cooling, Blows, Hand, Said.Note],
            Run,
            "Heats go to it until you close it."
        );

    private static bool IsBlind(PatternDescribed pattern) =>
        pattern.Stages.Any(stage => stage.Work is Work.Slitting or Work.Opening);

    private static void Run(Call call)
    {
        call.ToWrite();
        string? pattern = call.Get(Pattern);
        PatternDescribed? described = pattern is null ? null : Call.Named("pattern", call.Shop.Patterns, pattern);
        string name = SessionNames.Next(call.Shop, call.On);
        Care care = new(call.Get(Lubricant), call.Get(Cooling), call.Get(Blows));
        call.Record(new SessionOpened(name, call.On, pattern, care, call.Get(Hand), call.Get(Said.Note)));
        call.PrintLine($"session {name} is open");
        call.Warn(Cautions.HammerCaution);
        call.Warn(Cautions.AnySteelCaution);
        if (call.Has(Lubricant) || (described is not null && IsBlind(described)))
        {
            call.Warn(Cautions.BlindHoleCaution);
        }
    }
}
