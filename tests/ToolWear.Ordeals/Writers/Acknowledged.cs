using System.Collections.Concurrent;
using System.Globalization;
using System.Text.Json;
using ToolWear.Ordeals.Syscalls;
using ToolWear.Storage;
using ToolWear.Storage.Disks;
using ToolWear.Storage.Stores;

namespace ToolWear.Ordeals.Writers;

/// <summary>What writers were told is recorded, held against the journal when all have ended.</summary>
internal sealed class Acknowledged
{
    private readonly ConcurrentBag<(long Number, string Note)> _told = [];
    private readonly ConcurrentDictionary<string, int> _refused = new(StringComparer.Ordinal);

    public int Count => _told.Count;

    /// <summary>How often a writer was stopped.</summary>
    public int Refused => _refused.Values.Sum();

    /// <summary>The sentence with which most of them were.</summary>
    public string Sentence => _refused.OrderByDescending(each => each.Value).FirstOrDefault().Key ?? "";

    /// <summary>Takes the first line that a program said of an entry.</summary>
    /// <param name="said">"entry N".</param>
    /// <param name="note">By what the entry is known.</param>
    public void Take(string said, string note) =>
        _told.Add((long.Parse(said.Split(' ')[1], CultureInfo.InvariantCulture), note));

    public void Refuse(string sentence) => _refused.AddOrUpdate(sentence, 1, (_, number) => number + 1);

    /// <summary>Reads the store and compares.</summary>
    /// <param name="store">The store.</param>
    /// <returns>How many are not there, and how many stand under another number or twice.</returns>
    public (int Lost, int Wrong) Against(string store)
    {
        List<string> notes = [];
        Store.Read(
            new StorePaths(store),
            new RealDisk(),
            Shelf.Settings.Kinds,
            line => notes.AddRange(line.Bodies.Select(NoteOf))
        );
        int lost = _told.Count(told => !notes.Contains(told.Note));
        int wrong = _told.Count(told =>
            notes.Contains(told.Note)
            && (
                notes.ElementAtOrDefault((int)told.Number - 1) != told.Note
                || notes.Count(note => note == told.Note) > 1
            )
        );
        return (lost, wrong);
    }

    private static string NoteOf(string body)
    {
        using JsonDocument entry = JsonDocument.Parse(body);
        return Find(entry.RootElement);
    }

    private static string Find(JsonElement element)
    {
        if (element.ValueKind != JsonValueKind.Object)
        {
            return "";
        }

        foreach (JsonProperty property in element.EnumerateObject())
        {
            string found = property.NameEquals("note") ? property.Value.GetString() ?? "" : Find(property.Value);
            if (found.Length > 0)
            {
                return found;
            }
        }

        return "";
    }
}
