using System.Diagnostics;
using System.Globalization;
using ToolWear.Ordeals.Processes;
using ToolWear.Ordeals.Syscalls;
using ToolWear.Storage;

namespace ToolWear.Ordeals.Writers;

/// <summary>What is done to a shop that many write into.</summary>
internal enum Trouble
{
    None,
    LockDeleted,
    NoLocks,
    TwoLinks,
}

/// <summary>Writers of one shop at once: half are commands one after another, half keep it open as a window does.</summary>
internal sealed class ManyWriters(Trouble trouble)
{
    private const int DeletedEveryMs = 15;

    public Acknowledged Told { get; } = new();

    public int Lost { get; private set; }

    public int Wrong { get; private set; }

    /// <summary>Why the journal cannot be read when they have ended, or nothing.</summary>
    public string Damage { get; private set; } = "";

    /// <summary>Runs every trouble by hand and says what came of it.</summary>
    /// <param name="writers">How many writers.</param>
    /// <param name="entries">How many entries each.</param>
    /// <returns>The exit code.</returns>
    public static int ByHand(int writers, int entries)
    {
        int wrong = 0;
        foreach (Trouble trouble in Enum.GetValues<Trouble>())
        {
            ManyWriters many = new(trouble);
            many.Run(writers, entries);
            Console.WriteLine(many.ToString());
            wrong += many.Lost + many.Wrong;
        }

        return wrong == 0 ? 0 : 1;
    }

    /// <summary>Lets them write, and compares.</summary>
    /// <param name="writers">How many.</param>
    /// <param name="entries">How many entries each tries.</param>
    public void Run(int writers, int entries)
    {
        using TemporaryFolder folder = new();
        new Shelf(folder.Path).Run([.. Deed.Tool]);
        string[] stores = [folder.In("shop.db"), folder.In("shop.db")];
        if (trouble == Trouble.TwoLinks)
        {
            stores[1] = folder.In("other.db");
            using Process link = Process.Start("ln", [stores[0] + ".journal", stores[1] + ".journal"]);
            link.WaitForExit();
        }

        using CancellationTokenSource ended = new();
        Task deleting =
            trouble == Trouble.LockDeleted ? DeleteAsync(stores[0] + ".lock", ended.Token) : Task.CompletedTask;
        Parallel.For(
            0,
            writers,
            new ParallelOptions { MaxDegreeOfParallelism = writers },
            writer =>
            {
                string name = string.Create(CultureInfo.InvariantCulture, $"w{writer}");
                string store = stores[writer / 2 % 2];
                if (writer % 2 == 0)
                {
                    Command(folder.Path, store, name, entries);
                }
                else
                {
                    Keep(folder.Path, store, name, entries);
                }
            }
        );
        ended.Cancel();
        deleting.Wait();
        try
        {
            (Lost, Wrong) = Told.Against(stores[0]);
        }
        catch (StoreException e)
        {
            Damage = e.Message;
            Lost = Told.Count;
        }
    }

    public override string ToString() =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{trouble}: acknowledged {Told.Count}, lost {Lost}, under another number {Wrong}, stopped {Told.Refused}{(Told.Refused > 0 ? ": " + Told.Sentence : "")} {Damage}"
        );

    private void Command(string folder, string store, string name, int entries)
    {
        for (int i = 0; i < entries; i++)
        {
            string note = string.Create(CultureInfo.InvariantCulture, $"{name}-{i}");
            string[] line = ["look-over", "R3", "sound", "--note", note, "--store", store];
            (string program, string[] arguments) = Troubled(Programs.ToolWear, line);
            Ended ended = Programs.End(program, folder, arguments);
            if (ended.Output.StartsWith("entry ", StringComparison.Ordinal))
            {
                Told.Take(ended.Output.Split('\n')[0], note);
            }
            else
            {
                Told.Refuse(ended.Error.Trim());
            }
        }
    }

    private void Keep(string folder, string store, string name, int entries)
    {
        (string program, string[] arguments) = Troubled(
            Programs.Own,
            ["writer", store, name, entries.ToString(CultureInfo.InvariantCulture)]
        );
        using Process child = Programs.Start(program, folder, arguments);
        while (child.StandardOutput.ReadLine() is { } said)
        {
            if (said.StartsWith("entry ", StringComparison.Ordinal))
            {
                Told.Take(said, said.Split(' ')[2]);
            }
            else if (said.StartsWith("no ", StringComparison.Ordinal))
            {
                Told.Refuse(said[3..]);
            }
        }

        child.WaitForExit();
    }

    // a file system without locks answers so (flock(2), fcntl(2)); .NET then goes on without one
    private (string Program, string[] Arguments) Troubled(string program, string[] line) =>
        trouble == Trouble.NoLocks
            ? (
                "strace",
                [
                    "-f",
                    "-qq",
                    "-o",
                    "/dev/null",
                    "-e",
                    "trace=flock",
                    "-e",
                    "inject=flock:error=EOPNOTSUPP",
                    "--",
                    program,
                    .. line,
                ]
            )
            : (program, line);

    private static async Task DeleteAsync(string path, CancellationToken ended)
    {
        while (!ended.IsCancellationRequested)
        {
            File.Delete(path);
            await Task.Delay(DeletedEveryMs, CancellationToken.None);
        }
    }
}
