using System.Globalization;
using BenchmarkDotNet.Running;
using ToolWear.Benchmarks;

// dotnet run -c Release --project tests/ToolWear.Benchmarks -- ...
// Rows of the table that tests/ToolWear.Benchmarks/ratios prints: what|n|ours|other|ratio|goal|hash
TextWriter said = Console.Out;
switch (args)
{
    case ["store", string path, string eyes, string tools, string entries, string seed]:
        said.WriteLine(StoreMade.At(path, Number(eyes), Number(tools), Number(entries), Number(seed)));
        break;
    case ["start", string folder, string runs, .. string[] programs]:
        ScreenCosts.Start(folder, Number(runs), Named(programs), said);
        break;
    case ["memory", string folder, string tools, string entries, string seed, .. string[] programs]:
        ScreenCosts.Memory(folder, Number(tools), Number(entries), Number(seed), Named(programs), said);
        break;
    case ["recording", string folder, string runs, string seed]:
        RecordingCosts.Measure(folder, Number(runs), Number(seed), said);
        break;
    case ["forecast", string runs, string seed]:
        new ForecastCosts(Number(runs), Number(seed), said).Measure();
        break;
    case ["csv", string folder, string entries, string runs, string seed]:
        CsvCosts.Measure(folder, Number(entries), Number(runs), Number(seed), said);
        break;
    case ["documents", string file]:
        DocumentTimes.Measure(file, said);
        break;
    case ["keys", string tools, string entries, string seed]:
        KeyTimes.Measure(Number(tools), Number(entries), Number(seed), said);
        break;
    case ["plan"]:
        LargePlan.Once(said);
        break;
    default:
        // --filter '*'
        BenchmarkSwitcher.FromAssembly(System.Reflection.Assembly.GetExecutingAssembly()).Run(args);
        break;
}

static int Number(string text) => int.Parse(text, CultureInfo.InvariantCulture);

// NAME PATH GOAL for each
static (string Name, string Path, string Goal)[] Named(string[] programs) =>
    [.. programs.Chunk(3).Select(each => (each[0], each[1], each[2]))];
