using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Core.Tools.Forms;
using ToolWear.Core.Wear.OneTool;

namespace ToolWear.ShopYears;

// wear of a session of n weighted heats: rate n e^(N(0, severity)) and what running-in is left, over 3 heats
/// <summary>A tool as it truly is. The lives are those of the demo shop, invented; what a tool still has in it nobody
/// in the shop knows.</summary>
internal sealed class TrueTool
{
    private const double TauOfLives = 0.2;
    private const double TauOfOwnPast = 0.1;
    private const double RunningInHeats = 3;
    private const double PunchMmAHeat = 0.01;
    private const double OwnPastFrom = 15;
    private const double CrackShape = 1.5;
    private const double CrackScale = 400;

    private readonly Dictionary<string, double> sizes = [];
    private readonly double runningInMm;
    private readonly double crackAt;
    private double heats;

    private TrueTool(Tool tool, double rate, double wearMm, double heats, double runningInMm, Chance chance)
    {
        (Tool, Rate, WearMm, this.heats, this.runningInMm) = (tool, rate, wearMm, heats, runningInMm);
        // only slitters crack in this shop: the one that did was not alone
        crackAt =
            tool.Form.Name == "slitter"
                ? CrackScale
                    * Math.Pow(Math.Pow(heats / CrackScale, CrackShape) - Math.Log(chance.Uniform()), 1 / CrackShape)
                : double.PositiveInfinity;
    }

    public Tool Tool { get; }

    public DateOnly ReadyOn { get; init; }

    public double WearMm { get; private set; }

    /// <summary>Whether it ever worked in the year.</summary>
    public bool WasUsed { get; private set; }

    public bool IsCracked => heats >= crackAt;

    public bool IsDone => IsCracked || WearMm >= LimitMm;

    public double LimitMm => LimitOf(Tool);

    private double Rate { get; }

    /// <summary>The gauge mark that decides: the first one with a limit; null where there is none.</summary>
    public static GaugeMark? Deciding(Tool tool) =>
        tool.GaugeMarks.FirstOrDefault(gauge => gauge.Start is { } start && gauge.LimitFrom(start) is not null);

    /// <summary>A tool fresh from the fire.</summary>
    public static TrueTool New(Tool tool, DateOnly readyOn, Chance chance)
    {
        double runningIn = RunningInOf(tool.Place);
        double rate = RateOf(tool, runningIn) / Math.Exp(chance.Normal(TauOfLives));
        return new TrueTool(tool, rate, 0, 0, runningIn, chance) { ReadyOn = readyOn };
    }

    /// <summary>A tool that hangs there already: it goes on about as it went.</summary>
    public static TrueTool There(Shop shop, ToolForecast forecast, Chance chance)
    {
        Tool tool = forecast.Tool.Tool;
        GaugeForecast gauge = forecast.Gauges.First(each => each.History.Gauge.Name == Deciding(tool)!.Name);
        double wear = gauge.Forecast?.WearNowMm ?? gauge.History.LastKnownWearMm ?? 0;
        double stood = Core.Wear.Lifetimes.ShopFailures.HeatsFromNew(shop, forecast.Tool) ?? 0;
        double runningIn = RunningInOf(tool.Place);
        double rate =
            stood >= OwnPastFrom && wear > runningIn
                ? (wear - runningIn) / stood * Math.Exp(chance.Normal(TauOfOwnPast))
                : RateOf(tool, runningIn) / Math.Exp(chance.Normal(TauOfLives));
        TrueTool there = new(tool, rate, Math.Max(0, wear), Math.Max(stood, RunningInHeats), runningIn, chance);
        foreach (GaugeForecast other in forecast.Gauges.Where(each => each.History.Gauge.Name != Deciding(tool)!.Name))
        {
            if (other.SizeNowMm is { } size)
            {
                there.sizes[other.History.Gauge.Name] = size;
            }
        }

        return there;
    }

    /// <summary>Works up to some weighted heats; stops where it is done.</summary>
    /// <returns>The heats it gave.</returns>
    public double Work(double weighted, double severity)
    {
        double given = 0;
        while (given < weighted && !IsDone)
        {
            // a quarter of a heat at a time finds the end well enough
            double step = Math.Min(0.25, weighted - given);
            double runIn =
                runningInMm
                * Math.Max(0, Math.Min(1, (heats + step) / RunningInHeats) - Math.Min(1, heats / RunningInHeats));
            double wear = (Rate * step * severity) + runIn;
            WearMm += wear;
            heats += step;
            given += step;
            if (sizes.TryGetValue("length", out double length))
            {
                sizes["length"] = length - (0.6 * wear);
            }
        }

        WasUsed |= given > 0;
        return given;
    }

    /// <summary>What the caliper reads at each gauge mark whose true size is known.</summary>
    public IEnumerable<(string Gauge, double Mm)> Read(Chance chance)
    {
        GaugeMark main = Deciding(Tool)!;
        double start = main.Start!.Value.Mm;
        double size = start + (main.Wears == Wears.Smaller ? -WearMm : WearMm);
        yield return (main.Name, Rounded(main, size + chance.Normal(ReadSd)));
        foreach ((string gauge, double mm) in sizes)
        {
            yield return (gauge, Rounded(Tool.Gauge(gauge)!, mm + chance.Normal(ReadSd)));
        }
    }

    private double ReadSd =>
        Tool.Place switch
        {
            Place.Finish => 0.012,
            Place.Second => 0.04,
            _ => Tool.Form.Name == ToolForms.Drift ? 0.06 : 0.03,
        };

    private static double Rounded(GaugeMark gauge, double mm)
    {
        double step = gauge.Resolution?.Mm ?? 0.05;
        return Math.Round(mm / step) * step;
    }

    private static double LimitOf(Tool tool)
    {
        GaugeMark gauge = Deciding(tool)!;
        return gauge.LimitFrom(gauge.Start!.Value)!.Value.Mm;
    }

    private static double RunningInOf(Place place) =>
        place switch
        {
            Place.Rough => 0.15,
            Place.Second => 0.06,
            Place.Opener => 0.10,
            Place.Finish => 0.012,
            _ => 0,
        };

    private static double RateOf(Tool tool, double runningIn)
    {
        double limit = LimitOf(tool);
        double life = (tool.Place, tool.Steel) switch
        {
            (Place.Opener, _) => 110,
            (Place.Rough, "mild") => 27,
            (Place.Rough, _) => 65,
            (Place.Second, _) => 92,
            (Place.Finish, _) => 290,
            _ => limit / PunchMmAHeat,
        };
        return (limit - runningIn) / life;
    }
}
