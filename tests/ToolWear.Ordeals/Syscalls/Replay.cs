using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using ToolWear.Ordeals.Processes;

namespace ToolWear.Ordeals.Syscalls;

/// <summary>Builds the disks that a crash at any moment of a deed may leave, from its system calls, and opens the shop on each.</summary>
internal sealed class Replay(int seed)
{
    private static readonly Loss[] Plain = [Loss.Everything, Loss.Nothing, Loss.Bytes, Loss.Names];

    private readonly Random _chance = new(seed);

    /// <summary>How many disks were tried.</summary>
    public int States { get; private set; }

    /// <summary>How many of them were the strict disk's: everything lost that was not synced.</summary>
    public int Strict { get; private set; }

    /// <summary>On how many something acknowledged was missing.</summary>
    public int Lost { get; private set; }

    /// <summary>What was otherwise than it must be, lost or not.</summary>
    public List<string> Wrong { get; } = [];

    /// <summary>Replays every deed by hand and says what came of it.</summary>
    /// <param name="seed">For what is lost.</param>
    /// <param name="some">How many random losses at each moment.</param>
    /// <param name="names">The names of the deeds, none for all.</param>
    /// <returns>The exit code.</returns>
    public static int ByHand(int seed, int some, IReadOnlyList<string> names)
    {
        (int states, int strict, int lost, int wrong) = (0, 0, 0, 0);
        foreach (Deed deed in Deed.All.Where(deed => names.Count == 0 || names.Contains(deed.Name)))
        {
            Replay replay = new(seed);
            replay.Run(deed, some, documents: 25);
            Console.WriteLine($"{deed.Name}: {replay}");
            (states, strict) = (states + replay.States, strict + replay.Strict);
            (lost, wrong) = (lost + replay.Lost, wrong + replay.Wrong.Count);
        }

        Console.WriteLine($"states {states}, strict {strict}, lost {lost}, wrong {wrong}");
        return wrong == 0 ? 0 : 1;
    }

    /// <summary>Replays one deed.</summary>
    /// <param name="deed">The deed.</param>
    /// <param name="some">How many random losses at each moment.</param>
    /// <param name="documents">How many of the moments at which only documents are written are tried; of the others all.</param>
    public void Run(Deed deed, int some, int documents)
    {
        using TemporaryFolder folder = new();
        Recording run = Recording.Of(deed, folder.Path);
        if (run.Ended.Exit != 0 || run.Ended.Output.Length == 0)
        {
            Wrong.Add($"{deed.Name}: exit {run.Ended.Exit}: {run.Ended.Error}");
            return;
        }

        Judge judge = Judge.Of(deed, run, folder.Path);
        HashSet<string> seen = [];
        (int moment, int ofDocuments) = (0, 0);
        run.Replay(folder.In("scratch"), (disk, call, _) => ofDocuments += disk.WritesDocuments(call) ? 1 : 0);
        int every = Math.Max(1, ofDocuments / Math.Max(1, documents));
        run.Replay(
            folder.In("scratch"),
            (disk, call, isAcknowledged) =>
            {
                moment++;
                if (disk.WritesDocuments(call) && moment % every != 0)
                {
                    return;
                }

                foreach (Loss loss in Plain.Concat(Enumerable.Range(0, some).Select(_ => Loss.Some(_chance))))
                {
                    SortedDictionary<string, byte[]> files = disk.After(loss);
                    if (seen.Add(HashOf(files) + isAcknowledged))
                    {
                        States++;
                        Strict += loss == Loss.Everything ? 1 : 0;
                        Try(judge, files, isAcknowledged, $"{deed.Name}, moment {moment}");
                    }
                }
            }
        );
    }

    public override string ToString()
    {
        StringBuilder text = new();
        text.Append(
            CultureInfo.InvariantCulture,
            $"states {States}, strict {Strict}, lost {Lost}, wrong {Wrong.Count}"
        );
        foreach (string wrong in Wrong.Take(5))
        {
            text.Append("\n  ").Append(wrong);
        }

        return text.ToString();
    }

    private void Try(Judge judge, SortedDictionary<string, byte[]> files, bool isAcknowledged, string where)
    {
        if (judge.Look(files, isAcknowledged) is { } wrong)
        {
            Lost += isAcknowledged ? 1 : 0;
            Wrong.Add($"{where}{(isAcknowledged ? ", acknowledged" : "")}: {wrong}");
        }
    }

    private static string HashOf(SortedDictionary<string, byte[]> files)
    {
        using IncrementalHash hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        foreach ((string name, byte[] bytes) in files)
        {
            hash.AppendData(Encoding.UTF8.GetBytes(name));
            hash.AppendData(BitConverter.GetBytes(bytes.Length));
            hash.AppendData(bytes);
        }

        return Convert.ToHexString(hash.GetHashAndReset());
    }
}
