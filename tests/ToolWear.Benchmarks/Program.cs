using BenchmarkDotNet.Running;

// dotnet run -c Release --project tests/ToolWear.Benchmarks -- --filter '*'
BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
