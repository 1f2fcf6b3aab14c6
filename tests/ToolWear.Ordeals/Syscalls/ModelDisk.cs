using System.Globalization;

namespace ToolWear.Ordeals.Syscalls;

/// <summary>
/// A folder as a disk may hold it while recorded calls are done again: bytes are durable once their file is synced, a name
/// once its folder is. Nothing else is taken for granted.
/// </summary>
internal sealed class ModelDisk
{
    private const int AlwaysAtEnd = -1;

    private readonly string _root;
    private readonly Node _top;
    private readonly Dictionary<long, (Node Node, long Position, string Path)> _open = [];

    /// <summary>Begins with what stands in a folder, all of it durable.</summary>
    /// <param name="root">The folder the calls name; calls outside it are passed over.</param>
    /// <param name="before">A folder with what stood there before the first call; null where the two are one.</param>
    public ModelDisk(string root, string? before = null)
    {
        _root = root;
        _top = Load(new DirectoryInfo(before ?? root));
    }

    /// <summary>Whether a call changes or opens something in the folder: what may fail on a disk.</summary>
    /// <param name="call">The call.</param>
    /// <returns>False for a call elsewhere.</returns>
    public bool Concerns(Call call) =>
        call.Name switch
        {
            "close" => false,
            "open" or "openat" or "creat" => Paths(call).Any(IsInside),
            _ => ChangedBy(call) is not null || Paths(call).Any(IsInside),
        };

    /// <summary>Whether a call writes into the documents, which can be lost without loss.</summary>
    /// <param name="call">The call.</param>
    /// <returns>False for any other.</returns>
    public bool WritesDocuments(Call call) =>
        ChangedBy(call) is not null
        && _open[Number(call, 0)].Path is var path
        && (path.EndsWith(".db", StringComparison.Ordinal) || path.EndsWith(".db-log", StringComparison.Ordinal));

    /// <summary>Remembers what a sync will make durable: what was there when it began.</summary>
    /// <param name="call">The call.</param>
    /// <returns>What to do when it ends, or null where it is no sync here.</returns>
    public Action<bool>? Begin(Call call)
    {
        if (call.Name is not ("fsync" or "fdatasync") || ChangedBy(call) is not { } node)
        {
            return null;
        }

        Change[] changes = [.. node.Changes];
        int names = node.NameChanges.Count;
        return succeeded =>
        {
            if (succeeded)
            {
                node.Sync(changes.Length, names);
            }
            else
            {
                Array.ForEach(changes, change => change.IsDoomed = true);
            }
        };
    }

    /// <summary>Does a call again.</summary>
    /// <param name="call">A call that succeeded and is no sync.</param>
    /// <returns>Whether a crash after it may show another disk than one before it.</returns>
    public bool Do(Call call)
    {
        switch (call.Name)
        {
            case "open" or "openat" or "creat":
                return Open(call);
            case "close":
                _open.Remove(Number(call, 0));
                return false;
            case "write" or "pwrite64" or "writev" or "pwritev" or "pwritev2":
                return Write(call);
            case "ftruncate":
                return Change(ChangedBy(call), new Change(Number(call, 1), null));
            case "rename" or "renameat" or "renameat2":
                return Move(call, keep: false);
            case "link" or "linkat":
                return Move(call, keep: true);
            case "unlink" or "unlinkat" or "rmdir":
                return Paths(call).All(IsInside) && Rename(Paths(call)[0], null, null);
            case "mkdir" or "mkdirat":
                return IsInside(Paths(call)[0]) && Rename(null, Paths(call)[0], new Node(isFolder: true));
            default:
                return Concerns(call)
                    ? throw new NotSupportedException(
                        $"{call.Name} changes the shop's folder, and this model does not know it"
                    )
                    : false;
        }
    }

    /// <summary>What a crash now may leave.</summary>
    /// <param name="loss">What of the unsynced is lost.</param>
    /// <returns>Files by their path below the folder, and folders, which end with a slash, without bytes.</returns>
    public SortedDictionary<string, byte[]> After(Loss loss)
    {
        SortedDictionary<string, byte[]> all = new(StringComparer.Ordinal);
        Gather(_top, "", loss, all);
        return all;
    }

    private static void Gather(Node folder, string path, Loss loss, SortedDictionary<string, byte[]> all)
    {
        Dictionary<string, Node> names = new(folder.Names, StringComparer.Ordinal);
        foreach (NameChange change in folder.NameChanges.Where(change => loss.Keeps(change)))
        {
            Node.Rename(names, change);
        }

        foreach ((string name, Node node) in names.OrderBy(each => each.Key, StringComparer.Ordinal))
        {
            if (node.IsFolder)
            {
                all[path + name + "/"] = [];
                Gather(node, path + name + "/", loss, all);
            }
            else
            {
                all[path + name] = Node.With(node.Bytes, node.Changes.SelectMany(loss.Of));
            }
        }
    }

