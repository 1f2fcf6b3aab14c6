using BenchmarkDotNet.Attributes;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Tools;
using ToolWear.Storage.Entries;

namespace ToolWear.Benchmarks;

/// <summary>A reading written as the journal holds it and read back.</summary>
[MemoryDiagnoser]
public class EntryText
{
    private readonly LedgerEntry reading = new ToolMeasured(
        ToolMark.TryParse("H5", out ToolMark mark, out string refusal)
            ? mark
            : throw new InvalidOperationException(refusal),
        "width",
        new(2026, 11, 7),
        "hatchets 10",
        Length.FromMm(13.25),
        Length.FromMm(0.05),
        "Orla",
        null
    );

    private string body = "";

    [GlobalSetup]
    public void Write() => body = EntryFormat.Write(reading);

    [Benchmark]
    public string Written() => EntryFormat.Write(reading);

    [Benchmark]
    public LedgerEntry Read() => EntryFormat.Read(body);
}
