using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using ToolWear.Commands.Calls;
using ToolWear.Core.Planning;
using ToolWear.Core.Planning.Years;
using ToolWear.Doors;
using ToolWear.Pens;
using ToolWear.Results;
using ToolWear.Results.Looks;
using ToolWear.Wording;

namespace ToolWear.Commands.Plans;

/// <summary>year: what a year came to.</summary>
internal static class YearVerb
{
    private static readonly Argument<int?> Year = Said.Maybe<int?>(
        "YEAR",
        "the year, usually this one",
        (it, text) =>
            int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int year)
            && year is > 1000 and < 9999
                ? year
                : it.Refuse<int?>(NoSuchYear(text))
    );

    public static Verb Verb { get; } =
        new(
            "year",
            "Looks back on a year: lives, losses, heads, costs.",
            "year 2026",
            [Year],
            Run,
            "As csv it gives the tools, as json all of it."
        );

    private static void Run(Call call)
    {
        int wanted = call.Get(Year) ?? call.On.Year;
        ImmutableArray<int> years = ShopYear.Years(call.Shop, call.On);
        if (!years.Contains(wanted))
        {
            throw RefusedException.WrongData(NoYear(wanted, years[0], years[^1]));
        }

        ShopLives lives = new(call.Forecasts);
        ShopYear year = ShopYear.Of(call.Shop, ToolingCosts.Of(lives), wanted) with { Ranges = lives.Ranges };
        call.Print(
            call.Format switch
            {
                "csv" => YearTables.Lives.Over(year.Tools).ToCsv(call.HasSemicolons),
                "json" => YearTables.All.Of(year).ToJson(),
                _ => $"{YearWords.YearHeading(wanted)}{Words.DemoMark(call.Shop)}\n\n{Text(call, year)}",
            }
        );
    }

    private static string Text(Call call, ShopYear year) =>
        Part(call, "Tools by place and steel", YearTables.Lives.Over(year.Tools), YearWords.NoToolsThen)
        + $"{YearBasis}\n\n"
        + Part(call, YearWords.YearCauses, YearTables.Causes.Over(year.Causes), YearWords.NothingScrapped)
        + Part(call, YearWords.YearHeads, YearTables.Heads.Over(year.Heads), YearWords.NothingForged)
        + $"{YearWords.YearMeasuredHeading}\n\n{call.Text(YearTables.Measured.Of(year.Measured))}\n{YearHeatsBasis}\n\n"
        + RangeWords.Kept(year.Ranges)
        + "\n";

    private static string Part(Call call, string heading, Table table, string none) =>
        $"{heading}\n\n{(table.Rows.IsEmpty ? none + "\n" : call.Text(table))}\n";

    private const string YearBasis =
        "Half last: half of such tools have ended by so many weighted heats from new, by all records to the end of the year; tools that go on working count for the heats they have; nineteen times in twenty it lies between from and to. Tools whose heats before nobody knows are left out there.";

    private const string YearHeatsBasis =
        "A reading followed: heats, weighted by their work, after which the tool was read before it was reworked or scrapped.";

    private static string NoSuchYear(string text) => $"YEAR \"{text}\": a year such as 2026";

    private static string NoYear(int year, int first, int last) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"the records hold nothing of {year}: they reach from {first} to {last}"
        );
}
