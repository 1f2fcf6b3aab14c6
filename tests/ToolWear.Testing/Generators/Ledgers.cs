using System.Collections.Immutable;
using CsCheck;
using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;

namespace ToolWear.Testing.Generators;

/// <summary>Something that a smith tries to enter on a day.</summary>
/// <param name="Day">The shop's day.</param>
/// <param name="What">What is entered.</param>
public sealed record Attempt(DateOnly Day, LedgerEntry What);

/// <summary>Random ledgers of a small shop: few tools and days, so that the entries meet.</summary>
public static class Ledgers
{
    private static readonly EntryGens Entries = EntryGens.Narrow;

    private static readonly Gen<LedgerEntry> Plain = Gen.Frequency<LedgerEntry>(
        (20, Entries.Of<HeatsWorked>()),
        (8, Entries.Of<HeadsDone>()),
        (14, Entries.Of<ToolMeasured>()),
        (7, Entries.Of<ToolReworked>()),
        (7, Entries.Of<ToolLookedOver>()),
        (9, Entries.Of<SessionOpened>()),
        (9, Entries.Of<SessionClosed>()),
        (5, Entries.Of<ToolAdded>()),
        (3, Entries.Of<ToolCorrected>()),
        (3, Entries.Of<ToolRemarked>()),
        (2, Entries.Of<ToolStartedHere>()),
        (3, Entries.Of<ToolSetAside>()),
        (3, Entries.Of<ToolBroughtBack>()),
        (3, Entries.Of<ToolLent>()),
        (3, Entries.Of<ToolTakenBack>()),
        (1, Entries.Of<ToolLookedFor>()),
        (4, Entries.Of<ToolScrapped>()),
        (9, Entries.Of<EntryCrossedOut>()),
        (3, Entries.Of<PatternDescribed>()),
        (3, Entries.Of<SettingChanged>()),
        (5, Entries.Any)
    );

    /// <summary>An entry by itself, or a change of mind: one is crossed out and counts again, soon or at once.</summary>
    private static readonly Gen<LedgerEntry[]> Steps = Gen.Frequency(
        (20, Plain.Select(entry => new[] { entry })),
        (
            1,
            Gen.Select(
                Entries.Of<EntryCrossedOut>(),
                Plain.Array[0, 3],
                (crossing, between) =>
                    (LedgerEntry[])
                        [crossing, .. between, new EntryCountsAgain(((EntryCrossedOut)crossing).Entry, "it was right")]
            )
        )
    );

    /// <summary>
    /// What is tried one after another, over six days: three tools and a session at first, then anything. About half of
    /// it can be; the rest must be refused.
    /// </summary>
    public static Gen<ImmutableArray<Attempt>> Attempts { get; } =
        Gen.Select(
            Entries.Of<ToolAdded>().Array[3, 3],
            Entries.Of<SessionOpened>(),
            Steps.Array[0, 55],
            (tools, session, rest) => OverDays([.. tools, session, .. rest.SelectMany(each => each)])
        );

    /// <summary>A ledger that stands: what of the attempts can be, numbered.</summary>
    public static Gen<ImmutableArray<Entered>> Plausible { get; } =
        Attempts.Select(attempts => Accepted(attempts).Ledger.ToImmutableArray());

    /// <summary>The shop after all attempts that it takes.</summary>
    /// <param name="attempts">What is tried.</param>
    /// <returns>The shop.</returns>
    public static Shop Accepted(ImmutableArray<Attempt> attempts) =>
        attempts.Aggregate(Shop.Empty, (shop, attempt) => shop.After(Number(shop, attempt)).After ?? shop);

    /// <summary>The attempt as the next entry of a shop.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="attempt">What is tried.</param>
    /// <returns>The entry with its number, entered at noon.</returns>
    public static Entered Number(Shop shop, Attempt attempt) =>
        new(
            shop.NextNumber,
            new DateTimeOffset(attempt.Day.ToDateTime(new TimeOnly(12, 0)), TimeSpan.Zero),
            attempt.Day,
            attempt.What
        );

    private static ImmutableArray<Attempt> OverDays(LedgerEntry[] entries) =>
        [
            .. entries.Select(
                (entry, i) => new Attempt(Pool.FirstDay.AddDays(2 + (i * (Pool.Days - 2) / entries.Length)), entry)
            ),
        ];
}
