using System.Collections.Immutable;
using ToolWear.Core.Findings;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Core.Wear;
using ToolWear.Pens;
using ToolWear.Results.Eyes;
using ToolWear.Screens.Guided;

namespace ToolWear.Screens.WearCard;

/// <summary>A tool that is being scrapped; what it could still be made into stands below.</summary>
internal sealed class ScrapSheet : GuidedEntry
{
    private const string AskNote = "A note, or nothing.";
    private const string AskCause =
        "What ended it: worn, cracked, broken, bent, soft, glass-hard, lost, made-into, other. Type the first letters, or use the arrows.";
    private const string AskInto =
        "Only with made-into: the mark of the new tool, which is there already. Otherwise leave it empty.";
    private const string MadeIntoHow = "To do so: Esc, d, make into.";

    private const int Cause = 0;
    private const int Part = 1;
    private const int LedTo = 2;
    private const int Into = 3;
    private const int Note = 4;

    private readonly ToolInShop tool;

    /// <summary>Begins to scrap a tool.</summary>
    /// <param name="tool">The tool.</param>
    /// <param name="into">What it could be made into; null where nothing can be said.</param>
    /// <param name="units">The unit for people.</param>
    /// <param name="shop">The shop, whose open findings propose cause and place.</param>
    public ScrapSheet(ToolInShop tool, MadeInto? into, LengthUnit units, Shop shop)
        : base(new GuidedLine(Questions))
    {
        this.tool = tool;
        Below = into is null ? "" : string.Join('\n', Offers(into, units));
        ToolLookedOver? found = LookedOver.Of(shop, tool).Forbids?.Found;
        Guided.Offer(
            Cause,
            ToolScrapped.CauseWords.Word(found is null ? ScrapCause.Worn : FindingTable.CauseOf(found.Finding))
        );
        Guided.Offer(Part, found?.Part is { } part ? ToolLookedOver.PartWords.Word(part) : "");
    }

    /// <inheritdoc />
    public override string Heading => ScrapHeading(tool.Mark);

    /// <inheritdoc />
    public override string Below { get; }

    /// <inheritdoc />
    public override bool Take(AnswersRead read, Sitting sitting)
    {
        ScrapCause cause = read.Word(Cause, ToolScrapped.CauseWords) ?? ScrapCause.Other;
        ToolMark? into = null;
        if (read.Text(Into) is { } text)
        {
            if (ToolMark.TryParse(text, out ToolMark mark, out string refusal))
            {
                into = mark;
            }
            else
            {
                read.Refuse(Into, refusal);
            }
        }

        if (
            read.Refusal is not null
            || !sitting.Record(
                new ToolScrapped(
                    tool.Mark,
                    sitting.Today,
                    cause,
                    into,
                    read.Text(Note),
                    read.Word(Part, ToolLookedOver.PartWords),
                    read.Word(LedTo, ToolScrapped.LedToWords)
                )
            )
        )
        {
            return false;
        }

        sitting.Say(EyeWords.ScrappedNow(tool.Mark), Ink.Done);
        return true;
    }

    private static IEnumerable<string> Offers(MadeInto into, LengthUnit units) =>
        EyeText
            .CautionsOf(into)
            .Concat(
                into.Offers.IsEmpty
                    ? into.Never is null
                        ? [EyeText.HoldsNothing]
                        : Array.Empty<string>()
                    :
                    [
                        $"{EyeText.CouldBecome}:",
                        .. into.Offers.Take(4).Select(offer => EyeWords.OfferInWords(offer, units)),
                        MadeIntoHow,
                    ]
            );

    private static ImmutableArray<Question> Questions { get; } =
    [
        new("Cause", AskCause, ToolScrapped.CauseWords.All),
        new("Where", AskPart, ToolLookedOver.PartWords.All),
        new("Led to it", AskLedTo, ToolScrapped.LedToWords.All),
        new("Made into", AskInto, []),
        new("Note", AskNote, []),
    ];

    private const string AskPart =
        "Where it failed: struck end, body, working end, handle; type the first letter. Empty: not known.";

    private const string AskLedTo =
        "What led to it: l left in too long, w water on hot steel, m missed blow, s struck cold, h poor heat treatment, n not known.";

    private static string ScrapHeading(Core.Tools.ToolMark tool) => $"Scrap {tool}";
}
