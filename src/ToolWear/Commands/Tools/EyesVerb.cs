using System.Collections.Immutable;
using System.CommandLine;
using System.Text;
using ToolWear.Commands.Calls;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Sections;
using ToolWear.Core.Shops;
using ToolWear.Core.Wear;
using ToolWear.Pens;
using ToolWear.Results;
using ToolWear.Screens.Eyes;

namespace ToolWear.Commands.Tools;

/// <summary>eyes: the shop's eyes and handles.</summary>
internal static class EyesVerb
{
    private static readonly Argument<string?> Name = Said.Maybe("NAME", "one eye or handle; usually all");

    private static readonly ImmutableArray<Column> Columns =
    [
        .. new[]
        {
            "eye",
            "section",
            "length_mm",
            "width_mm",
            "depth_mm",
            "taper_length",
            "taper_width",
            "fit",
            "driven",
            "least_length_mm",
            "greatest_length_mm",
            "least_width_mm",
            "greatest_width_mm",
            "handle",
        }.Select(name => new Column(name, null)),
    ];

    public static Verb Verb { get; } =
        new(
            "eyes",
            "Shows the shop's eyes and handles: sizes, tolerance, series, what the drifts make of them now, how handles sit.\n"
                + "As csv and json the eyes as entered. "
                + Words.EyeCaution,
            "eyes H",
            [Name],
            Run
        );

    private static void Run(Call call)
    {
        Shop shop = call.Shop;
        string? name = call.Get(Name);
        EyeOrHandle[] rows =
        [
            .. shop
                .Eyes.Values.Select(eye => new EyeOrHandle(eye, null))
                .Concat(shop.Handles.Values.Select(handle => new EyeOrHandle(null, handle)))
                .Where(row => name is null || row.Name == name),
        ];
        if (rows.Length == 0 && name is not null)
        {
            throw RefusedException.WrongData(Call.NoSuch("eye", name, shop.Eyes.Keys.Concat(shop.Handles.Keys)));
        }

        if (call.Format == "text")
        {
            call.Print(Text(call.Forecasts, rows, call.Units));
            return;
        }

        call.Print(new Table(Columns, [.. rows.Select(row => row.Eye).OfType<EyeDescribed>().Select(Row)]));
    }

    private static string Text(ShopForecasts forecasts, EyeOrHandle[] rows, LengthUnit units)
    {
        StringBuilder text = new(Words.ShopHeading(forecasts.Shop, units));
        foreach (EyeOrHandle row in rows)
        {
            EyePage page = EyePage.Of(forecasts.Shop, forecasts, row, units);
            foreach (string line in page.Facts.Concat(page.Told.Select(told => told.Line)))
            {
                text.Append(Wrapped.Of(line.Trim(), line.StartsWith(' ') ? "  " : "", "    "));
            }

            text.Append('\n');
        }

        return text.Append(Wrapped.Of(Words.EyeCaution)).ToString();
    }

    private static ImmutableArray<Cell> Row(EyeDescribed eye) =>
        [
            Cell.Of(eye.Name),
            Cell.Of(SectionKinds.Words.Word(eye.Section)),
            Cell.Of(eye.Length.Mm),
            Cell.Of(eye.Width.Mm),
            Cell.Of(eye.Depth?.Mm),
            Cell.Of(eye.TaperLength),
            Cell.Of(eye.TaperWidth),
            Cell.Of(eye.Fit is { } fit ? EyeDescribed.FitWords.Word(fit) : null),
            Cell.Of(eye.Driven is { } driven ? EyeDescribed.DrivenWords.Word(driven) : null),
            Cell.Of(eye.LeastLength?.Mm),
            Cell.Of(eye.GreatestLength?.Mm),
            Cell.Of(eye.LeastWidth?.Mm),
            Cell.Of(eye.GreatestWidth?.Mm),
            Cell.Of(eye.Handle),
        ];
}
