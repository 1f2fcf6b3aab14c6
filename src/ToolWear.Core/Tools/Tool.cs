using System.Collections.Immutable;
using ToolWear.Core.Sections;

namespace ToolWear.Core.Tools;

/// <summary>A tool as it was made or entered; what happened to it since is in the ledger.</summary>
/// <param name="Mark">The mark stamped on it.</param>
/// <param name="Form">Its form.</param>
/// <param name="Eye">The name of the eye it works for, null where none.</param>
/// <param name="Place">Its place in the series.</param>
/// <param name="Section">The shape of its section, null where nobody said.</param>
/// <param name="Steel">Its steel, by number where it has one; null where unknown.</param>
/// <param name="Lot">The bar's lot, null where not noted.</param>
/// <param name="MadeOn">The day it was made, null where not known.</param>
/// <param name="Start">New, or in use with what it had behind it.</param>
/// <param name="GuessHeats">The smith's own guess of its life in heats, above zero; null where the series' counts.</param>
/// <param name="Cost">What it cost to make.</param>
/// <param name="Peg">Where it hangs, null where nobody said.</param>
/// <param name="Note">A note, null where none.</param>
/// <param name="GaugeMarks">Where it is measured; names are unique.</param>
/// <param name="Stations">Its body, from the shank mark on; empty where not entered.</param>
public sealed record Tool(
    ToolMark Mark,
    ToolForm Form,
    string? Eye,
    Place Place,
    SectionKind? Section,
    string? Steel,
    string? Lot,
    DateOnly? MadeOn,
    ToolStart Start,
    double? GuessHeats,
    ToolCost Cost,
    string? Peg,
    string? Note,
    ImmutableArray<GaugeMark> GaugeMarks,
    ImmutableArray<ToolStation> Stations
)
{
    /// <summary>The work that counts one for one.</summary>
    public Work MainWork => Form.MainWork(Place);

    /// <summary>Finds a gauge mark by its name.</summary>
    /// <param name="name">The name.</param>
    /// <returns>The gauge mark, or null where the tool has none of that name.</returns>
    public GaugeMark? Gauge(string name) => GaugeMarks.FirstOrDefault(gauge => gauge.Name == name);

    /// <summary>The same tool with the gauge mark over all that every struck tool has.</summary>
    /// <returns>The tool, with one gauge mark more where it was missing.</returns>
    public Tool WithOverall() =>
        !Form.IsStruck || GaugeMarks.Any(gauge => gauge.Measures == Measures.Overall || gauge.Name == ToolForm.Overall)
            ? this
            : this with
            {
                GaugeMarks = GaugeMarks.Add(
                    new(ToolForm.Overall, Wears.Smaller, Measures.Overall, null, null, null, null, null)
                ),
            };

    /// <summary>Why this tool cannot be, apart from what else is in the shop.</summary>
    /// <returns>A sentence, or null where it can.</returns>
    public string? Refusal() =>
        (Mark == default ? $"a tool has a mark of 1 to {ToolMark.MostCharacters} characters" : null)
        ?? GaugeMarks.Select(gauge => gauge.Refusal()).FirstOrDefault(refusal => refusal is not null)
        ?? GaugeMarks
            .GroupBy(gauge => gauge.Name, StringComparer.Ordinal)
            .Where(same => same.Skip(1).Any())
            .Select(same => $"two gauge marks are named {same.Key}: each needs a name of its own")
            .FirstOrDefault()
        ?? GuessedLife.Refusal("guess_heats", GuessHeats)
        ?? Start.Refusal()
        ?? Cost.Refusal()
        ?? StationsRefusal();

    private string? StationsRefusal() =>
        Stations.Any(station => station.FromMark < Measure.Length.Zero) ? "a station's from_mark is zero or more"
        : Stations.Zip(Stations.Skip(1)).Any(pair => pair.First.FromMark >= pair.Second.FromMark)
            ? "stations run from the shank mark outwards, each from_mark larger than the one before"
        : null;
}
