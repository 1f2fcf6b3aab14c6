using System.Collections.Immutable;
using ToolWear.Core.Ledger;
using ToolWear.Core.Tools;
using static ToolWear.Core.Findings.CautionOf;
using static ToolWear.Core.Findings.WearSays;
using static ToolWear.Core.Ledger.Finding;
using static ToolWear.Core.Ledger.Rework;
using static ToolWear.Core.Ledger.ToolPart;
using static ToolWear.Core.Tools.SteelClass;

namespace ToolWear.Core.Findings;

/// <summary>What wear and forecast still say of a tool with a finding.</summary>
public enum WearSays
{
    /// <summary>They stay as they are.</summary>
    Stays,

    /// <summary>Nothing until it is mended and read again.</summary>
    AfterReading,

    /// <summary>Nothing any more.</summary>
    Nothing,
}

/// <summary>The caution that belongs to a finding.</summary>
public enum CautionOf
{
    /// <summary>None of its own.</summary>
    None,

    /// <summary>No such tool in use (29 CFR 1926.301(c), 1910.242(a)).</summary>
    NotInUse,

    /// <summary>It counts as over-heated: brittle until tempered.</summary>
    Overheated,
}

/// <summary>One thing to do before a tool with a finding is used again.</summary>
/// <param name="Deed">In a word: "dress".</param>
/// <param name="How">As an order, without a full stop: "grind it back and chamfer it".</param>
/// <param name="By">The reworks that do it.</param>
/// <param name="Shortens">Whether only one counts that says the overall length after it.</param>
public sealed record BeforeUse(string Deed, string How, ImmutableArray<Rework> By, bool Shortens = false)
{
    /// <summary>Whether a rework does it.</summary>
    /// <param name="rework">The rework.</param>
    /// <returns>True where it does.</returns>
    public bool IsDoneBy(ToolReworked rework) =>
        By.Contains(rework.What) && (!Shortens || rework is { Gauge: ToolForm.Overall, After: not null });
}

/// <summary>What follows from a finding.</summary>
/// <param name="Verdict">Out, dress first, or look it over: then a sound look alone is enough.</param>
/// <param name="Steps">What must happen, in this order; none where nothing helps or a sound look is enough.</param>
/// <param name="Else">What to do where there are no steps, as an order without a full stop.</param>
/// <param name="Wear">What wear and forecast still say.</param>
/// <param name="Caution">The caution that belongs to it.</param>
public sealed record FindingRule(
    Verdict Verdict,
    ImmutableArray<BeforeUse> Steps,
    string Else = "",
    WearSays Wear = WearSays.Stays,
    CautionOf Caution = CautionOf.None
)
{
    /// <summary>Whether the tool may not be used before the steps are done, or never.</summary>
    public bool Forbids => Verdict is Verdict.Out or Verdict.DressFirst;
}

/// <summary>What follows from a finding, by its place and the class of the steel. Common practice, no source, but for the
/// cautions that name theirs.</summary>
public static class FindingTable
{
    private static readonly ImmutableArray<SteelClass> Any = [.. Enum.GetValues<SteelClass>()];
    private static readonly ImmutableArray<SteelClass> Hardens = [OilOrWater, AirHardening, SteelClass.Unknown];
    private static readonly ImmutableArray<SteelClass> MayBeAir = [AirHardening, SteelClass.Unknown];
    private static readonly ImmutableArray<ToolPart> Anywhere = [WorkingEnd, Body, StruckEnd];

