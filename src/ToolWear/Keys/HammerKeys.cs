using ToolWear.Core.Ledger;
using static ToolWear.Keys.KeyTable;

namespace ToolWear.Keys;

/// <summary>The keys of a session and of the morning after.</summary>
internal static class HammerKeys
{
    private static string WhatFindingsAre =>
        "At the end of each tool: what was found on it, then where. Any number can be entered. "
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
                Key(Act.Toggle, "Space", "take or leave", Need.Row)
                    .Help("Takes the tool for tonight, or leaves it on the rack. At most nine have a key."),
                Key(Act.Together, "t", "together", Need.Row)
                    .Help(
                        "Puts the tool into the set that works in one heat, such as drift and fuller, or takes it out."
                    ),
                Key(Act.Pattern, "p", "pattern", Need.Pattern)
                    .Help(
                        "Another pattern. The tools that its last session used are offered, else the ones to use next."
                    ),
                HandOver,
                Choose,
                Page,
                Back
            ),
            .. On(
                ScreenName.Hammer,
                Key(Act.Heat, "1-9", "heat", Need.Chosen, records: true)
                    .Help(
                        "Adds a heat to the row with that number. A row of twins gives each half a heat. It is on the disk before the figure changes."
                    ),
                Key(Act.Together, "Space", "set", Need.Set, records: true)
                    .Help("Adds a heat to every tool of the set."),
                Key(Act.Pedal, "pedal", "pedal", Need.Pedal, records: true)
                    .Help("A heat for the set, or for the one tool there is (shop page: pedal_key).") with
                {
                    Names = [],
                },
                Key(Act.Head, "a-f", "head", Need.Stage, records: true)
                    .Help(
                        "Counts a head through the stage with that letter. It is on the disk before the figure changes."
                    ),
                Key(Act.Close, "s", "close")
                    .Help(
                        "Ends the session: asks for heads by stage, fills in estimated heats where none were tallied."
                    ),
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
                    .Help("Takes the number and goes to the next; on the last one, closes the session."),
                Key(Act.Drop, "n", "leave the orders", Need.Asked, records: true)
                    .Help("Where orders are asked about: closes the session and leaves the orders as they are."),
                Choose,
                Key(Act.Back, "Esc", "go on forging").Help("Back to the hammer; the session stays open.")
            ),
            .. On(
                ScreenName.CaliperRound,
                Key(Act.Enter, "Enter", "skip", records: true)
                    .Help(
                        "Takes the size that was typed. An improbable one is asked about once; Enter again takes it. With nothing typed, skips this gauge mark. At the end of a tool, says that it was looked over and is sound; after a finding, goes to the next tool."
                    ),
                Key(Act.Find, "letter", "a finding", Need.InHand, records: true).Help(WhatFindingsAre),
                Key(Act.Part, "1-4", "where", Need.Asked, records: true).Help("Says where on the tool the finding is."),
                Key(Act.Who, "w", "who looks", Need.Hands).Help("Who looks: the next of the names on the shop page."),
                Key(Act.Move, "↑↓", "another tool", Need.Choice).Help("Takes another tool of the list into the hand."),
                Key(Act.Back, "Esc", "done")
                    .Help("Ends the round: shows the verdicts of the tools that were in the hand, then the rack.")
            ),
        ];
}
