namespace ToolWear.Ordeals.Kills;

/// <summary>What is done to the files between two runs.</summary>
internal enum Damage
{
    Nothing,
    DocumentsCut,
    LogCut,
    PageZeroed,
    LogPageZeroed,
    BitsFlipped,
    DocumentsDeleted,
    HalfALineAdded,
}

/// <summary>Does it: seven times in eight something is damaged.</summary>
internal static class Damaging
{
    private const int Page = 8192;

    /// <summary>Damages the files of a store.</summary>
    /// <param name="store">The store.</param>
    /// <param name="damage">How.</param>
    /// <param name="chance">Where.</param>
    public static void Do(string store, Damage damage, Random chance)
    {
        string log = store + "-log";
        switch (damage)
        {
            case Damage.DocumentsCut:
                Cut(store, chance);
                break;
            case Damage.LogCut:
                Cut(log, chance);
                break;
            case Damage.PageZeroed:
                ZeroPage(store, chance);
                break;
            case Damage.LogPageZeroed:
                ZeroPage(log, chance);
                break;
            case Damage.BitsFlipped:
                Flip(store, chance);
                break;
            case Damage.DocumentsDeleted:
                File.Delete(store);
                if (chance.Next(2) == 0)
                {
                    File.Delete(log);
                }

                break;
            case Damage.HalfALineAdded:
                AddHalfALine(store + ".journal", chance);
                break;
            default:
                break;
        }
    }

    private static void Cut(string path, Random chance) =>
        Change(path, file => file.SetLength(chance.NextInt64(file.Length + 1)));

    private static void ZeroPage(string path, Random chance) =>
        Change(
            path,
            file =>
            {
                file.Position = chance.NextInt64(Math.Max(1, file.Length / Page)) * Page;
                file.Write(new byte[Math.Min(Page, file.Length - file.Position)]);
            }
        );

    private static void Flip(string path, Random chance) =>
        Change(
            path,
            file =>
            {
                for (int i = 0; i < 20 && file.Length > 0; i++)
                {
                    file.Position = chance.NextInt64(file.Length);
                    int old = file.ReadByte();
                    file.Position--;
                    file.WriteByte((byte)(old ^ (1 << chance.Next(8))));
                }
            }
        );

    private static void AddHalfALine(string path, Random chance) =>
        Change(
            path,
            file =>
            {
                ReadOnlySpan<byte> line =
                    "{\"seq\":9,\"at\":\"2026-11-24T22:42:46.123Z\",\"day\":\"2026-11-24\",\"entr"u8;
                file.Position = file.Length;
                file.Write(line[..chance.Next(1, line.Length)]);
            }
        );

    private static void Change(string path, Action<FileStream> change)
    {
        if (File.Exists(path))
        {
            using FileStream file = new(path, FileMode.Open, FileAccess.ReadWrite);
            change(file);
        }
    }
}
