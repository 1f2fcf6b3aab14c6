using System.Collections.Immutable;
using System.Diagnostics;
using System.Globalization;
using ToolWear.Doors;
using ToolWear.Storage;
using ToolWear.Storage.Disks;
using ToolWear.Storage.Entries;
using ToolWear.Storage.Journal;
using ToolWear.Storage.Mending;
using ToolWear.Storage.Stores;

namespace ToolWear.Ordeals.Kills;

/// <summary>Kills children that record, damages the files, opens the store again and holds it against what was acknowledged.</summary>
/// <remarks>
/// Four kills in five are aimed: the child says when the first byte of a line is written, and is killed a random time
/// after one of these. The fifth falls at any moment from its start on, on a child that writes as it always does. What
/// counts as between first byte and acknowledgement is what the child said last when it died, not what was aimed at.
/// </remarks>
/// <param name="seed">For entries, moments and damage.</param>
internal sealed class Killing(int seed) : IDisposable
{
    private const int LongestPause = 4;
    private const int KillsInOneStore = 25;

    // a document file can be so rotten that reading it does not end; nobody wants to wait as long as a smith would
    private static readonly TimeSpan WatchLimit = TimeSpan.FromSeconds(3);

    private readonly Random _chance = new(seed);
    private readonly KillTally _tally = new();
    private readonly SteadyWork _work = new(seed);
    private readonly string _folder = Directory.CreateTempSubdirectory("toolwear-kills-").FullName;
    private long _before;
    private int _stores;

    private string Store => Path.Combine(_folder, $"shop {_stores} ü.db");

    /// <summary>Kills, in as many rows beside each other as there are cores.</summary>
    /// <param name="number">How many.</param>
    /// <param name="seed">For everything.</param>
    /// <returns>What came of it.</returns>
    public static KillTally Run(int number, int seed)
    {
        const int Rows = 2;
        KillTally all = new();
        KillTally[] rows = new KillTally[Rows];
        Parallel.For(
            0,
            Rows,
            row =>
            {
                using Killing killing = new((seed * 100) + row);
                rows[row] = killing.Kill((number + Rows - 1 - row) / Rows);
            }
        );
        Array.ForEach(rows, all.Add);
        return all;
    }

    /// <summary>Kills any number by hand and says what came of it.</summary>
    /// <param name="number">How many.</param>
    /// <param name="seed">For everything.</param>
    /// <returns>The exit code.</returns>
    public static int ByHand(int number, int seed)
    {
        KillTally tally = Run(number, seed);
        Console.Write(tally.ToString());
        return tally.Lost == 0 && tally.Wrong.Count == 0 ? 0 : 1;
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    private KillTally Kill(int number)
    {
        for (int i = 0; i < number; i++)
        {
            if (i % KillsInOneStore == 0)
            {
                _stores++;
                _before = 0;
            }

            Damage damage = (Damage)(i % 8);
            Life life = LiveAndDie(aimed: i % 5 != 4);
            Damaging.Do(Store, damage, _chance);
            Look(life, damage);
        }

        return _tally;
    }

    // What the child said, in order, up to its last word.
    private Life LiveAndDie(bool aimed)
    {
        string program = typeof(Killing).Assembly.Location;
        ProcessStartInfo start = new(Environment.ProcessPath!)
        {
            RedirectStandardOutput = true,
            UseShellExecute = false,
        };
        if (Path.GetFileNameWithoutExtension(Environment.ProcessPath!) == "dotnet")
        {
            start.ArgumentList.Add(program);
        }

        string[] arguments =
        [
            "recorder",
            Store,
            seed.ToString(CultureInfo.InvariantCulture),
            (aimed ? LongestPause : 0).ToString(CultureInfo.InvariantCulture),
        ];
        Array.ForEach(arguments, start.ArgumentList.Add);
        using Process child = Process.Start(start)!;
        int lines = aimed ? _chance.Next(1, 9) : int.MaxValue;
        TimeSpan delay = TimeSpan.FromMicroseconds(_chance.Next(3 * LongestPause * 1000));
        using Timer? blind = aimed ? null : KillAfter(child, TimeSpan.FromMilliseconds(_chance.Next(600)));
        long acknowledged = -1;
        bool isBegun = false;
        while (child.StandardOutput.ReadLine() is { } said)
        {
            isBegun = said == "w";
            acknowledged = said[0] is 'a' or 'o' ? long.Parse(said[2..], CultureInfo.InvariantCulture) : acknowledged;
            if (isBegun && --lines == 0)
            {
                long until = Stopwatch.GetTimestamp() + (long)(delay.TotalSeconds * Stopwatch.Frequency);
                SpinWait.SpinUntil(() => Stopwatch.GetTimestamp() >= until);
                child.Kill();
            }
        }

        child.WaitForExit();
        return new Life(acknowledged < 0 ? _before : acknowledged, isBegun);
    }

    private static Timer KillAfter(Process child, TimeSpan time) =>
        new(_ => child.Kill(), null, time, Timeout.InfiniteTimeSpan);

    private void Look(Life life, Damage damage)
    {
        string where = $"seed {seed}, kill {_tally.Kills + 1}, {damage}";
        List<string> bodies = [];
        string how;
        long found;
        try
        {
            StoreSettings settings = Bench.Settings(KilledRecorder.SiteOf(new RealDisk(), TextWriter.Null)) with
            {
                WatchLimit = WatchLimit,
            };
            var paths = new StorePaths(Store);
            Store store = Storage.Stores.Store.Open(
                paths,
                new RealDisk(),
                settings,
                line => bodies.AddRange(line.Bodies)
            );
            found = store.LastSeq;
            // what became of the documents is known once they have followed
            store.Dispose();
            how = HowOpened(store.Findings);

            // the documents too tell the truth, or are built anew
            foreach (StoreFinding finding in StoreCheck.Run(paths, new RealDisk(), settings).Findings)
            {
                if (finding.Kind is not FindingKind.DocumentsRebuilt)
                {
                    _tally.AddWrong($"{where}: {finding.Sentence}");
                }
            }
        }
        catch (StoreException e)
        {
            _tally.AddWrong($"{where}: {e.Message}");
            how = "refused";
            found = bodies.Count;
        }

        Compare(life, found, bodies, where);
        _tally.Add(life.DiedWriting, Math.Max(0, life.Acknowledged - _before), $"{damage}: {how}");
        _before = found;
    }

    private void Compare(Life life, long found, List<string> bodies, string where)
    {
        long next = life.Acknowledged + _work.Line(life.Acknowledged + 1).Length;
        if (found < life.Acknowledged)
        {
            _tally.AddLost(life.Acknowledged - found);
        }
        else if (found == next)
        {
            _tally.AddKept();
        }
        else if (found != life.Acknowledged)
        {
            _tally.AddWrong(
                $"{where}: {found} entries, {life.Acknowledged} acknowledged, {next} with the one in flight"
            );
        }

        if (!_work.Bodies(found).SequenceEqual(bodies, StringComparer.Ordinal))
        {
            _tally.AddWrong($"{where}: other entries than were recorded");
        }
    }

    private static string HowOpened(ImmutableArray<StoreFinding> findings) =>
        findings.IsEmpty
            ? "as it was, or documents brought up"
            : string.Join(", ", findings.Select(finding => finding.Kind.ToString()).Distinct().Order());

    private readonly record struct Life(long Acknowledged, bool DiedWriting);
}
