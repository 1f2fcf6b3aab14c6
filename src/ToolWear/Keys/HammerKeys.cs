using ToolWear.Core.Ledger;
using static ToolWear.Keys.KeyTable;

namespace ToolWear.Keys;

/// <summary>The keys of a session and of the morning after.</summary>
internal static class HammerKeys
{
    private static string WhatFindingsAre =>
        "At the end of each tool: what was found on it, then where. Any number of findings can be added. "
        + string.Join(", ", FindingKeys.Zip(ToolLookedOver.FindingWords.All, (key, word) => $"{key} {word}"));

    public static KeyRow[] All() => [.. Tonight(), .. MorningAfter()];

    private static KeyRow[] Tonight() =>
        [
            .. On(
                ScreenName.Choosing,
                Key(Act.Enter, "Enter", "begin", Need.Chosen, records: true)
                    .Help("Opens the session with what is chosen."),
                Key(Act.Heat, "1-9", "begin with a heat", Need.Chosen, records: true)
                    .Help("Opens the session with what is chosen and adds the first heat to that row."),
                Key(Act.Toggle, "Space", "choose", Need.Row)
                    .Help("Puts the tool at the hammer for tonight, or back on the rack. At most nine have a key."),
                Key(Act.Together, "t", "together", Need.Row)
                    .Help(
                        "Puts the tool into the set that works in one heat, such as drift and fuller, or takes it out again."
                    ),
                Key(Act.Pattern, "p", "pattern", Need.Pattern)
                    .Help(
                        "Chooses another pattern, and offers the tools of its last session, else the ones to use next."
                    ),
                Key(Act.Day, "e", "day, lubricant", Need.NewSession)
                    .Help("Asks for the day of the session, its lubricant, cooling and blows, and who works."),
                HandOver,
                ChooseOrWord,
                Page,
                Back
            ),
            .. On(
                ScreenName.Hammer,
                Key(Act.Heat, "1-9", "heat", Need.Chosen, records: true)
                    .Help(
                        "Adds a heat to the row with that number. A row of twins gives each half a heat. It is saved before the figure changes."
                    ),
                Key(Act.Together, "Space", "set", Need.Set, records: true)
                    .Help("Adds a heat to every tool of the set."),
                Key(Act.Pedal, "pedal", "pedal", Need.Pedal, records: true)
                    .Help("A heat for the set, or for the one tool there is (shop page: pedal_key).") with
                {
                    Names = [],
                },
                Key(Act.Head, "a-f", "head", Need.Stage, records: true)
                    .Help("Counts a head through the stage with that letter. It is saved before the figure changes."),
                Key(Act.Close, "s", "close")
                    .Help("Ends the session: asks for heads by stage, and estimates the heats that nobody tallied."),
                Key(Act.Toggle, "t", "tools").Help("Changes the tools of tonight; the session goes on."),
                HandOver,
                Key(Act.Back, "Esc", "rack").Help("Goes to the rack; the session stays open.")
            ),
        ];

    private static KeyRow[] MorningAfter() =>
        [
            .. On(ScreenName.HandOver, Scroll, Page, Back),
            .. On(
                ScreenName.Closing,
                Key(Act.Enter, "Enter", "close", records: true)
                    .Help("Saves the number and goes to the next. On the last one it closes the session."),
                Key(Act.Drop, "n", "leave the orders", Need.Asked, records: true)
                    .Help(
                        "At a question: closes the session with the tally as it is, or leaves the orders as they are."
                    ),
                Choose,
                Key(Act.Back, "Esc", "go on forging").Help("Back to the hammer; the session stays open.")
            ),
            .. On(
                ScreenName.CaliperRound,
                Key(Act.Enter, "Enter", "skip", records: true)
                    .Help(
                        "Saves the size you typed. It asks once about an unlikely one; press Enter again to save it. With nothing typed it skips this gauge mark. At the end of a tool it records that you looked it over and it is sound; after a finding it goes to the next tool."
                    ),
                Key(Act.Find, "letter", "a finding", Need.InHand, records: true).Help(WhatFindingsAre),
                Key(Act.Part, "1-4", "where", Need.Asked, records: true).Help("Says where on the tool the finding is."),
                Key(Act.Who, "w", "who looks", Need.Hands).Help("Who looks: the next of the names on the shop page."),
                Key(Act.Move, "↑↓", "another tool", Need.Choice).Help("Selects another tool of the list."),
                Key(Act.Back, "Esc", "done")
                    .Help("Ends the round: shows the verdicts of the tools you measured, then the rack.")
            ),
        ];
}
