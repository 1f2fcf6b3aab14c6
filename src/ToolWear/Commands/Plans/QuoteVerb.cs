using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using ToolWear.Commands.Calls;
using ToolWear.Core.Ledger;
using ToolWear.Core.Planning;
using ToolWear.Core.Sections;
using ToolWear.Doors;
using ToolWear.Pens;
using ToolWear.Results.Eyes;
using ToolWear.Wording;

namespace ToolWear.Commands.Plans;

/// <summary>quote: what an odd eye costs, and making its series.</summary>
internal static class QuoteVerb
{
    private const string Unnamed = "quoted eye";

    private static readonly Argument<string?> Eye = Said.Maybe(
        "EYE",
        "an eye of the shop; or --section or --handle for one that is not on record"
    );
    private static readonly Option<Section?> SectionOption = Said.Section(
        "--section",
        "the cold eye, as 'teardrop 28.6 9.5 3.4'"
    );
    private static readonly Option<double?> Taper = Said.Number(
        "--taper",
        "Q",
        "its taper, mm of size a mm of depth, with --section"
    );
    private static readonly Option<string?> Handle = Said.Text(
        "--handle",
        "HANDLE",
        "a handle as bought: the eye that it asks for"
    );
    private static readonly Option<SectionKind?> Shape = Said.Word(
        "--shape",
        "KIND",
        SectionKinds.Words,
        "the shape of that eye: oval where nothing is said"
    );
    private static readonly Option<int?> Heads = Said.Option<int?>(
        "--heads",
        "N",
        "how many heads pay for the series",
        (it, text) =>
            int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int heads)
            && heads is > 0 and <= 10_000
                ? heads
                : it.Refuse<int?>($"--heads {text}: a number from 1 to 10000"),
        need: true
    );
    private static readonly Option<double?> Sure = Said.Sure(
        "--sure",
        "how sure the set is to last, a share such as 0.9"
    );
    private static readonly Option<bool> MakeIt = Said.Switch(
        "--make",
        "records the series (and the eye, where it is new), so that the forge list plans its tools"
    );
    private static readonly Option<string?> Named = Said.Text(
        "--name",
        "NAME",
        "what a new eye is called, with --make"
    );

    public static Verb Verb { get; } =
        new(
            "quote",
            "Proposes a series for an odd eye, with its cost.",
            "quote --section 'teardrop 28.6 9.5 3.4' --taper 0.035 --heads 3",
            [Eye, SectionOption, Taper, Handle, Shape, Heads, Sure, MakeIt, Named],
            Run,
            "It gives stock, bars and hours, and spreads the cost over the heads: all of it, and what they wear away. --make adds the series to the shop."
        );

    private static void Run(Call call)
    {
        if (call.Get(MakeIt))
        {
            call.ToWrite();
        }

        SeriesPlan series = SeriesPlan.TryFor(call.Shop, EyeOf(call), out SeriesPlan? found, out string? refusal)
            ? found
            : throw RefusedException.WrongUsage(refusal);
        OddEyeQuote quote = OddEyeQuote.Of(
            new ShopLives(call.Forecasts),
            series,
            call.Need(Heads),
            call.Get(Sure) ?? call.Shop.Settings.Sure
        );
        if (call.Get(MakeIt))
        {
            // what is recorded answers with the number of its entry, whatever the format
            Record(call, quote.Series);
            return;
        }

        call.Print(
            call.Format switch
            {
                "csv" => QuoteTable.Tools.Over(quote.Tools).ToCsv(call.HasSemicolons),
                "json" => QuoteTable.All.Of(quote).ToJson(),
                _ => Words.ShopHeading(call.Shop, call.Units) + QuoteText.Of(quote, call.Units, call.Text),
            }
        );
    }

    private static EyeDescribed EyeOf(Call call)
    {
        string name = call.Get(Named) ?? Unnamed;
        return (call.Get(Eye), call.Get(SectionOption), call.Get(Handle)) switch
        {
            ({ } eye, null, null) when call.Get(Named) is null => Call.Named("eye", call.Shop.Eyes, eye),
            (null, { } section, null) => OfSection(name, section, call.Get(Taper) ?? 0),
            (null, null, { } handle) => HandleEye.Of(
                Call.Named("handle", call.Shop.Handles, handle),
                name,
                call.Get(Shape) ?? SectionKind.Oval
            ),
            ({ }, null, null) => throw RefusedException.WrongUsage("--name is for an eye that is new"),
            _ => throw RefusedException.WrongUsage("give one of EYE, --section and --handle"),
        };
    }

    private static EyeDescribed OfSection(string name, Section section, double taper) =>
        new(
            name,
            section.Kind,
            section.EyeLength,
            section.EyeWidth,
            section.Radius > Core.Measure.Length.Zero ? section.Radius : null,
            null,
            taper,
            taper,
            null,
            null,
            null,
            null,
            null,
            null,
            null
        );

    private static void Record(Call call, SeriesPlan series)
    {
        bool isNew = !call.Shop.Eyes.ContainsKey(series.Eye.Name);
        if (isNew && call.Get(Named) is null)
        {
            throw RefusedException.WrongUsage("--make needs --name: what to call the new eye");
        }

        if (!isNew && call.Get(Named) is not null)
        {
            throw RefusedException.WrongData($"there is an eye {series.Eye.Name} already: quote it by its name");
        }

        ImmutableArray<LedgerEntry> entries =
        [
            .. isNew ? [series.Eye] : (LedgerEntry[])[],
            .. series.Tools.Where(tool => !tool.IsEntered).Select(tool => new SeriesDescribed(tool.Series)),
        ];
        if (entries.IsEmpty)
        {
            throw RefusedException.WrongData($"the series for eye {series.Eye.Name} is on record already");
        }

        call.Record(entries);
    }
}
