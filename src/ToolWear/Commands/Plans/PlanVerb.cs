using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using ToolWear.Commands.Calls;
using ToolWear.Core.Planning;
using ToolWear.Core.Planning.Lives;
using ToolWear.Core.Sections;
using ToolWear.Pens;
using ToolWear.Results;

namespace ToolWear.Commands.Plans;

/// <summary>plan: how many new tools a demand of heats takes.</summary>
internal static class PlanVerb
{
    private static readonly Option<string?> Median = Common.Text(
        "--life-median",
        "M",
        "heats by which half of such tools are worn out"
    );
    private static readonly Option<string?> SdLog = Common.Text(
        "--life-sdlog",
        "S",
        "the spread of the logarithm of the life, such as 0.3"
    );
    private static readonly Option<string?> Used = Common.Text(
        "--used",
        "A,B",
        "the heats that each tool in service has stood, commas between"
    );
    private static readonly Option<string?> Demand = Common.Text("--demand", "H", "the heats that are needed");
    private static readonly Option<string?> Sure = Common.Text("--sure", "P", "how sure, a share such as 0.9");
    private static readonly Option<string?> CrackShape = Common.Text(
        "--crack-shape",
        "B",
        "the Weibull shape of sudden failures"
    );
    private static readonly Option<string?> CrackScale = Common.Text(
        "--crack-scale",
        "E",
        "their Weibull scale in heats"
    );

    public static Command Make(Site site) =>
        Common.Verb(
            site,
            "plan",
            "Says how many new tools the orders take, for each eye and place; or from figures alone.",
            "plan --life-median 60 --life-sdlog 0.3 --used 15,40 --demand 360 --sure 0.9",
            [Median, SdLog, Used, Demand, Sure, CrackShape, CrackScale],
            Run
        );

    private static void Run(Call call)
    {
        ImmutableArray<Option<string?>> figures = [Median, SdLog, Used, Demand, CrackShape, CrackScale];
        if (figures.Any(option => call.Get(option) is not null))
        {
            FromFigures(call);
        }
        else
        {
            PlanOfStore.Print(call, ReadSure(call));
        }
    }

    /// <summary>The certainty, null where none was given.</summary>
    public static double? ReadSure(Call call, Option<string?>? option = null)
    {
        if (call.Amount(option ?? Sure) is not { } sure)
        {
            return null;
        }

        return Replacements.RefuseSure((double)sure) is { } refusal
            ? throw RefusedException.WrongUsage($"--sure {sure}: {refusal}")
            : (double)sure;
    }

    private static void FromFigures(Call call)
    {
        double sure = ReadSure(call) ?? throw RefusedException.WrongUsage("--sure is wanted: a share such as 0.9");
        double demand = call.Need(Demand);
        double[] used = ReadUsed(call);
        if (Replacements.RefuseDemand(demand) is { } refusal)
        {
            throw RefusedException.WrongUsage(refusal);
        }

        LogNormalLife life = ReadLife(call);
        Func<double, double> Life(double n) => k => life.ChanceUsedUpWithin(n, k);
        Replacements plan = Replacements.Of(used.Select(Life), Life(0), demand, sure) is Replacements found
            ? found
            : throw RefusedException.WrongData("such tools do not last one heat: no number of them is enough");
        string text = call.Format() switch
        {
            "json" => JsonPen.Of(json =>
            {
                json.WriteStartObject();
                PlanFigures.Write(json, plan);
                json.WriteEndObject();
            }),
            "csv" => PlanOfStore.CoverTable(plan).ToCsv(),
            _ => $"{PlanFigures.ToText(plan)}\n{Words.PlanBasis}\n",
        };
        call.Print(text);
    }

    private static LogNormalLife ReadLife(Call call)
    {
        WeibullLife? cracks = null;
        if (call.Get(CrackShape) is null != call.Get(CrackScale) is null)
        {
            throw RefusedException.WrongUsage("--crack-shape and --crack-scale go together");
        }

        if (
            call.Get(CrackShape) is not null
            && !WeibullLife.TryMake(call.Need(CrackShape), call.Need(CrackScale), out cracks, out string? wrong)
        )
        {
            throw RefusedException.WrongUsage(wrong);
        }

        return LogNormalLife.TryMake(
            call.Need(Median),
            call.Need(SdLog),
            cracks,
            out LogNormalLife? life,
            out string? refusal
        )
            ? life
            : throw RefusedException.WrongUsage(refusal);
    }

    private static double[] ReadUsed(Call call)
    {
        const int mostTools = 200;
        string[] parts = (call.Get(Used) ?? "").Split(
            ',',
            StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries
        );
        return parts.Length > mostTools
            ? throw RefusedException.WrongUsage($"--used: at most {mostTools} tools in service")
            : [.. parts.Select(ReadHeats)];
    }

    private static double ReadHeats(string text) =>
        double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double heats)
        && FigureRange.Refuse("", heats, 0, 1_000_000, "") is null
            ? heats
            : throw RefusedException.WrongUsage(
                $"--used \"{text}\": heats from 0 to 1000000 with commas between, such as 15,40"
            );
}
