using System.Globalization;
using ToolWear.Ordeals.Processes;

namespace ToolWear.Ordeals.Syscalls;

/// <summary>Makes each write, sync, rename and opening of a deed fail in turn, and holds what it says against what is durable.</summary>
internal sealed class Faults
{
    private const int Attempts = 3;

    private static readonly string[] Errors = ["EIO", "ENOSPC", "EROFS", "EDQUOT"];

    /// <summary>The deeds that are tried.</summary>
    public static IReadOnlyList<Deed> Deeds { get; } =
    [
        .. Deed.All.Where(deed =>
            deed.Name
                is "heats"
                    or "measure"
                    or "close-session"
                    or "cross-out"
                    or "import"
                    or "backup"
                    or "restore"
                    or "export"
                    or "first start in a new home"
        ),
    ];

    /// <summary>How many calls were made to fail.</summary>
    public int Tried { get; private set; }

    /// <summary>How many were missed: another call of the process stood in that place three times over.</summary>
    public int Missed { get; private set; }

    /// <summary>How many runs did what they were told all the same.</summary>
    public int Done { get; private set; }

    /// <summary>How many refused and their entry stands in the shop all the same: the line in flight.</summary>
    public int Kept { get; private set; }

    /// <summary>Acknowledged, and the strict disk has not got it.</summary>
    public List<string> NotDurable { get; } = [];

    /// <summary>Ended otherwise than with 0 or 1, with a trace, or with the wrong one of the two.</summary>
    public List<string> Uncivil { get; } = [];

    /// <summary>Left a shop that is not what it was and not what it should be.</summary>
    public List<string> Harmed { get; } = [];

    public int Wrong => NotDurable.Count + Uncivil.Count + Harmed.Count;

    /// <summary>Tries every call of every deed by hand with one error after another, and says what came of it.</summary>
    /// <param name="names">The names of the deeds, none for all.</param>
    /// <returns>The exit code.</returns>
    public static int ByHand(IReadOnlyList<string> names)
    {
        int wrong = 0;
        foreach (Deed deed in Deeds.Where(deed => names.Count == 0 || names.Contains(deed.Name)))
        {
            Faults faults = new();
            faults.Run(deed, Errors, every: 1);
            Console.WriteLine($"{deed.Name}: {faults}");
            wrong += faults.Wrong;
        }

        return wrong == 0 ? 0 : 1;
    }

    /// <summary>Tries the calls of one deed.</summary>
    /// <param name="deed">The deed.</param>
    /// <param name="errors">The errors; each call meets the next one, a sync meets all.</param>
    /// <param name="every">How many calls there are to one that is tried.</param>
    public void Run(Deed deed, IReadOnlyList<string> errors, int every)
    {
        using TemporaryFolder folder = new();
        Recording sound = Recording.Of(deed, folder.Path);
        Judge judge = Judge.Of(deed, sound, folder.Path);
        IReadOnlyList<Call> calls = sound.Fallible(folder.In("scratch"));
        for (int i = 0; i < calls.Count; i += every)
        {
            bool isSync = calls[i].Name is "fsync" or "fdatasync";
            foreach (string error in isSync ? errors : [errors[i / every % errors.Count]])
            {
                Try(deed, judge, sound, calls, i, error, folder);
            }
        }
    }

    public override string ToString() =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"tried {Tried}, missed {Missed}, done all the same {Done}, refused and kept {Kept}, not durable {NotDurable.Count}, uncivil {Uncivil.Count}, harmed {Harmed.Count}"
        )
        + string.Concat(
            NotDurable.Take(4).Concat(Uncivil.Take(4)).Concat(Harmed.Take(4)).Select(wrong => "\n  " + wrong)
        );

    // Which one of its name a call is in its thread differs between runs: where another was hit, it is looked up again. The
    // first calls of the thread of the documents are hit by their path alone; then nothing can be said of the strict disk.
    private void Try(
        Deed deed,
        Judge judge,
        Recording sound,
        IReadOnlyList<Call> calls,
        int which,
        string error,
        TemporaryFolder folder
    )
    {
        for (int attempt = 0; attempt < Attempts && which < calls.Count; attempt++)
        {
            Call call = calls[which];
            string? only = attempt < Attempts - 1 ? null : call.Arguments.FirstOrDefault(each => each.StartsWith('/'));
            int ordinal = only is null
                ? call.Ordinal
                : calls.Take(which + 1).Count(each => each.Name == call.Name && each.Arguments.Contains(only));
            Recording run = Recording.Of(deed, folder.Path, sound.Before, Strace.Fault(call, error, ordinal), only);
            IReadOnlyList<Call> now = run.Fallible(folder.In("scratch"));
            int injected = now.Count(each => each.IsInjected);
            if (injected > 0 && injected == run.Calls.Count(each => each.IsInjected))
            {
                Tried++;
                string where =
                    $"{deed.Name}, {call.Name} {error} ({Path.GetFileName(call.Arguments.FirstOrDefault(each => each.StartsWith('/')) ?? call.Arguments[0])})";
                Hold(judge, run, folder, where, hasStrict: only is null);
                return;
            }

            calls = only is null ? now : calls;
        }

        Missed++;
    }

    private void Hold(Judge judge, Recording run, TemporaryFolder folder, string where, bool hasStrict)
    {
        (int exit, string output, string error) = run.Ended;
        string said = $"{where}: exit {exit}, \"{output.Trim()}\", {error.Trim()}";
        bool isTold = output.Length > 0;
        Done += exit == 0 ? 1 : 0;
        if (exit is not (0 or 1) || (exit == 0) != isTold || error.Contains("   at ", StringComparison.Ordinal))
        {
            Uncivil.Add(said);
        }

        IReadOnlyDictionary<string, byte[]> strict = run.Before;
        run.Replay(folder.In("scratch"), (disk, _, _) => strict = disk.After(Loss.Everything));
        if (hasStrict && judge.Look(strict, isTold) is { } lost)
        {
            (isTold ? NotDurable : Harmed).Add($"{said}: {lost}");
        }

        string shop = folder.In("shop");
        if (judge.Look(shop, isTold) is { } harmed)
        {
            Harmed.Add($"{said}: {harmed}");
        }
        else if (!isTold && judge.Look(shop, isAcknowledged: true) is null)
        {
            Kept++;
        }
    }
}
