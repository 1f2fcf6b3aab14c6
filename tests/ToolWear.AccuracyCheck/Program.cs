using System.Collections.Immutable;
using System.Globalization;
using ToolWear.AccuracyCheck;

// dotnet run -c Release --project tests/ToolWear.AccuracyCheck -- SEED NUMBER
// Simulates fresh histories, forecasts each and says how often its ranges held. No oracle: nothing here knows the
// generator, so errors and scores stand alone.
if (
    args.Length != 2
    || !int.TryParse(args[0], NumberStyles.None, CultureInfo.InvariantCulture, out int seed)
    || !int.TryParse(args[1], NumberStyles.None, CultureInfo.InvariantCulture, out int number)
    || number == 0
)
{
    Console.Error.WriteLine("give two whole numbers: a seed and how many histories");
    return 2;
}

int[] readings = [0, 1, 2, 3, 5, 8];
Scenario[] scenarios = Enum.GetValues<Scenario>();
Score?[] scores = new Score?[number];
for (int i = 0; i < number; i++)
{
    Chance chance = new(unchecked((seed * 1_000_003) + i));
    Scenario scenario = scenarios[i % scenarios.Length];
    int sisters = scenario == Scenario.FewTools ? chance.Whole(0, 1) : Sisters(chance.Uniform(0, 1));
    int count = readings[i / scenarios.Length % readings.Length];
    scores[i] = Score.Of(SimulatedHistory.Draw(scenario, count, sisters, chance));
}

ImmutableArray<Score> scored = [.. scores.OfType<Score>()];
Console.WriteLine(
    $"seed {seed}, {number} histories, {number - scored.Length} without bounds or with bounds out of order"
);
Console.WriteLine($"{"", -12} {"n", 5} {"in 90", 6} {"in 80", 6} {"below", 6} {"error", 6} {"score", 6}");
Say("all", scored);
foreach (IGrouping<Scenario, Score> group in scored.GroupBy(score => score.Cell.Scenario).OrderBy(group => group.Key))
{
    Say(group.Key.ToString(), [.. group]);
}

foreach (IGrouping<int, Score> group in scored.GroupBy(score => score.Cell.Readings).OrderBy(group => group.Key))
{
    Say($"{group.Key} readings", [.. group]);
}

return scored.Length == number ? 0 : 1;

static int Sisters(double chance) =>
    chance switch
    {
        < 0.10 => 0,
        < 0.22 => 1,
        < 0.48 => 3,
        < 0.74 => 6,
        _ => 10,
    };

static void Say(string name, ImmutableArray<Score> scores)
{
    double Share(Func<Score, bool> holds) => scores.Count(holds) / (double)scores.Length;
    double[] errors = [.. scores.Select(score => score.Error).Order()];
    double median = (errors[errors.Length / 2] + errors[(errors.Length - 1) / 2]) / 2;
    Console.WriteLine(
        $"{name, -12} {scores.Length, 5} {Share(score => score.In90), 6:0.000} {Share(score => score.In80), 6:0.000} "
            + $"{Share(score => score.Below80), 6:0.000} {median, 6:0.000} {scores.Average(score => score.IntervalScore), 6:0.000}"
    );
}
