using System.Collections.Immutable;
using System.CommandLine;
using ToolWear.Commands.Calls;
using ToolWear.Core.Ledger;
using ToolWear.Core.Planning;
using ToolWear.Core.Sections;
using ToolWear.Core.Shops;
using ToolWear.Core.Wear;
using ToolWear.Pens;
using ToolWear.Results;

namespace ToolWear.Commands.Plans;

/// <summary>quote: what an odd eye costs, and making its series.</summary>
internal static class QuoteVerb
{
    private const string Unnamed = "quoted eye";

    private static readonly Argument<string> Eye = FigureOptions.Maybe(
        "EYE",
        "an eye of the shop; or --section or --handle for one that is not entered"
    );
    private static readonly Option<string?> SectionOption = Common.Text(
        "--section",
        "SECTION",
        "the cold eye, as 'teardrop 28.6 9.5 3.4'"
    );
    private static readonly Option<string?> Taper = Common.Text(
        "--taper",
        "Q",
        "its taper, mm of size a mm of depth, with --section"
    );
    private static readonly Option<string?> Handle = Common.Text(
        "--handle",
        "HANDLE",
        "a handle as bought: the eye that it asks for"
    );
    private static readonly Option<string?> Shape = Common.Text(
        "--shape",
        "KIND",
        "the shape of that eye: oval where nothing is said"
    );
    private static readonly Option<string?> Heads = Common.Text("--heads", "N", "how many heads pay for the series");
    private static readonly Option<string?> Sure = Common.Text(
        "--sure",
        "P",
        "how sure the set is to last, a share such as 0.9"
    );
    private static readonly Option<bool> MakeIt = new("--make")
    {
        Description = "records the series (and the eye, where it is new), so that the forge list plans its tools",
    };
    private static readonly Option<string?> Named = Common.Text(
        "--name",
        "NAME",
        "what a new eye is called, with --make"
    );

    public static Command Make(Site site) =>
        Common.Verb(
            site,
            "quote",
            "Proposes a series for an odd eye, its stock, bars and hours, and spreads its cost over the heads: all of it,\n"
                + "and what they wear away. With --make it enters the series.",
            "quote --section 'teardrop 28.6 9.5 3.4' --taper 0.035 --heads 3",
            [Eye, SectionOption, Taper, Handle, Shape, Heads, Sure, MakeIt, Named],
            Run
        );

    private static void Run(Call call)
    {
        int heads =
            call.Whole(Heads) ?? throw RefusedException.WrongUsage("--heads is wanted: how many heads pay for it");
        if (heads is < 1 or > 10_000)
        {
            throw RefusedException.WrongUsage($"--heads {heads}: a number from 1 to 10000");
        }

        double? sure = PlanVerb.ReadSure(call, Sure);
        using Bench bench = call.Has(MakeIt) ? call.ToWrite() : call.ToRead();
        SeriesPlan series = SeriesPlan.TryFor(
            bench.Shop,
            EyeOf(call, bench.Shop),
            out SeriesPlan? found,
            out string? refusal
        )
            ? found
            : throw RefusedException.WrongUsage(refusal);
        OddEyeQuote quote = OddEyeQuote.Of(
            new ShopLives(ShopForecasts.Of(bench.Shop)),
            series,
            heads,
            sure ?? bench.Shop.Settings.Sure
        );
        if (call.Has(MakeIt))
        {
            // what is recorded answers with the number of its entry, whatever the format
            Record(call, bench, quote.Series);
            return;
        }

        QuoteResult result = new(quote, call.Units(bench.Shop));
        call.Print(
            call.Format() switch
            {
                "csv" => result.Tools.ToCsv(),
                "json" => result.ToJson(),
                _ => Words.ShopHeading(bench.Shop, call.Units(bench.Shop)) + result.ToText(),
            }
        );
    }

    private static EyeDescribed EyeOf(Call call, Shop shop)
    {
        string name = call.Get(Named) ?? Unnamed;
        return (call.Get(Eye), call.Get(SectionOption), call.Get(Handle)) switch
        {
            ({ Length: > 0 } eye, null, null) when call.Get(Named) is null => shop.Eyes.GetValueOrDefault(eye)
                ?? throw RefusedException.WrongData(Words.NoEye(eye, shop)),
            ("", { } section, null) => OfSection(
                name,
                FigureOptions.ReadSection(call, SectionOption.Name, section),
                call.Or(Taper, 0)
            ),
            ("", null, { } handle) => HandleEye.Of(
                shop.Handles.GetValueOrDefault(handle)
                    ?? throw RefusedException.WrongData(Words.NoHandle(handle, shop)),
                name,
                call.Word(SectionKinds.Words, Shape) ?? SectionKind.Oval
            ),
            ({ Length: > 0 }, null, null) => throw RefusedException.WrongUsage("--name is for an eye that is new"),
            _ => throw RefusedException.WrongUsage("one of EYE, --section and --handle is wanted"),
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

    private static void Record(Call call, Bench bench, SeriesPlan series)
    {
        bool isNew = !bench.Shop.Eyes.ContainsKey(series.Eye.Name);
        if (isNew && call.Get(Named) is null)
        {
            throw RefusedException.WrongUsage("--make wants --name: what the new eye is called");
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
            throw RefusedException.WrongData($"the series for eye {series.Eye.Name} is entered already");
        }

        call.Record(bench, entries);
    }
}
