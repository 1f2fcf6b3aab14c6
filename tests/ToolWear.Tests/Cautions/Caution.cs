using System.Collections.Immutable;
using System.Text.RegularExpressions;

namespace ToolWear.Tests.Cautions;

/// <summary>A caution of the trade and every place where it stands; it stands nowhere else.</summary>
/// <param name="Name">The caution in a few words.</param>
/// <param name="Phrase">What is found wherever it stands, in its long form and in its short one.</param>
/// <param name="Screens">The screens.</param>
/// <param name="Sheets">The printed sheets.</param>
/// <param name="Commands">The commands that print it with their text, or say it when they record.</param>
internal sealed record Caution(
    string Name,
    Regex Phrase,
    ImmutableArray<string> Screens,
    ImmutableArray<string> Sheets,
    ImmutableArray<string> Commands
)
{
    /// <summary>The table "Cautions, and where they appear" of trade.md, row by row. Common practice, no source.</summary>
    public static ImmutableArray<Caution> All { get; } =
    [
        new(
            "heats left: an estimate, not a go-ahead",
            Of("estimate, no"),
            [
                "tool rack",
                "wear card: chart",
                "wear card: words",
                "forge list",
                "forge list: a supposed one beside it",
                "hand-over",
                "shop",
                "shop: lubricant",
            ],
            ["rack", "card", "forge list", "hand-over"],
            ["card", "forecast", "forge-list", "guide", "lifetimes", "plan", "pull-early", "rack", "settings"]
        ),
        new(
            "not looked over since its last heat: look it over",
            Of("(?<!\")look it over(?! later)"),
            ["tool rack", "at the hammer: choosing"],
            ["rack"],
            ["rack"]
        ),
        new(
            "no mushroomed, chipped, cracked or loose-handled tool in use",
            Of(@"1926\.301\(c\)"),
            [
                "caliper round: what was found",
                "caliper round: found cracked",
                "caliper round: found stuck",
                "a tool is back",
            ],
            [],
            ["look-over", "look-over mushroomed", "look-over soft"]
        ),
        new(
            "struck end soft, chamfered, square",
            Of("hard face on a hard face"),
            ["adding a tool", "re-forge or scrap", "what was done to a tool"],
            [],
            ["add-tool", "costs", "rework"]
        ),
        new(
            "tongs or rod, beside the body; under the raised ram; power off before touching dies",
            Of("tongs or rod"),
            ["at the hammer: choosing", "hand-over", "adding a tool"],
            ["hand-over"],
            ["add-tool", "open-session", "open-session --lubricant"]
        ),
        new(
            "water, and the first blow, by steel",
            Of("No water on|only when black"),
            ["at the hammer: choosing", "hand-over"],
            ["hand-over"],
            ["open-session", "open-session --lubricant"]
        ),
        new(
            "an over-heated air-hardening tool is brittle until tempered",
            Of("brittle until tempered"),
            ["caliper round: found stuck", "re-forge or scrap", "what was done to a tool"],
            [],
            ["costs", "look-over soft", "rework"]
        ),
        new(
            "blind holes: little lubricant, dry, lift out often",
            Of("Blind holes"),
            ["at the hammer: choosing", "hand-over", "a stage that slits or opens", "shop: lubricant"],
            ["hand-over"],
            ["open-session --lubricant", "set lubricant", "slit"]
        ),
        new(
            "measure cold; black is not cold",
            Of("black is not cold"),
            ["caliper round"],
            [],
            ["measure", "to-measure"]
        ),
        new(
            "grinding, plated scrap, welding fume, unknown steel",
            Of("Grinding: guard"),
            [
                "wear card: words",
                "scrapping, with what it could be made into",
                "re-forge or scrap",
                "what was done to a tool",
            ],
            ["card"],
            ["card", "costs", "make-into", "rework"]
        ),
        new(
            "every head's handle fit is checked by hand",
            Of("handle by hand|Too tight an eye"),
            [
                "tool rack",
                "wear card: chart",
                "wear card: words",
                "eyes and handles",
                "an eye or a handle",
                "series of an eye",
            ],
            ["rack", "card"],
            ["card", "drive-depth", "eye", "eyes", "quote", "rack", "series"]
        ),
        new(
            "carbon monoxide, noise, hot metal underfoot, nobody alone",
            Of("Carbon monoxide"),
            ["first start", "shop", "shop: lubricant"],
            [],
            ["settings"]
        ),
    ];

    /// <summary>Whether it stands in a text.</summary>
    /// <param name="text">The text in one line.</param>
    /// <returns>True where it does.</returns>
    public bool StandsIn(string text) => Phrase.IsMatch(text);

    /// <summary>Its row in the table for contributors.</summary>
    public string Row => $"| {Name} | {List(Screens)} | {List(Sheets)} | {List(Commands)} |";

    private static string List(ImmutableArray<string> places) => places.IsEmpty ? "-" : string.Join("; ", places);

    private static Regex Of(string phrase) => new(phrase, RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant);
}
