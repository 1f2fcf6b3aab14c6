using System.Buffers.Binary;
using System.IO.Hashing;
using System.Text;
using ToolWear.Doors;
using ToolWear.Ordeals.Kills;
using ToolWear.Storage;
using ToolWear.Storage.Disks;
using ToolWear.Storage.Entries;
using ToolWear.Storage.Stores;
using ToolWear.Testing.Disks;
using ToolWear.Testing.Generators;

namespace ToolWear.Ordeals.Fuzz;

/// <summary>Journals that were changed by somebody who knows the checksums, or not.</summary>
internal sealed class JournalTarget : Target
{
    private const string Path = CrashingDisk.Folder + "/shop.db";

    private readonly byte[][] _journals =
    [
        .. Fixed
            .Samples(Ledgers.Plausible, 12)
            .Where(ledger => !ledger.IsEmpty)
            .Select(ledger =>
            {
                CrashingDisk disk = new();
                using (
                    Store store = Store.Open(
                        new StorePaths(Path),
                        disk,
                        Bench.Settings(KilledRecorder.SiteOf(disk, TextWriter.Null)),
                        _ => { }
                    )
                )
                {
                    foreach (Core.Ledger.Entered entered in ledger)
                    {
                        store.Append(entered.Day, EntryFormat.Write(entered.What));
                    }
                }

                return disk.Bytes(Path + ".journal");
            }),
    ];

    public override string Name => "journal";

    public override bool Try(Random chance)
    {
        byte[] bytes = Changed(_journals[chance.Next(_journals.Length)], chance);
        if (Refusal(chance.Next(5) == 0 ? bytes : Chained(bytes)) is not { } refusal)
        {
            return true;
        }

        MustBeCivil(HarmlessWriter.Of(refusal));
        return false;
    }

    /// <summary>Why a journal is refused.</summary>
    /// <param name="journal">Its bytes.</param>
    /// <returns>The sentence, null where it is taken.</returns>
    internal static string? Refusal(byte[] journal)
    {
        CrashingDisk disk = new();
        disk.Put(Path + ".journal", journal);
        try
        {
            using Bench bench = Bench.ToRead(KilledRecorder.SiteOf(disk, TextWriter.Null), Path);
            return null;
        }
        catch (StoreException e)
        {
            return e.Message;
        }
    }

    /// <summary>Gives every line the checksum that it should have, in the place of what stands behind its last TAB.</summary>
    /// <param name="bytes">A journal, with right checksums or none.</param>
    /// <returns>The journal.</returns>
    internal static byte[] Chained(byte[] bytes)
    {
        List<byte> chained = [];
        uint before = 0;
        foreach (Range range in bytes.AsSpan().Split((byte)'\n'))
        {
            ReadOnlySpan<byte> line = bytes.AsSpan(range);
            int tab = line.LastIndexOf((byte)'\t');
            ReadOnlySpan<byte> content = tab < 0 ? line : line[..tab];
            if (line.IsEmpty)
            {
                continue;
            }

            byte[] start = new byte[4];
            BinaryPrimitives.WriteUInt32LittleEndian(start, before);
            Crc32 crc = new();
            crc.Append(start);
            crc.Append(content);
            before = crc.GetCurrentHashAsUInt32();
            chained.AddRange(content);
            chained.AddRange(Encoding.ASCII.GetBytes($"\t{before:x8}\n"));
        }

        return [.. chained];
    }
}
