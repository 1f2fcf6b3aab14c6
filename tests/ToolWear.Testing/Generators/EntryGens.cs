using System.Collections.Immutable;
using CsCheck;
using ToolWear.Core.Ledger;
using ToolWear.Core.Sections;
using ToolWear.Core.Tools;

namespace ToolWear.Testing.Generators;

/// <summary>A generator for each kind of entry, made of a pool. Every kind stands in <see cref="ByKind"/>.</summary>
public sealed partial class EntryGens
{
    private readonly Pool pool;
    private readonly Gen<string?> name;

    /// <summary>Makes the generators of a pool.</summary>
    /// <param name="pool">What the entries are made of.</param>
    public EntryGens(Pool pool)
    {
        this.pool = pool;
        name = Gen.Null(pool.Name);
        ByKind = Kinds().ToImmutableDictionary(kind => kind.Type, kind => kind.Entries);
        Any = Gen.OneOf([.. ByKind.OrderBy(kind => kind.Key.Name, StringComparer.Ordinal).Select(kind => kind.Value)]);
    }

    /// <summary>Entries of which every value is valid by itself and as odd as may be: for writing and reading back.</summary>
    public static EntryGens Wide { get; } = new(Pool.Wide);

    /// <summary>Entries of few names and days, so that they meet; some hold a value that must be refused.</summary>
    public static EntryGens Narrow { get; } = new(Pool.Narrow);

    /// <summary>The generators by the kind of entry.</summary>
    public ImmutableDictionary<Type, Gen<LedgerEntry>> ByKind { get; }

    /// <summary>Any entry, each kind as often as another.</summary>
    public Gen<LedgerEntry> Any { get; }

    /// <summary>The generator of one kind.</summary>
    /// <typeparam name="T">The kind.</typeparam>
    /// <returns>Its generator.</returns>
    public Gen<LedgerEntry> Of<T>()
        where T : LedgerEntry => ByKind[typeof(T)];

    private Gen<ToolCorrected> Corrected() =>
        Gen.Select(
            new ToolGens(pool).Tool,
            Gen.Bool,
            new ToolGens(pool).Tool,
            pool.Note,
            (tool, has, was, why) => has ? new ToolCorrected(tool, was, why) : new ToolCorrected(tool)
        );

    private IEnumerable<(Type Type, Gen<LedgerEntry> Entries)> Kinds() =>
        [
            Kind(new ToolGens(pool).Tool.Select(tool => new ToolAdded(tool))),
            Kind(Corrected()),
            Kind(Gen.Select(pool.Mark, pool.Mark, (from, to) => new ToolRemarked(from, to))),
            Kind(Gen.Select(pool.Mark, pool.Note, (mark, why) => new ToolStartedHere(mark, why))),
            .. ComingAndGoing(),
            Kind(Scrapped()),
            Kind(Opened()),
            Kind(
                Gen.Select(
                    pool.Session,
                    Gen.Nullable(pool.Heads),
                    (session, heads) => new SessionClosed(session, heads)
                )
            ),
            Kind(
                Gen.Select(
                    pool.Session,
                    pool.Mark,
                    Gen.Enum<Work>(),
                    pool.Heats,
                    Gen.Enum<HeatsHow>(),
                    (session, mark, work, heats, how) => new HeatsWorked(session, mark, work, heats, how)
                )
            ),
            Kind(
                Gen.Select(
                    pool.Session,
                    pool.Name,
                    pool.Heads,
                    (session, stage, heads) => new HeadsDone(session, stage, heads)
                )
            ),
            Kind(Measured()),
            Kind(Reworked()),
            Kind(
                Gen.Select(
                    pool.Mark,
                    pool.Day,
                    Gen.Enum<Finding>(),
                    name,
                    pool.Note,
                    Gen.Nullable(Gen.Enum<ToolPart>()),
                    (mark, on, finding, by, note, part) => new ToolLookedOver(mark, on, finding, by, note, part)
                )
            ),
            Kind(EyesMeasured()),
            Kind(Eyes()),
            Kind(Handles()),
            Kind(SeriesOfTools()),
            Kind(Patterns()),
            Kind(Bars()),
            Kind(Orders()),
            Kind(Settings()),
            Kind(Gen.Select(pool.Entry, Texts.Name, (entry, why) => new EntryCrossedOut(entry, why))),
            Kind(Gen.Select(pool.Entry, Texts.Name, (entry, why) => new EntryCountsAgain(entry, why))),
        ];

