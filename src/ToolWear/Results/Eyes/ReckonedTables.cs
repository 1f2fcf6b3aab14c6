using ToolWear.Core.Eyes;
using ToolWear.Core.Eyes.Slits;
using ToolWear.Core.Sections;
using Gap = ToolWear.Results.Column<ToolWear.Core.Sections.Clearance>;
using Made = ToolWear.Results.Column<ToolWear.Core.Eyes.MakingInto>;
using Mm = ToolWear.Results.Column<double>;
using Opened = ToolWear.Results.Column<ToolWear.Core.Eyes.Slits.Slit>;
using Shape = ToolWear.Results.Column<ToolWear.Core.Sections.Section>;
using Stock = ToolWear.Results.Column<ToolWear.Core.Sections.StockToCut>;
using To = ToolWear.Results.Column<ToolWear.Core.Eyes.DriveTo>;

namespace ToolWear.Results.Eyes;

/// <summary>What is reckoned from sizes that were typed: always in mm.</summary>
internal static class ReckonedTables
{
    private static readonly Quantity Tenths = Quantity.Of("mm", "F1");
    private static readonly Quantity Hundredths = Quantity.Of("mm", "F2");

    public static Columns<Section> OfSection { get; } =
    [
        Shape
            .Number("area_mm2", "Area, mm2", shape => shape.AreaMm2(), Quantity.Of("mm2", "F2"))
            .Means("the area of a section"),
        Shape
            .Number("perimeter_mm", "Perimeter, mm", shape => shape.PerimeterMm(), Hundredths)
            .Means("the length round a section"),
    ];

    /// <summary>One section inside another.</summary>
    public static Columns<Clearance> Inside { get; } =
    [
        Gap.Number("clearance_mm", "Clearance, mm", gap => gap.ClearanceMm, Hundredths),
        Gap.Text("least_at", "Least at", LeastAt),
    ];

    /// <summary>What a section could be ground into.</summary>
    public static Columns<MakingInto> Into { get; } =
    [
        Made.Text("into", "Into", made => made.Target.Name),
        Made.YesNo("possible", "Can be", made => made.Possible),
        Made.Number("clearance_mm", "Room, mm", made => made.Clearance.ClearanceMm, Hundredths),
        Made.Number("off_each_end_mm", "Off each end", made => made.LengthwaysMm, Hundredths),
        Made.Number("off_each_cheek_mm", "Off each cheek", made => made.WidthwaysMm, Hundredths),
    ];

    public static Columns<double> Eye { get; } =
    [Mm.Number("eye_mm", "Eye, mm", mm => mm, Tenths).Means("the cold size of an eye")];

    public static Columns<double> Drift { get; } =
    [Mm.Number("drift_mm", "Drift, mm", mm => mm, Hundredths).Means("the cold size of the drift that makes an eye")];

    public static Columns<double> Shift { get; } =
    [Mm.Number("shift_mm", "Deeper by, mm", mm => mm, Tenths).Means("how much deeper a tapered drift is driven")];

    /// <summary>How deep a drift of the shop is driven, in its unit.</summary>
    public static Columns<DriveTo> Depth { get; } =
    [
        To.Number("shift_mm", "Deeper by", to => to.DeeperMm, Tenths),
        EyeFigures.NewMark.From<DriveTo>(to => to) with
        {
            Name = "mark_mm",
            Heading = "New mark, from the shank mark",
        },
        To.Number("eye_length_mm", "Eye length there", to => to.Eye.LengthMm, Quantity.Size),
        To.Number("eye_width_mm", "Eye width there", to => to.Eye.WidthMm, Quantity.Size),
    ];

    public static Columns<double> SlitLength { get; } = [Mm.Number("slit_mm", "Slit, mm", mm => mm, Tenths)];

    public static Columns<Slit> Slits { get; } =
    [
        Opened.Number("slit_mm", "Slit, mm", slit => slit.LengthMm, Tenths),
        Opened
            .Number("stretch", "Stretch", slit => slit.StretchShare, Quantity.Share with { Unit = "" })
            .Means("how much a slit stretches, as a share"),
        Opened.Text("warning", "", slit => slit.Warning, none: "").Means("what to mind"),
    ];

    public static Columns<StockToCut> Cut { get; } =
    [
        Stock
            .Number("volume_mm3", "Volume, mm3", stock => stock.VolumeMm3, Quantity.Of("mm3", "F0"))
            .Means("a volume of steel"),
        Stock.Number("mass_kg", "Weight, kg", stock => stock.MassKg, Quantity.Of("kg", "F2")).Means("a mass of steel"),
        Stock.Number("length_mm", "Length of bar, mm", stock => stock.LengthMm, Quantity.Of("mm", "F0")),
    ];

    private static string LeastAt(Clearance gap) =>
        gap.LeastAt switch
        {
            NearestAt.Nose => "nose",
            NearestAt.Back => "back",
            _ => "cheek",
        };
}
