using System.Collections;
using System.Runtime.InteropServices;

namespace ToolWear.Testing.Terminals;

/// <summary>Begins a program in a session of its own whose controlling terminal is the one named.</summary>
internal static class Spawned
{
    // more than any system's structures for spawning and sets of signals take
    private const int Ample = 1024;
    private const short OwnSession = 0x80;
    private const short UsualSignals = 4;
    private const short OwnMask = 8;

    public static int Program(
        string program,
        string[] arguments,
        IReadOnlyDictionary<string, string?> environment,
        string folder,
        string terminal,
        string errorFile
    )
    {
        nint room = Marshal.AllocHGlobal(3 * Ample);
        nint[] texts = [];
        try
        {
            (nint actions, nint attributes, nint signals) = (room, room + Ample, room + (2 * Ample));
            Sure(Libc.posix_spawn_file_actions_init(actions));
            Sure(Libc.posix_spawn_file_actions_addchdir_np(actions, folder));
            // a leader of a session that has no terminal gets the first one it opens
            Sure(Libc.posix_spawn_file_actions_addopen(actions, 0, terminal, Libc.ReadWrite, 0));
            Sure(Libc.posix_spawn_file_actions_adddup2(actions, 0, 1));
            Sure(Libc.posix_spawn_file_actions_addopen(actions, 2, errorFile, Libc.WriteNew, 0x180));
            Sure(Libc.posix_spawnattr_init(attributes));
            Sure(Libc.posix_spawnattr_setflags(attributes, OwnSession | UsualSignals | OwnMask));
            Sure(Libc.sigfillset(signals));
            Sure(Libc.posix_spawnattr_setsigdefault(attributes, signals));
            Sure(Libc.sigemptyset(signals));
            Sure(Libc.posix_spawnattr_setsigmask(attributes, signals));
            nint[] argv = Texts(arguments);
            nint[] envp = Texts(Environment(environment));
            texts = [.. argv, .. envp];
            Sure(Libc.posix_spawn(out int pid, program, actions, attributes, argv, envp));
            _ = Libc.posix_spawn_file_actions_destroy(actions);
            _ = Libc.posix_spawnattr_destroy(attributes);
            return pid;
        }
        finally
        {
            foreach (nint text in texts)
            {
                Marshal.FreeCoTaskMem(text);
            }

            Marshal.FreeHGlobal(room);
        }
    }

    private static IEnumerable<string> Environment(IReadOnlyDictionary<string, string?> changes)
    {
        Dictionary<string, string?> all = [];
        foreach (DictionaryEntry each in System.Environment.GetEnvironmentVariables())
        {
            all[(string)each.Key] = (string?)each.Value;
        }

        foreach ((string name, string? value) in changes)
        {
            all[name] = value;
        }

        return all.Where(each => each.Value is not null).Select(each => $"{each.Key}={each.Value}");
    }

    private static nint[] Texts(IEnumerable<string> texts) => [.. texts.Select(Marshal.StringToCoTaskMemUTF8), 0];

    private static void Sure(int error)
    {
        if (error != 0)
        {
            throw new InvalidOperationException($"the program was not begun: error {error}");
        }
    }
}