    private IEnumerable<(Type Type, Gen<LedgerEntry> Entries)> ComingAndGoing() =>
        [
            Kind(Gen.Select(pool.Mark, pool.Day, pool.Note, (mark, on, why) => new ToolSetAside(mark, on, why))),
            Kind(Gen.Select(pool.Mark, pool.Day, pool.Note, (mark, on, why) => new ToolBroughtBack(mark, on, why))),
            Kind(
                Gen.Select(
                    pool.Mark,
                    pool.Day,
                    pool.Name,
                    pool.Note,
                    (mark, on, to, note) => new ToolLent(mark, on, to, note)
                )
            ),
            Kind(Gen.Select(pool.Mark, pool.Day, pool.Note, (mark, on, note) => new ToolTakenBack(mark, on, note))),
            Kind(
                Gen.Select(
                    pool.Mark,
                    pool.Day,
                    Gen.Bool,
                    name,
                    (mark, on, seen, by) => new ToolLookedFor(mark, on, seen, by)
                )
            ),
        ];

    private static (Type Type, Gen<LedgerEntry> Entries) Kind<T>(Gen<T> entries)
        where T : LedgerEntry => (typeof(T), entries.Select(LedgerEntry (entry) => entry));

    private Gen<ToolScrapped> Scrapped() =>
        Gen.Select(
            pool.Mark,
            pool.Day,
            Gen.Enum<ScrapCause>(),
            pool.Mark,
            pool.Note,
            Gen.Select(Gen.Nullable(Gen.Enum<ToolPart>()), Gen.Nullable(Gen.Enum<LedTo>())),
            (mark, on, cause, into, note, why) =>
                new ToolScrapped(
                    mark,
                    on,
                    cause,
                    cause == ScrapCause.MadeInto ? into : null,
                    note,
                    why.Item1,
                    why.Item2
                )
        );

    private Gen<SessionOpened> Opened() =>
        Gen.Select(
            pool.Session,
            pool.Day,
            Gen.Null(pool.Pattern),
            Gen.Select(
                name,
                Gen.Nullable(Gen.Enum<Cooling>()),
                Gen.Nullable(pool.Blows, 0.6),
                (lubricant, cooling, blows) => new Care(lubricant, cooling, blows)
            ),
            name,
            pool.Note,
            Gen.Select(
                pool.Mark,
                Gen.Enum<Work>(),
                Gen.Bool,
                (mark, work, set) => new ToolAtHammer(mark, work, set)
            ).Array[0, 3],
            (session, on, pattern, care, hand, note, tools) =>
                new SessionOpened(session, on, pattern, care, hand, note, tools.Length == 0 ? null : [.. tools])
        );

    private Gen<ToolMeasured> Measured() =>
        Gen.Select(
            pool.Mark,
            pool.Gauge,
            pool.Day,
            Gen.Null(pool.Session, 0.5),
            pool.Size,
            Gen.Nullable(pool.Size, 0.8),
            name,
            pool.Note,
            (mark, gauge, on, session, size, resolution, by, note) =>
                new ToolMeasured(mark, gauge, on, session, size, resolution, by, note)
        );

    private Gen<ToolReworked> Reworked() =>
        Gen.Select(
            pool.Mark,
            pool.Day,
            Gen.Enum<Rework>(),
            Gen.Null(pool.Gauge, 0.4),
            Gen.Select(Gen.Nullable(pool.Size), Gen.Nullable(pool.Size), Gen.Bool),
            ToolGens.Amount,
            ToolGens.Amount,
            pool.Note,
            (mark, on, what, gauge, sizes, hours, cost, note) =>
                gauge is null
                    ? new ToolReworked(mark, on, what, null, null, null, hours, cost, note)
                    : new ToolReworked(mark, on, what, gauge, sizes.Item1, sizes.Item2, hours, cost, note)
        );
}
