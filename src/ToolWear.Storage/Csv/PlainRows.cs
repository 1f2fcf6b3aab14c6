using System.Collections.Immutable;
using ToolWear.Core.Measure;
using ToolWear.Core.Sections;

namespace ToolWear.Storage.Csv;

/// <summary>What came of reading a plain table: rows or faults, never both.</summary>
/// <typeparam name="T">What a row says.</typeparam>
/// <param name="Rows">The rows in order; none where anything was wrong.</param>
/// <param name="Faults">What is wrong, at most a hundred.</param>
/// <param name="MoreFaults">How many more faults there are.</param>
public sealed record TableRead<T>(ImmutableArray<T> Rows, ImmutableArray<CsvFault> Faults, int MoreFaults);

/// <summary>One wear reading, or the beginning of a segment without one.</summary>
/// <param name="Line">The line it stands on.</param>
/// <param name="Kind">What wears alike: no kind influences another.</param>
/// <param name="Group">The group within the kind.</param>
/// <param name="Tool">The tool.</param>
/// <param name="Segment">Which stretch between reworks, in rising order.</param>
/// <param name="StartMm">The wear at the start of that segment in mm, 0 when new.</param>
/// <param name="Heats">Weighted heats since the start of the segment; null where the row only begins one.</param>
/// <param name="WearMm">The wear in mm, counted from new; negative where it reads larger; null with <paramref name="Heats"/>.</param>
public sealed record WearReadingRow(
    long Line,
    string Kind,
    string Group,
    string Tool,
    int Segment,
    double StartMm,
    double? Heats,
    double? WearMm
);

/// <summary>One tool of a fit.</summary>
/// <param name="Line">The line it stands on.</param>
/// <param name="Kind">What wears alike.</param>
/// <param name="Group">The group within the kind.</param>
/// <param name="Tool">The tool.</param>
/// <param name="LimitMm">The wear that may go in mm, above zero; null where there is no limit.</param>
/// <param name="ResolutionMm">What it is read to in mm, above zero; null where not known.</param>
/// <param name="GuessHeats">How many heats such a tool is guessed to last, above zero; null where nobody said.</param>
/// <param name="HeatsNow">Weighted heats since the start of the last segment, zero or more.</param>
public sealed record WearToolRow(
    long Line,
    string Kind,
    string Group,
    string Tool,
    double? LimitMm,
    double? ResolutionMm,
    double? GuessHeats,
    double HeatsNow
);

/// <summary>One life, ended or still going on.</summary>
/// <param name="Line">The line it stands on.</param>
/// <param name="Tool">The tool.</param>
/// <param name="Heats">Heats at its end or at the last look, above <paramref name="FromHeats"/>.</param>
/// <param name="Failed">Whether it failed then.</param>
/// <param name="FromHeats">Heats it already had when it was first watched, zero or more.</param>
public sealed record LifetimeRow(long Line, string Tool, double Heats, bool Failed, double FromHeats);

/// <summary>One station of a body.</summary>
/// <param name="Line">The line it stands on.</param>
/// <param name="FromMark">The distance from the shank mark, zero or more.</param>
/// <param name="Section">The section there.</param>
public sealed record StationRow(long Line, Length FromMark, Section Section);
