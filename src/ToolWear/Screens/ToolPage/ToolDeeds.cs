using System.Collections.Immutable;
using ToolWear.Core.Deeds;
using ToolWear.Core.Findings;
using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Core.Wear;
using ToolWear.Results.Tools;
using ToolWear.Screens.Guided;
using ToolWear.Screens.ToolTable;
using ToolWear.Screens.WearCard;
using ToolWear.Wording;

namespace ToolWear.Screens.ToolPage;

/// <summary>Something that can be done to a tool now.</summary>
/// <param name="Words">What it is called: "dress".</param>
/// <param name="Does">What it does, or why a finding or the verdict asks for it.</param>
/// <param name="IsWanted">Whether a finding or the verdict asks for it.</param>
/// <param name="Begin">Begins it.</param>
internal sealed record ToolDeed(string Words, string Does, bool IsWanted, Func<GuidedEntry> Begin);

/// <summary>Everything that can be done to one tool, first what its open findings and its verdict ask for.</summary>
internal static class ToolDeeds
{
    private const string MakeInto = "make into";
    private const string LookOver = "look over";
    private const string Scrap = "scrap";
    private const string Why = "Why, in a few words, or nothing.";
    private const string Restores = "brings it back on size";

    private static readonly ImmutableArray<(Rework What, string Words, string Does)> Reworks =
    [
        (Rework.Dressed, "dress", "grind or file the edge, face or struck end"),
        (Rework.Reforged, "re-forge", Restores),
        (Rework.Straightened, "straighten", "takes the bow or twist out"),
        (Rework.Welded, "weld up", Restores),
        (Rework.Rehardened, "re-harden", "harden and temper it again"),
        (Rework.Tempered, "temper", "temper it only"),
        (Rework.Rehandled, "re-handle", "a new handle or wedge"),
    ];

    /// <summary>The deeds.</summary>
    /// <param name="sitting">The sitting.</param>
    /// <param name="tool">The tool; not scrapped.</param>
    /// <returns>What a finding or the verdict asks for, the worst first, then the others.</returns>
    public static ImmutableArray<ToolDeed> Of(Sitting sitting, ToolInShop tool)
    {
        ImmutableArray<ToolDeed> all = [.. All(sitting, tool)];
        Dictionary<string, string> wanted = [];
        foreach ((string deed, string why) in Wanted(sitting, tool))
        {
            wanted.TryAdd(deed, why);
        }

        return
        [
            .. wanted.SelectMany(each =>
                all.Where(deed => deed.Words == each.Key)
                    .Select(deed => deed with { Does = each.Value, IsWanted = true })
            ),
            .. all.Where(deed => !wanted.ContainsKey(deed.Words)),
        ];
    }

    private static IEnumerable<(string Deed, string Why)> Wanted(Sitting sitting, ToolInShop tool)
    {
        ImmutableArray<OpenFinding> findings = [.. LookedOver.Of(sitting.Shop, tool).Open];
        foreach (OpenFinding open in findings)
        {
            string why = $"{open.Words}: {open.How}";
            foreach (Rework by in open.Next?.By ?? [])
            {
                yield return (Reworks[(int)by].Words, why);
            }

            if (open is { Next: null, Rule.Verdict: Verdict.Out })
            {
                yield return (Scrap, why);
            }
        }

        // what its wear alone would ask for brings nothing back that is out: no cracked tool is re-forged
        if (findings.Any(open => open.Rule.Verdict == Verdict.Out))
        {
            yield break;
        }

        foreach (Reason reason in sitting.Forecasts?.VerdictOf(tool.Id)?.Reasons ?? [])
        {
            foreach (string deed in AskedBy(reason.Verdict, tool.Tool.Form))
            {
                yield return (deed, reason.Why);
            }
        }
    }

    private static ImmutableArray<string> AskedBy(Verdict verdict, ToolForm form) =>
        verdict switch
        {
            Verdict.PastItsLimit or Verdict.NearItsLimit => form.DressedAfter is null
                ? [Reworks[(int)Rework.Reforged].Words, MakeInto]
                : [Reworks[(int)Rework.Dressed].Words],
            Verdict.LookItOver => [LookOver],
            _ => [],
        };

