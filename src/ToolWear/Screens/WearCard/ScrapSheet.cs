using System.Collections.Immutable;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Core.Wear;
using ToolWear.Pens;
using ToolWear.Screens.Drawing;
using ToolWear.Screens.Guided;

namespace ToolWear.Screens.WearCard;

/// <summary>A tool that is being scrapped; what it could still be made into stands below.</summary>
internal sealed class ScrapSheet : GuidedEntry
{
    private const int Cause = 0;
    private const int Into = 1;
    private const int Note = 2;

    private readonly ToolInShop tool;

    /// <summary>Begins to scrap a tool.</summary>
    /// <param name="tool">The tool.</param>
    /// <param name="into">What it could be made into; null where nothing can be said.</param>
    /// <param name="units">The unit for people.</param>
    public ScrapSheet(ToolInShop tool, MadeInto? into, LengthUnit units)
        : base(new GuidedLine(Questions))
    {
        this.tool = tool;
        Below = into is null ? "" : string.Join('\n', Offers(into, units));
        Guided.Offer(Cause, ToolScrapped.CauseWords.Word(ScrapCause.Worn));
    }

    /// <inheritdoc />
    public override string Heading => Words.ScrapHeading(tool.Mark);

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
            || !sitting.Record(new ToolScrapped(tool.Mark, sitting.Today, cause, into, read.Text(Note)))
        )
        {
            return false;
        }

        sitting.Say(Words.ScrappedNow(tool.Mark), Ink.Done);
        return true;
    }

    private static IEnumerable<string> Offers(MadeInto into, LengthUnit units) =>
        EyeText
            .Cautions(into)
            .Concat(
                into.Offers.IsEmpty
                    ? into.Never is null
                        ? [EyeText.HoldsNothing]
                        : Array.Empty<string>()
                    :
                    [
                        $"{EyeText.CouldBecome}:",
                        .. into.Offers.Take(4).Select(offer => Words.OfferInWords(offer, units)),
                        Words.MadeIntoHow,
                    ]
            );

    private static ImmutableArray<Question> Questions { get; } =
    [
        new("Cause", Words.AskCause, ToolScrapped.CauseWords.All),
        new("Made into", Words.AskInto, []),
        new("Note", Words.AskNote, []),
    ];
}
