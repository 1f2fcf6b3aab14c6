namespace ToolWear.Storage.Csv;

/// <summary>A CSV file in memory: its name without a folder and its bytes as they lie on the disk.</summary>
/// <param name="Name">The name: "tools.csv".</param>
/// <param name="Bytes">The whole file, UTF-8.</param>
public sealed record CsvFile(string Name, ReadOnlyMemory<byte> Bytes);