    // of one finding the strictest place first: that is where one with no place stands
    private static readonly ImmutableArray<Row> Rows =
    [
        new(Cracked, [WorkingEnd, Body], Any, Never("scrap it, or cut it up for stock beyond the crack")),
        new(Cracked, [StruckEnd], Any, First([CutBack], NotInUse)),
        new(Broken, Anywhere, Any, Never("scrap it, or cut it back and add it as a shorter tool")),
        new(Broken, [Handle], Any, First([Rehandle], NotInUse)),
        new(Mushroomed, [StruckEnd], Any, First([Dress("grind it back and chamfer it")], NotInUse)),
        new(Chipped, [WorkingEnd], Any, First([Dress("dress it; look for what broke off")], NotInUse, AfterReading)),
        new(Chipped, [StruckEnd], Any, First([Dress("grind it back and chamfer it")], NotInUse)),
        new(Bent, [Body], [Mild], First([Straighten])),
        new(
            Bent,
            [Body],
            Hardens,
            First([Straighten, Temper("re-harden it, or at least temper it, after straightening")])
        ),
        new(Soft, [WorkingEnd], MayBeAir, First([Harden], Overheated, AfterReading, Verdict.Out)),
        new(Soft, [WorkingEnd], [OilOrWater], First([Harden], wear: AfterReading, verdict: Verdict.Out)),
        new(Soft, [WorkingEnd], [Mild], Look("mild steel has no temper to lose: look it over again", AfterReading)),
        new(Soft, [StruckEnd], Any, Look("struck ends are soft: look it over again")),
        new(GlassHard, Anywhere, MayBeAir, First([Temper(BeforeABlow)], Overheated, verdict: Verdict.Out)),
        new(GlassHard, Anywhere, [Mild, OilOrWater], First([Temper(BeforeABlow)], verdict: Verdict.Out)),
        new(PickedUp, [WorkingEnd], Any, First([Dress("dress it")])),
        new(
            HeatChecked,
            [WorkingEnd],
            Any,
            First([Dress("grind out every check, else it cracks")], wear: AfterReading)
        ),
        new(Blunt, [WorkingEnd], Any, First([Dress("dress it")])),
        new(LooseHandle, [Handle], Any, First([Rehandle], NotInUse)),
        new(Stuck, [], MayBeAir, First([Temper("press it out and temper it: it counts as over-heated")], Overheated)),
        new(Stuck, [], [OilOrWater], First([FileTest])),
        new(Stuck, [], [Mild], Look("press it out and look it over")),
        new(MarkGone, [], Any, Look("re-mark it before the next measuring; then look it over")),
    ];

    private const string BeforeABlow = "temper it before anything strikes it";

    private static BeforeUse CutBack =>
        new(
            "cut back",
            "cut it back past the crack, dress and chamfer it, and read its overall length",
            [Dressed],
            true
        );

    private static BeforeUse Straighten => new("straighten", "straighten it hot", [Straightened]);

    private static BeforeUse Harden => new("re-harden", "re-harden and temper it", [Rehardened]);

    private static BeforeUse Rehandle => new("re-handle", "re-handle or re-wedge it", [Rehandled]);

    private static BeforeUse FileTest =>
        new("file-test", "press it out; file-test it; re-harden it where soft, else temper it", [Rehardened, Tempered]);

    /// <summary>What follows from a finding.</summary>
    /// <param name="finding">The finding, not sound.</param>
    /// <param name="part">Where; null, and a place where no such finding is known, count as the strictest.</param>
    /// <param name="steel">The class of the tool's steel.</param>
    /// <returns>What follows.</returns>
    /// <exception cref="InvalidOperationException">Nothing follows from sound.</exception>
    public static FindingRule Of(Finding finding, ToolPart? part, SteelClass steel)
    {
        Row[] rows = [.. Rows.Where(row => row.Finding == finding && row.Steels.Contains(steel))];
        return (Array.Find(rows, row => part is { } known && row.Parts.Contains(known)) ?? rows.First()).Rule;
    }

    /// <summary>The places where a finding can be.</summary>
    /// <param name="finding">The finding.</param>
    /// <returns>The strictest first; none where it has no place.</returns>
    public static ImmutableArray<ToolPart> PartsOf(Finding finding) =>
        [.. Rows.Where(row => row.Finding == finding).SelectMany(row => row.Parts).Distinct()];

    /// <summary>The cause to propose where a tool is scrapped with a finding open.</summary>
    /// <param name="finding">The finding.</param>
    /// <returns>The cause.</returns>
    public static ScrapCause CauseOf(Finding finding) =>
        finding switch
        {
            Cracked => ScrapCause.Cracked,
            Broken => ScrapCause.Broken,
            Bent => ScrapCause.Bent,
            Soft => ScrapCause.Soft,
            GlassHard => ScrapCause.GlassHard,
            _ => ScrapCause.Other,
        };

    private static BeforeUse Dress(string how) => new("dress", how, [Dressed]);

    private static BeforeUse Temper(string how) => new("temper", how, [Tempered, Rehardened]);

    private static FindingRule Never(string instead) => new(Verdict.Out, [], instead, Nothing, NotInUse);

    private static FindingRule First(
        ImmutableArray<BeforeUse> steps,
        CautionOf caution = CautionOf.None,
        WearSays wear = Stays,
        Verdict verdict = Verdict.DressFirst
    ) => new(verdict, steps, Wear: wear, Caution: caution);

    private static FindingRule Look(string how, WearSays wear = Stays) => new(Verdict.LookItOver, [], how, wear);

    private sealed record Row(
        Finding Finding,
        ImmutableArray<ToolPart> Parts,
        ImmutableArray<SteelClass> Steels,
        FindingRule Rule
    );
}
