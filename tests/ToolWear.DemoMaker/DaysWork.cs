using System.Collections.Immutable;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Tools;

namespace ToolWear.DemoMaker;

/// <summary>How hot the work came from the fire on a day; it decides how fast drifts go.</summary>
internal enum Fire
{
    /// <summary>800 to 950 degrees Celsius.</summary>
    Red,

    /// <summary>950 to 1050.</summary>
    Orange,

    /// <summary>1050 to 1150.</summary>
    Yellow,
}

/// <summary>What one tool did on a day.</summary>
/// <param name="Tool">Its mark.</param>
/// <param name="Work">The work.</param>
/// <param name="Heats">Heats as worked.</param>
/// <param name="How">Counted, or estimated afterwards.</param>
/// <param name="BentBefore">Whether it was found bent and was straightened before these heats.</param>
internal sealed record Share(
    string Tool,
    Work Work,
    Heats Heats,
    HeatsHow How = HeatsHow.Counted,
    bool BentBefore = false
);

/// <summary>A session as it was.</summary>
/// <param name="Name">Its name: it holds no day, since the demo's days are moved.</param>
/// <param name="On">The day.</param>
/// <param name="Pattern">The pattern.</param>
/// <param name="Heads">Heads finished.</param>
/// <param name="Fire">How hot the work was.</param>
/// <param name="Hand">Who worked.</param>
/// <param name="Care">Lubricant, cooling, blows.</param>
/// <param name="Note">A note.</param>
/// <param name="Shares">What each tool did, in order.</param>
internal sealed record DaysWork(
    string Name,
    DateOnly On,
    string Pattern,
    int Heads,
    Fire Fire,
    string Hand,
    Care Care,
    string? Note,
    ImmutableArray<Share> Shares
);
