using System.Collections.Immutable;
using System.Globalization;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Sections;
using ToolWear.Core.Shops;
using ToolWear.Screens.Drawing;
using ToolWear.Screens.Guided;

namespace ToolWear.Screens.StockRack;

/// <summary>A bar that is being entered or changed.</summary>
public sealed class BarSheet : GuidedEntry
{
    private const int SteelAsked = 0;
    private const int Section = 1;
    private const int Long = 2;
    private const int Short = 3;
    private const int LengthAsked = 4;
    private const int Lot = 5;
    private const int Price = 6;
    private const int Name = 7;
    private const decimal MostPrice = 1_000_000;

    private readonly BarDescribed? before;

    private BarSheet(Shop shop, BarDescribed? before)
        : base(new GuidedLine(before is null ? Questions(shop) : Questions(shop)[..Name])) => this.before = before;

    /// <inheritdoc />
    public override string Heading => before is null ? Words.NewBarHeading : Words.ChangeBarHeading(before.Bar);

    /// <summary>The bar that was entered; null before.</summary>
    public BarDescribed? Bar { get; private set; }

    /// <summary>A new bar.</summary>
    /// <param name="shop">The shop.</param>
    /// <returns>The sheet.</returns>
    public static BarSheet New(Shop shop)
    {
        BarSheet sheet = new(shop, null);
        sheet.Guided.Offer(Section, SectionKinds.Words.Word(SectionKind.Round));
        return sheet;
    }

    /// <summary>A change of a bar.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="units">The unit of sizes offered.</param>
    /// <param name="bar">The bar as it is.</param>
    /// <returns>The sheet.</returns>
    public static BarSheet Change(Shop shop, LengthUnit units, BarDescribed bar)
    {
        BarSheet sheet = new(shop, bar);
        sheet.Guided.Offer(SteelAsked, bar.Steel);
        sheet.Guided.Offer(Section, SectionKinds.Words.Word(bar.Section));
        sheet.Guided.Offer(Long, AnswersRead.Offer(bar.A, units));
        sheet.Guided.Offer(Short, AnswersRead.Offer(bar.B, units));
        sheet.Guided.Offer(LengthAsked, AnswersRead.Offer(bar.Length, units));
        sheet.Guided.Offer(Lot, bar.Lot ?? "");
        sheet.Guided.Offer(Price, bar.PriceAKg?.ToString(CultureInfo.InvariantCulture) ?? "");
        return sheet;
    }

    /// <inheritdoc />
    public override bool Take(AnswersRead read, Sitting sitting)
    {
        BarDescribed bar = new(
            before?.Bar ?? read.Text(Name) ?? "",
            read.Text(SteelAsked) ?? "",
            read.Word(Section, SectionKinds.Words) ?? SectionKind.Round,
            read.NeedSize(Long),
            read.Size(Short),
            read.Size(LengthAsked),
            read.Text(Lot),
            read.Number(Price, 0, MostPrice)
        );
        if (bar.Steel.Length == 0)
        {
            read.Refuse(SteelAsked, Words.SteelWanted);
        }

        if (
            bar.Section != SectionKind.Other
            && !Core.Sections.Section.TryMake(
                bar.Section,
                bar.A,
                bar.B ?? bar.A,
                Length.Zero,
                out Core.Sections.Section? _,
                out string? fault
            )
        )
        {
            read.Refuse(Long, fault);
        }

        if (before is null && sitting.Shop.Bars.ContainsKey(bar.Bar))
        {
            read.Refuse(Name, Words.BarThere(bar.Bar));
        }
        else if (bar.Bar.Length == 0)
        {
            read.Refuse(Name, Words.NameWanted);
        }

        if (read.Refusal is not null || !sitting.Record(bar))
        {
            return false;
        }

        Bar = bar;
        sitting.Say(Words.BarEntered(bar.Bar), Ink.Done);
        return true;
    }

    private static ImmutableArray<Question> Questions(Shop shop) =>
        [
            new(
                "Steel",
                Words.AskBarSteel,
                [.. shop.Bars.Values.Select(bar => bar.Steel).Distinct(StringComparer.Ordinal)]
            ),
            new("Section", Words.AskBarSection, [.. SectionKinds.Words.All]),
            new("Size", Words.AskBarSize, []),
            new("Other way", Words.AskBarOther, []),
            new("Length", Words.AskBarLength, []),
            new("Lot", Words.AskLot, []),
            new("Price a kg", Words.AskPrice, []),
            new("Name", Words.AskBarName, []),
        ];
}
