using System.Globalization;
using BenchmarkDotNet.Running;
using ToolWear.Benchmarks;

// dotnet run -c Release --project tests/ToolWear.Benchmarks -- --filter '*'
// dotnet run -c Release --project tests/ToolWear.Benchmarks -- plan
// dotnet run -c Release --project tests/ToolWear.Benchmarks -- keys TOOLS ENTRIES SEED
// dotnet run -c Release --project tests/ToolWear.Benchmarks -- store FILE EYES TOOLS ENTRIES SEED
// dotnet run -c Release --project tests/ToolWear.Benchmarks -- documents FILE
if (args is ["store", string path, string eyes, string tools, string entries, string seed])
{
    Console.WriteLine(
        StoreMade.At(
            path,
            int.Parse(eyes, CultureInfo.InvariantCulture),
            int.Parse(tools, CultureInfo.InvariantCulture),
            int.Parse(entries, CultureInfo.InvariantCulture),
            int.Parse(seed, CultureInfo.InvariantCulture)
        )
    );
    return 0;
}

if (args is ["keys", string inService, string written, string from])
{
    KeyTimes.Measure(
        int.Parse(inService, CultureInfo.InvariantCulture),
        int.Parse(written, CultureInfo.InvariantCulture),
        int.Parse(from, CultureInfo.InvariantCulture),
        Console.Out
    );
    return 0;
}

if (args is ["documents", string file])
{
    DocumentTimes.Measure(file, Console.Out);
    return 0;
}

if (args is ["plan"])
{
    LargePlan.Once(Console.Out);
    return 0;
}

BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
return 0;