    private static Node Load(DirectoryInfo folder)
    {
        Node node = new(isFolder: true);
        foreach (FileSystemInfo each in folder.GetFileSystemInfos())
        {
            Node made = each is DirectoryInfo inner
                ? Load(inner)
                : new Node(isFolder: false) { Bytes = File.ReadAllBytes(each.FullName) };
            node.Names[each.Name] = node.Seen[each.Name] = made;
        }

        return node;
    }

    private bool Open(Call call)
    {
        string path = Paths(call)[0];
        string flags = call.Arguments.FirstOrDefault(each => each.StartsWith("O_", StringComparison.Ordinal)) ?? "";
        _open.Remove(call.Result);
        if (!IsInside(path))
        {
            return false;
        }

        Node? node = Find(path);
        bool isNew = node is null;
        if (node is null)
        {
            node = new Node(isFolder: false);
            _ = Rename(null, path, node);
        }

        bool isCut = flags.Contains("O_TRUNC", StringComparison.Ordinal) && !isNew && Change(node, new Change(0, null));
        bool isAppended = flags.Contains("O_APPEND", StringComparison.Ordinal);
        _open[call.Result] = (node, isAppended ? AlwaysAtEnd : 0, path);
        return isNew || isCut;
    }

    private bool Write(Call call)
    {
        if (!_open.TryGetValue(Number(call, 0), out (Node Node, long Position, string Path) file))
        {
            return false;
        }

        long end = Node.With(file.Node.Bytes, file.Node.Changes).Length;
        bool isPlaced = call.Name.StartsWith('p');
        long at =
            file.Position == AlwaysAtEnd ? end
            : isPlaced ? Number(call, call.Arguments.Count - 1)
            : file.Position;
        if (!isPlaced && file.Position != AlwaysAtEnd)
        {
            _open[Number(call, 0)] = file with { Position = file.Position + call.Result };
        }

        return Change(file.Node, new Change(at, call.Data[..(int)call.Result]));
    }

    private static bool Change(Node? node, Change change)
    {
        node?.Changes.Add(change);
        return node is not null;
    }

    private bool Move(Call call, bool keep)
    {
        List<string> paths = Paths(call);
        return paths.Any(IsInside) && Rename(keep ? null : paths[0], paths[1], Find(paths[0]));
    }

    // in one folder a rename is one step; between two it is two, in the order in which the folders are synced
    private bool Rename(string? gone, string? came, Node? node)
    {
        (Node? from, Node? to) = (FolderOf(gone), FolderOf(came));
        string? goneName = Path.GetFileName(gone);
        string? cameName = Path.GetFileName(came);
        if (from == to)
        {
            Add(from, new NameChange(goneName, cameName, node));
        }
        else
        {
            Add(to, new NameChange(null, cameName, node));
            Add(from, new NameChange(goneName, null, null));
        }

        return true;
    }

    private static void Add(Node? folder, NameChange change)
    {
        if (folder is not null)
        {
            folder.NameChanges.Add(change);
            Node.Rename(folder.Seen, change);
        }
    }

    private Node? ChangedBy(Call call) =>
        Paths(call).Count == 0 && long.TryParse(call.Arguments[0], CultureInfo.InvariantCulture, out long number)
            ? _open.GetValueOrDefault(number).Node
            : null;

    private Node? FolderOf(string? path) => path is null ? null : Find(Path.GetDirectoryName(path)!);

    private Node? Find(string path)
    {
        Node? node = IsInside(path) ? _top : null;
        foreach (
            string name in path[Math.Min(path.Length, _root.Length)..].Split('/', StringSplitOptions.RemoveEmptyEntries)
        )
        {
            node = node?.Seen.GetValueOrDefault(name);
        }

        return node;
    }

    private bool IsInside(string path) => path == _root || path.StartsWith(_root + "/", StringComparison.Ordinal);

    private static long Number(Call call, int which) => long.Parse(call.Arguments[which], CultureInfo.InvariantCulture);

    private static List<string> Paths(Call call) =>
        call.Name.Contains("write", StringComparison.Ordinal)
            ? []
            : [.. call.Arguments.Where(each => each.StartsWith('/')).Select(each => each.TrimEnd('/'))];
}
