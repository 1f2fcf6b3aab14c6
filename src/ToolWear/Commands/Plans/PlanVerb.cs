using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using ToolWear.Commands.Calls;
using ToolWear.Core.Planning.Lives;
using ToolWear.Core.Sections;
using ToolWear.Doors;
using ToolWear.Pens;
using ToolWear.Results.Plans;

namespace ToolWear.Commands.Plans;

/// <summary>plan: how many new tools a demand of heats takes.</summary>
internal static class PlanVerb
{
    private const int MostTools = 200;

    private static readonly Option<double?> Median = Said.Number(
        "--life-median",
        "M",
        "heats by which half of such tools are worn out"
    );
    private static readonly Option<double?> SdLog = Said.Number(
        "--life-sdlog",
        "S",
        "the spread of the logarithm of the life, such as 0.3"
    );
    private static readonly Option<double[]?> Used = Said.Option<double[]>(
        "--used",
        "A,B",
        "the heats that each tool in service has stood, commas between",
        ReadUsed
    );
    private static readonly Option<double?> Demand = Said.Number(
        "--demand",
        "H",
        "the heats that are needed",
        Replacements.RefuseDemand
    );
    private static readonly Option<double?> Sure = Said.Sure("--sure", "how sure, a share such as 0.9");
    private static readonly Option<double?> CrackShape = Said.Number(
        "--crack-shape",
        "B",
        "the Weibull shape of sudden failures"
    );
    private static readonly Option<double?> CrackScale = Said.Number(
        "--crack-scale",
        "E",
        "their Weibull scale in heats"
    );

    public static Verb Verb { get; } =
        new(
            "plan",
            "Says how many new tools the orders need.",
            "plan --life-median 60 --life-sdlog 0.3 --used 15,40 --demand 360 --sure 0.9",
            [Median, SdLog, Used, Demand, Sure, CrackShape, CrackScale],
            Run,
            "It reads the open orders, or the figures you give."
        );

    private static void Run(Call call)
    {
        Option[] figures = [Median, SdLog, Used, Demand, CrackShape, CrackScale];
        if (figures.Any(call.Has))
        {
            FromFigures(call);
        }
        else
        {
            PlanOfStore.Print(call, call.Get(Sure));
        }
    }

    private static void FromFigures(Call call)
    {
        double sure = call.Need(Sure);
        double demand = call.Need(Demand);
        double[] used = call.Get(Used) ?? [];
        LogNormalLife life = ReadLife(call);
        Func<double, double> Life(double n) => k => life.ChanceUsedUpWithin(n, k);
        Replacements plan = Replacements.Of(used.Select(Life), Life(0), demand, sure) is Replacements found
            ? found
            : throw RefusedException.WrongData("such tools do not last one heat: no number of them is enough");
        string text = call.Format switch
        {
            "json" => JsonPen.Of(json =>
            {
                json.WriteStartObject();
                PlanFigures.Write(json, plan);
                json.WriteEndObject();
            }),
            "csv" => PlanTable.Covers.Over(plan.Cover.Select((cover, r) => (r, cover))).ToCsv(call.HasSemicolons),
            _ => $"{PlanFigures.ToText(plan)}\n{PlanOfStore.PlanBasis}\n",
        };
        call.Print(text);
    }

    private static LogNormalLife ReadLife(Call call)
    {
        WeibullLife? cracks = null;
        if (call.Has(CrackShape) != call.Has(CrackScale))
        {
            throw RefusedException.WrongUsage("--crack-shape and --crack-scale go together");
        }

        if (
            call.Has(CrackShape)
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

    private static double[]? ReadUsed(ArgumentResult it, string text)
    {
        string[] parts = text.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        double[] heats =
        [
            .. parts.Select(part =>
                double.TryParse(part, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double heats)
                && FigureRange.Refuse("", heats, 0, 1_000_000, "") is null
                    ? heats
                    : it.Refuse<double>(
                        $"--used \"{part}\": heats from 0 to 1000000 with commas between, such as 15,40"
                    )
            ),
        ];
        return heats.Length <= MostTools ? heats : it.Refuse<double[]>($"--used: at most {MostTools} tools in service");
    }
}
