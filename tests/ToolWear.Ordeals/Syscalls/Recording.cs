using System.Text;
using ToolWear.Ordeals.Processes;

namespace ToolWear.Ordeals.Syscalls;

/// <summary>One run of a deed: what stood there before, its calls, and what it came to.</summary>
internal sealed class Recording
{
    private const int ShortestWord = 4;

    private readonly string _folder;

    private Recording(string folder, IReadOnlyDictionary<string, byte[]> before, Ended ended, IReadOnlyList<Call> calls)
    {
        _folder = folder;
        Before = before;
        Ended = ended;
        Calls = calls;
    }

    public Ended Ended { get; }

    public IReadOnlyList<Call> Calls { get; }

    /// <summary>What stood in the folder before.</summary>
    public IReadOnlyDictionary<string, byte[]> Before { get; }

    /// <summary>Runs a deed in a folder that holds what it needs.</summary>
    /// <param name="deed">The deed.</param>
    /// <param name="world">A folder: "shop" in it is made what it was before, the record is kept beside it.</param>
    /// <param name="before">What stands in "shop"; null to prepare it.</param>
    /// <param name="faults">What fails, or null.</param>
    /// <param name="only">The one path that is looked at, or null for all.</param>
    /// <returns>The run.</returns>
    public static Recording Of(
        Deed deed,
        string world,
        IReadOnlyDictionary<string, byte[]>? before = null,
        string? faults = null,
        string? only = null
    )
    {
        string folder = Path.Combine(world, "shop");
        Shelf.Put(folder, before ?? new Dictionary<string, byte[]>());
        if (before is null)
        {
            deed.Prepare(new Shelf(folder));
            before = new ModelDisk(folder).After(Loss.Nothing);
        }

        (Ended ended, IReadOnlyList<Call> calls) = Strace.Run(
            world,
            Path.Combine(folder, "home"),
            faults,
            deed.LineIn(folder),
            only
        );
        return new Recording(folder, before, ended, calls);
    }

    /// <summary>Does the calls again, one after another.</summary>
    /// <param name="scratch">A folder to begin from.</param>
    /// <param name="point">Told where a crash may show another disk than before: the disk, the call, whether the deed was acknowledged.</param>
    public void Replay(string scratch, Action<ModelDisk, Call, bool> point)
    {
        Shelf.Put(scratch, Before);
        ModelDisk disk = new(_folder, scratch);
        ILookup<int, Call> begun = Calls.ToLookup(call => call.Begun);
        Dictionary<Call, Action<bool>> syncs = [];
        bool isAcknowledged = false;
        for (int i = 0; i < Calls.Count; i++)
        {
            foreach (Call call in begun[i])
            {
                if (disk.Begin(call) is { } end)
                {
                    syncs[call] = end;
                }
            }

            Call done = Calls[i];
            bool isOther = false;
            if (syncs.TryGetValue(done, out Action<bool>? sync))
            {
                sync(done.Result >= 0);
                isOther = true;
            }
            else if (done.Result >= 0)
            {
                isOther = disk.Do(done);
            }

            if (!isAcknowledged && Acknowledges(done))
            {
                isAcknowledged = isOther = true;
            }

            if (isOther)
            {
                point(disk, done, isAcknowledged);
            }
        }
    }

    /// <summary>The calls in the shop's folder that can be made to fail.</summary>
    /// <returns>Writes, syncs, renames and openings.</returns>
    public IReadOnlyList<Call> Fallible(string scratch)
    {
        Shelf.Put(scratch, Before);
        ModelDisk disk = new(_folder, scratch);
        List<Call> all = [];
        foreach (Call call in Calls)
        {
            if (disk.Concerns(call))
            {
                all.Add(call);
            }

            if (call.Result >= 0 && call.Name is not ("fsync" or "fdatasync"))
            {
                disk.Do(call);
            }
        }

        return all;
    }

    // the first thing said on standard output, through whatever number of file
    private bool Acknowledges(Call call) =>
        call.Name == "write"
        && call.Data.Length >= ShortestWord
        && Encoding.UTF8.GetBytes(Ended.Output).AsSpan().StartsWith(call.Data);
}
