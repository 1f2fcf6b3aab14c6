using System.Collections.Immutable;
using ToolWear.Core.Ledger;

namespace ToolWear.Storage.Csv;

/// <summary>What came of reading a CSV set: entries or faults, never both.</summary>
/// <param name="Entries">The entries in the order in which they are to be entered, all of them tried on an empty shop; none where anything was wrong.</param>
/// <param name="Faults">What is wrong, at most a hundred.</param>
/// <param name="MoreFaults">How many more faults there are.</param>
public sealed record CsvImported(ImmutableArray<LedgerEntry> Entries, ImmutableArray<CsvFault> Faults, int MoreFaults);
