using System.CommandLine;
using System.Text;
using ToolWear.Commands.Calls;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Shops;
using ToolWear.Core.Wear;
using ToolWear.Doors;
using ToolWear.Pens;
using ToolWear.Results.Eyes;
using ToolWear.Wording;

namespace ToolWear.Commands.Tools;

/// <summary>eyes: the shop's eyes and handles.</summary>
internal static class EyesVerb
{
    private static readonly Argument<string?> Name = Said.Maybe("NAME", "one eye or handle; usually all");

    public static Verb Verb { get; } =
        new(
            "eyes",
            "Shows the eyes and handles, and what the drifts make now.",
            "eyes H",
            [Name],
            Run,
            $"With a name it shows one of them. As csv and json it gives the eyes as saved.\n{Cautions.EyeCaution}"
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

        call.Print(EyeTable.Columns.Over(rows.Select(row => row.Eye).OfType<EyeDescribed>()));
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

        return text.Append(Wrapped.Of(Cautions.EyeCaution)).ToString();
    }
}
