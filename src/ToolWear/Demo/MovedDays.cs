using System.Globalization;
using ToolWear.Core.Ledger;

namespace ToolWear.Demo;

/// <summary>Moves the days of a ledger, and the sessions that are named by them.</summary>
/// <param name="days">How many days later; earlier where negative.</param>
/// <param name="latest">No day of something that happened is moved beyond this one.</param>
internal sealed class MovedDays(int days, DateOnly latest)
{
    public LedgerEntry Of(LedgerEntry entry) =>
        entry switch
        {
            ToolAdded e => e with { Tool = e.Tool with { MadeOn = e.Tool.MadeOn is { } made ? Day(made) : null } },
            ToolSetAside e => e with { On = Day(e.On) },
            ToolBroughtBack e => e with { On = Day(e.On) },
            ToolLent e => e with { On = Day(e.On) },
            ToolTakenBack e => e with { On = Day(e.On) },
            ToolLookedFor e => e with { On = Day(e.On) },
            ToolScrapped e => e with { On = Day(e.On) },
            SessionOpened e => e with { On = Day(e.On), Session = Name(e.Session) },
            SessionClosed e => e with { Session = Name(e.Session) },
            HeatsWorked e => e with { Session = Name(e.Session) },
            HeadsDone e => e with { Session = Name(e.Session) },
            ToolMeasured e => e with { On = Day(e.On), Session = NameIfAny(e.Session) },
            ToolReworked e => e with { On = Day(e.On) },
            ToolLookedOver e => e with { On = Day(e.On) },
            EyeMeasured e => e with { On = Day(e.On), Session = NameIfAny(e.Session) },
            OrderDescribed e => e with { DueOn = e.DueOn.AddDays(days) },
            _ => entry,
        };

    private DateOnly Day(DateOnly day) => day.AddDays(days) is var moved && moved > latest ? latest : moved;

    private string? NameIfAny(string? session) => session is null ? null : Name(session);

    private string Name(string session) =>
        session.Length >= 10
        && DateOnly.TryParseExact(
            session[..10],
            "yyyy-MM-dd",
            CultureInfo.InvariantCulture,
            DateTimeStyles.None,
            out DateOnly day
        )
            ? day.AddDays(days).ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) + session[10..]
            : session;
}
