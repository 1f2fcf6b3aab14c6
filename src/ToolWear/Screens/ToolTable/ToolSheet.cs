using System.Collections.Immutable;
using ToolWear.Core.Eyes;
using ToolWear.Core.Fields;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Core.Tools.Forms;
using ToolWear.Core.Wear;
using ToolWear.Pens;
using ToolWear.Results.Eyes;
using ToolWear.Screens.Drawing;
using ToolWear.Screens.Guided;
using ToolWear.Wording;

namespace ToolWear.Screens.ToolTable;

/// <summary>A tool that is added: by itself, or as a row of the table of the tools one has.</summary>
internal sealed class ToolSheet : FieldSheet<InUse>
{
    private const string NewToolHeading = "One more tool";
    private const string TableHeading = "The tools I have";
    private const string Scrap = "scrap_mm";

    // the tools of a table are in use, and what is known of their heats can wait
    private static readonly FieldTable<InUse> Row = InUseFields.Asked with
    {
        All = InUseFields.Asked.All.RemoveAll(field => field.Name is "started_as" or "heats_before"),
    };

    private readonly IReadOnlyList<ToolSheet>? rows;
    private readonly ToolInShop? from;
    private readonly MadeInto? into;

    /// <summary>Begins a tool; a row begins with all that repeats in the one above, and the mark that follows.</summary>
    /// <param name="sitting">The sitting.</param>
    /// <param name="rows">The rows above it in the table; null for a tool by itself.</param>
    /// <param name="again">The row that is entered once more; null for a new one.</param>
    public ToolSheet(Sitting sitting, IReadOnlyList<ToolSheet>? rows, ToolSheet? again = null)
        : base(
            rows is null ? InUseFields.Asked : Row,
            sitting,
            InUseFields.Asked.Blank with
            {
                Tool = InUseFields.Asked.Blank.Tool with { Start = ToolStart.Unknown },
            },
            isNew: true
        )
    {
        this.rows = rows;
        Offer("form", ToolForms.Drift);
        if (rows is null)
        {
            Offer("started_as", ToolStart.AsWords.Word(StartedAs.New));
        }
        else if ((again ?? rows.LastOrDefault()) is { } like)
        {
            for (int i = 0; i < Guided.Questions.Length; i++)
            {
                Guided.Offer(i, like.Guided[i]);
            }

            if (again is null)
            {
                Offer("tool", NextMark(like.Guided[0]));
                Offer("size_mm", "");
            }
        }
    }

    /// <summary>Begins what a tool is made into: like it where nothing else is said, at the first place that it can become.</summary>
    /// <param name="sitting">The sitting.</param>
    /// <param name="from">The tool that is re-worked.</param>
    /// <param name="into">What it could become; null where nothing can be said.</param>
    public ToolSheet(Sitting sitting, ToolInShop from, MadeInto? into)
        : this(sitting, rows: null)
    {
        (this.from, this.into) = (from, into);
        Series? first = into?.Offers.FirstOrDefault()?.Series;
        InUse like = InUseFields.Asked.Blank with
        {
            Tool = from.Tool with
            {
                Eye = first?.Eye ?? from.Tool.Eye,
                Place = first?.Place ?? from.Tool.Place,
                Form = first?.Form ?? from.Tool.Form,
            },
        };
        Offer(like, "form", "eye", "place", "steel");
    }

    /// <inheritdoc />
    public override string Heading =>
        from is not null ? IntoHeading(from.Mark)
        : rows is null ? NewToolHeading
        : TableHeading;

    /// <inheritdoc />
    public override string Below => string.Join('\n', Remarks().Append(Cautions.AddingCautions));

    /// <inheritdoc />
    public override void Draw(Picture body)
    {
        if (rows is null)
        {
            base.Draw(body);
        }
        else
        {
            ToolTableText.Draw(body, [.. rows.Select(row => row.Guided)], Guided, Below);
        }
    }

    /// <inheritdoc />
    public override bool Next()
    {
        bool isLast = base.Next();
        if (!isLast && Open == Scrap && Answer(Scrap).Length == 0 && Proposed() is { } scrap)
        {
            Offer(Scrap, SizeText.Offer(scrap.Size, Sitting.Units)!);
        }

        return isLast;
    }

    /// <inheritdoc />
    protected override bool Record(InUse thing)
    {
        Length? resolution = SizeText.TryParse(Answer("size_mm"), Sitting.Units, out TypedSize size, out string _)
            ? size.Resolution
            : null;
        ImmutableArray<LedgerEntry> entries = from is { Tool: var old }
            ?
            [
                .. (thing with { Tool = thing.Tool with { Lot = old.Lot, Section = old.Section } }).Added(
                    resolution,
                    Sitting.Today
                ),
                new ToolScrapped(old.Mark, Sitting.Today, ScrapCause.MadeInto, thing.Tool.Mark, null),
            ]
            : thing.Added(resolution, Sitting.Today);
        if (!Sitting.Record(entries))
        {
            return false;
        }

        Sitting.Say(
            from is null
                ? Words.ToolEntered(thing.Tool.Mark.Text, (rows?.Count ?? 0) + 1)
                : $"{from.Mark} is {thing.Tool.Mark} now. Bksp undoes both.",
            Ink.Done
        );
        if (MarksAlike.Of(Sitting.Shop, entries) is [var (given, other), ..])
        {
            Sitting.Say(Words.MarksAlike(given, other), Ink.Warn);
        }

        return true;
    }

    /// <summary>What the shop says to the answers so far: where a proposed scrap size comes from, how a drift nests.</summary>
    private IEnumerable<string> Remarks()
    {
        InUse said = SoFar;
        foreach (MadeIntoOffer offer in (into?.Offers ?? []).Take(2))
        {
            yield return $"It could become {EyeWords.OfferInWords(offer, Sitting.Units)}.";
        }

        if (Proposed() is { } scrap)
        {
            yield return scrap.Like is { } like
                ? $"The scrap size proposed is that of {like.Mark}."
                : "The scrap size proposed follows from the eye's tolerance.";
        }

        if (said.Tool.Form.Name == ToolForms.Drift && said.Size > Length.Zero)
        {
            foreach (
                NestingStep step in NestingAround.Of(Sitting.Shop, said.Tool.Eye ?? "", said.Tool.Place, said.Size)
            )
            {
                yield return step.Sentence(Sitting.Units);
            }
        }
    }

    private ScrapProposal? Proposed()
    {
        Tool tool = SoFar.Tool;
        return ScrapProposal.Of(
            Sitting.Shop,
            Sitting.Forecasts?.Eyes,
            tool.Eye,
            tool.Place,
            tool.Form,
            tool.Form.UsualGaugeMarks[0].Measures
        );
    }

    private static string IntoHeading(ToolMark from) => $"What {from} is made into";

    private static string NextMark(string mark)
    {
        string head = mark.TrimEnd([.. "0123456789"]);
        return head.Length < mark.Length && int.TryParse(mark[head.Length..], out int number)
            ? $"{head}{number + 1}"
            : "";
    }
}