    private static IEnumerable<ToolDeed> All(Sitting sitting, ToolInShop tool)
    {
        MadeInto? into = sitting.Forecasts?.Find(tool.Id) is { } forecast
            ? MadeInto.Of(sitting.Forecasts, forecast)
            : null;
        return
        [
            .. Reworks.Select(each => new ToolDeed(
                each.Words,
                each.Does,
                false,
                () => new ReworkSheet(sitting, tool, each.What)
            )),
            new(LookOver, "what you found on it, and where", false, () => LookingItOver(sitting, tool.Mark)),
            .. Standing(tool, tool.Mark, sitting.Today),
            new(
                MakeInto,
                "re-work it into another tool, with a mark of its own",
                false,
                () => new ToolSheet(sitting, tool, into)
            ),
            new(
                Scrap,
                "what ended it; it leaves the rack for good",
                false,
                () => new ScrapSheet(tool, into, sitting.Units, sitting.Shop)
            ),
            Deed(
                "re-mark",
                "another mark; it keeps its history",
                tool.Mark,
                [new("New mark", "The mark it bears now.", [])],
                read => Remarked(read, tool.Mark),
                "bears its new mark now."
            ),
            Simple(
                "start here",
                "count its wear from the next reading on",
                tool.Mark,
                "Why",
                why => new ToolStartedHere(tool.Mark, why),
                "starts here: its wear counts from the next reading on."
            ),
            .. CorrectionSheets.Of(sitting, tool),
        ];
    }

    private static IEnumerable<ToolDeed> Standing(ToolInShop tool, ToolMark mark, DateOnly today) =>
        tool switch
        {
            { Lent: { } lent } =>
            [
                Simple(
                    "take back",
                    $"it is lent to {lent.To}",
                    mark,
                    "Note",
                    why => new ToolTakenBack(mark, today, why),
                    "is back. Look it over before it is used."
                ),
            ],
            { State: ToolState.SetAside } =>
            [
                Simple(
                    "bring back",
                    "put it on the rack again",
                    mark,
                    "Why",
                    why => new ToolBroughtBack(mark, today, why),
                    "is back on the rack."
                ),
            ],
            _ =>
            [
                Simple(
                    "set aside",
                    "it leaves the rack until you bring it back",
                    mark,
                    "Why",
                    why => new ToolSetAside(mark, today, why),
                    "is set aside. Bring it back from the stock-take (k, then d)."
                ),
                Deed(
                    "lend",
                    "who has it",
                    mark,
                    [new("Lent to", "Who has it.", []), new("Note", "A note, or nothing.", [])],
                    read => new ToolLent(mark, today, read.Text(0) ?? "", read.Text(1)),
                    "is lent."
                ),
            ],
        };

    private static ToolRemarked Remarked(AnswersRead read, ToolMark mark)
    {
        if (!ToolMark.TryParse(read.Text(0) ?? "", out ToolMark to, out string refusal))
        {
            read.Refuse(0, refusal);
        }

        return new(mark, to);
    }

    private static ToolDeed Simple(
        string words,
        string does,
        ToolMark mark,
        string asked,
        Func<string?, LedgerEntry> entry,
        string said
    ) => Deed(words, does, mark, [new(asked, Why, [])], read => entry(read.Text(0)), said);

    private static ToolDeed Deed(
        string words,
        string does,
        ToolMark mark,
        ImmutableArray<Question> questions,
        Func<AnswersRead, LedgerEntry> entry,
        string said
    ) =>
        new(
            words,
            does,
            false,
            () => new DeedSheet($"{mark}: {words}", "", questions, read => (entry(read), null), _ => $"{mark} {said}")
        );

    private static DeedSheet LookingItOver(Sitting sitting, ToolMark mark)
    {
        ImmutableArray<Question> questions =
        [
            new("Found", "What you found. Type the first letters, or use the arrows.", ToolLookedOver.FindingWords.All),
            new("Where", "Where on the tool; empty counts as the strictest place.", ToolLookedOver.PartWords.All),
            new("By", "Who looked, or nothing.", sitting.Shop.Settings.Hands),
            new("Note", "A note, or nothing.", []),
        ];
        return new(
            $"{mark}: {LookOver}",
            Cautions.FindingCaution,
            questions,
            read =>
            {
                if (read.Text(0) is null)
                {
                    read.Refuse(0, "Type what you found, such as sound or mushroomed.");
                }

                ToolLookedOver said = new(
                    mark,
                    sitting.Today,
                    read.Word(0, ToolLookedOver.FindingWords) ?? Finding.Sound,
                    read.Text(2),
                    read.Text(3),
                    read.Word(1, ToolLookedOver.PartWords)
                );
                return (
                    said,
                    LookingOver.Of(sitting.Shop, said).Doubt is { } doubt
                        ? $"{FindingWords.SaidOtherwise(mark, doubt)} {FindingWords.OnceMore}"
                        : null
                );
            },
            said => FindingWords.Found(sitting.Shop, (ToolLookedOver)said, isShort: true)
        );
    }
}
