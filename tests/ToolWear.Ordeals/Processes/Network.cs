using System.Globalization;

namespace ToolWear.Ordeals.Processes;

/// <summary>What of the network a running process has touched, as Linux tells it.</summary>
/// <remarks>
/// The runtime itself listens on a local (AF_UNIX) socket for its own diagnostics; that is no network. No other socket
/// can come from managed code unless the library of sockets is loaded, and a loaded library stays in the map.
/// </remarks>
internal static class Network
{
    private static readonly string[] Families =
    [
        "tcp",
        "tcp6",
        "udp",
        "udp6",
        "udplite",
        "raw",
        "raw6",
        "packet",
        "icmp",
    ];

    /// <summary>Libraries of the network that are loaded, and sockets of the network that are open.</summary>
    /// <param name="process">A process of this user.</param>
    /// <returns>A line each; none where it has touched nothing.</returns>
    public static IReadOnlyList<string> TouchedBy(int process)
    {
        string proc = string.Create(CultureInfo.InvariantCulture, $"/proc/{process}");
        HashSet<string> known =
        [
            .. Families
                .Select(family => $"{proc}/net/{family}")
                .Where(File.Exists)
                .SelectMany(File.ReadLines)
                .SelectMany(line => line.Split(' ', StringSplitOptions.RemoveEmptyEntries)),
        ];
        IEnumerable<string> sockets = Directory
            .GetFiles(proc + "/fd")
            .Select(file => new FileInfo(file).LinkTarget ?? "")
            .Where(target => target.StartsWith("socket:[", StringComparison.Ordinal) && known.Contains(target[8..^1]));
        IEnumerable<string> libraries = File.ReadLines(proc + "/maps")
            .Select(line => line[(line.LastIndexOf('/') + 1)..])
            .Where(name => name.StartsWith("System.Net.", StringComparison.Ordinal))
            .Distinct();
        return [.. sockets, .. libraries];
    }
}
