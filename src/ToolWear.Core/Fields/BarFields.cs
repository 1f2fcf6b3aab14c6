using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Sections;
using static ToolWear.Core.Fields.FieldKinds;

namespace ToolWear.Core.Fields;

/// <summary>The fields of a bar in the stock rack.</summary>
public static class BarFields
{
    /// <summary>The table.</summary>
    public static FieldTable<BarDescribed> Table { get; } =
        new FieldTable<BarDescribed>("bars.csv", new("", "", SectionKind.Round, Length.Zero, null, null, null, null))
        {
            Check = bar =>
                Section.FaultOf(bar.Section, bar.A, bar.B ?? bar.A, Length.Zero) is { } fault
                    ? new("a_mm", fault)
                    : null,
        }
            .Key("bar", Name, b => b.Bar, (b, v) => b with { Bar = v! })
            .Means("what you call the bar, such as 4140 32", "Name")
            .Called("bar no", "bar number")
            .Needs("steel", Text, b => b.Steel, (b, v) => b with { Steel = v! })
            .Means("its steel, by number where it has one", "Steel", Kept.Steels)
            .Called("material", "grade", "steel grade")
            .Needs("section", Word(SectionKinds.Words), b => b.Section, (b, v) => b with { Section = v!.Value })
            .Means("its shape", "Section")
            .Called("shape")
            .Needs("a_mm", Size, b => b.A, (b, v) => b with { A = v!.Value })
            .Means("its diameter, or its long way", "Size")
            .Called("diameter", "dia", "thickness")
            .Maybe("b_mm", Size, b => b.B, (b, v) => b with { B = v })
            .Means("its short way; empty where it is round or square", "Other way")
            .Called("width")
            .Maybe("length_mm", Size, b => b.Length, (b, v) => b with { Length = v })
            .Means("how long it is now", "Length")
            .Maybe("lot", Text, b => b.Lot, (b, v) => b with { Lot = v })
            .Means("the lot of its steel", "Lot")
            .Maybe("price_a_kg", Amount, b => b.PriceAKg, (b, v) => b with { PriceAKg = v })
            .Means("what a kilogram cost, in your own money", "Price a kg", unit: "money a kg")
            .Called("price", "price per kg");
}
