using System.Collections.Immutable;
using ToolWear.Core.Eyes;
using ToolWear.Core.Measure;
using ToolWear.Core.Sections;
using ToolWear.Core.Tools;

namespace ToolWear.Core.Ledger;

/// <summary>How a handle sits in an eye.</summary>
public enum Fit
{
    /// <summary>Driven from both faces, narrowest in the middle.</summary>
    Wedged,

    /// <summary>Tapers one way.</summary>
    SlipOn,
}

/// <summary>An eye: its size and what may come of it.</summary>
/// <param name="Name">Its name, unique.</param>
/// <param name="Section">Its shape.</param>
/// <param name="Length">Eye length, cold.</param>
/// <param name="Width">Eye width, cold.</param>
/// <param name="NoseRadius">Nose or edge radius, null where not set.</param>
/// <param name="Depth">Through the head, null where not set.</param>
/// <param name="TaperLength">Taper of the length, mm per mm of depth over the whole width, null where not set.</param>
/// <param name="TaperWidth">Taper of the width, mm per mm of depth over the whole width, null where not set.</param>
/// <param name="Fit">How the handle sits, null where not set.</param>
/// <param name="Driven">How the drift is driven, null where not set.</param>
/// <param name="LeastLength">The least eye length that serves, null where not set.</param>
/// <param name="GreatestLength">The greatest eye length that serves, null where not set.</param>
/// <param name="LeastWidth">The least eye width that serves, null where not set.</param>
/// <param name="GreatestWidth">The greatest eye width that serves, null where not set.</param>
/// <param name="Handle">The name of the handle that goes in, null where not set.</param>
public sealed record EyeDescribed(
    string Name,
    SectionKind Section,
    Length Length,
    Length Width,
    Length? NoseRadius,
    Length? Depth,
    double? TaperLength,
    double? TaperWidth,
    Fit? Fit,
    Driving? Driven,
    Length? LeastLength,
    Length? GreatestLength,
    Length? LeastWidth,
    Length? GreatestWidth,
    string? Handle
) : LedgerEntry
{
    /// <inheritdoc />
    public override ImmutableArray<string?> Texts => [Handle];

    /// <summary>The words of <see cref="Ledger.Fit"/>.</summary>
    public static Vocabulary<Fit> FitWords { get; } =
        new("fit", (Ledger.Fit.Wedged, "wedged"), (Ledger.Fit.SlipOn, "slip-on"));

    /// <summary>The words of <see cref="Driving"/>.</summary>
    public static Vocabulary<Driving> DrivenWords { get; } =
        new("driven", (Driving.BothFaces, "both faces"), (Driving.OneFace, "one face"), (Driving.Through, "through"));
}

/// <summary>A handle as bought or made.</summary>
/// <param name="Name">Its name, unique.</param>
/// <param name="Length">The long way where it enters the eye.</param>
/// <param name="Width">The short way there.</param>
/// <param name="Taper">Its taper, mm per mm over the whole width, null where not set.</param>
/// <param name="SeatTolerance">How far the head may sit from its place either way, null where not set.</param>
/// <param name="Note">A note, null where none.</param>
public sealed record HandleDescribed(
    string Name,
    Length Length,
    Length Width,
    double? Taper,
    Length? SeatTolerance,
    string? Note
) : LedgerEntry
{
    /// <inheritdoc />
    public override ImmutableArray<string?> Notes => [Note];
}

/// <summary>A place in the series for an eye was added or changed.</summary>
/// <param name="Series">What tools of that place are made like.</param>
public sealed record SeriesDescribed(Series Series) : LedgerEntry
{
    /// <inheritdoc />
    public override ImmutableArray<string?> Texts => [Series.Steel];

    /// <inheritdoc />
    public override ImmutableArray<string?> Notes => [Series.Note];
}

/// <summary>A stage of a pattern.</summary>
/// <param name="Name">Its name: "rough".</param>
/// <param name="Eye">The eye it works on, null where none.</param>
/// <param name="Form">The form of tool it uses, null where nobody said.</param>
/// <param name="Place">The place in the series it uses.</param>
/// <param name="Work">The work it does, null where nobody said.</param>
/// <param name="HeatsAHead">Heats a head takes there, above zero, null where nobody said.</param>
/// <param name="Load">How much harder than usual it is on the tool, above zero; null counts as 1.</param>
public sealed record PatternStage(
    string Name,
    string? Eye,
    ToolForm? Form,
    Place Place,
    Work? Work,
    double? HeatsAHead,
    double? Load
);

/// <summary>A pattern was added or changed: what is forged, stage by stage.</summary>
/// <param name="Pattern">Its name, unique.</param>
/// <param name="Stages">Its stages, in order.</param>
public sealed record PatternDescribed(string Pattern, ImmutableArray<PatternStage> Stages) : LedgerEntry;

/// <summary>A bar in the stock rack was added or changed.</summary>
/// <param name="Bar">Its name, unique.</param>
/// <param name="Steel">Its steel.</param>
/// <param name="Section">The shape of its section.</param>
/// <param name="A">The diameter, or the long way.</param>
/// <param name="B">The short way, null where round.</param>
/// <param name="Length">How long it is now, null where not measured.</param>
/// <param name="Lot">Its lot, null where not noted.</param>
/// <param name="PriceAKg">Its price a kilogram in the shop's own money, zero or more, null where not noted.</param>
public sealed record BarDescribed(
    string Bar,
    string Steel,
    SectionKind Section,
    Length A,
    Length? B,
    Length? Length,
    string? Lot,
    decimal? PriceAKg
) : LedgerEntry
{
    /// <inheritdoc />
    public override ImmutableArray<string?> Texts => [Steel, Lot];
}

/// <summary>Where an order stands.</summary>
public enum OrderState
{
    /// <summary>To be forged.</summary>
    Open,

    /// <summary>Forged.</summary>
    Done,

    /// <summary>Called off.</summary>
    Dropped,
}

/// <summary>An order was added or changed.</summary>
/// <param name="Order">Its name, unique.</param>
/// <param name="Pattern">The pattern's name.</param>
/// <param name="Heads">How many heads, above zero.</param>
/// <param name="DueOn">The day it is due.</param>
/// <param name="State">Where it stands.</param>
public sealed record OrderDescribed(string Order, string Pattern, int Heads, DateOnly DueOn, OrderState State)
    : LedgerEntry
{
    /// <summary>The words of <see cref="OrderState"/>.</summary>
    public static Vocabulary<OrderState> StateWords { get; } =
        new("state", (OrderState.Open, "open"), (OrderState.Done, "done"), (OrderState.Dropped, "dropped"));
}

/// <summary>A setting of the shop was changed.</summary>
/// <param name="Setting">Its name.</param>
/// <param name="Value">Its value as text; empty goes back to the usual.</param>
public sealed record SettingChanged(string Setting, string Value) : LedgerEntry;

/// <summary>An entry was crossed out: it stays visible in the ledger but no longer counts.</summary>
/// <param name="Entry">The number of the entry that is crossed out.</param>
/// <param name="Why">Why.</param>
public sealed record EntryCrossedOut(long Entry, string Why) : LedgerEntry
{
    /// <inheritdoc />
    public override ImmutableArray<string?> Notes => [Why];
}

/// <summary>An entry that was crossed out counts again: the crossing out was the slip.</summary>
/// <param name="Entry">The number of the entry that counts again, not that of the crossing out.</param>
/// <param name="Why">Why.</param>
public sealed record EntryCountsAgain(long Entry, string Why) : LedgerEntry
{
    /// <inheritdoc />
    public override ImmutableArray<string?> Notes => [Why];
}
