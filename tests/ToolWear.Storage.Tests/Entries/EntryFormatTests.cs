using System.Text.Json;
using System.Text.Json.Nodes;
using CsCheck;
using ToolWear.Core.Ledger;
using ToolWear.Storage.Entries;
using ToolWear.Testing;
using ToolWear.Testing.Generators;
using Xunit;

namespace ToolWear.Storage.Tests.Entries;

public sealed class EntryFormatTests
{
    [Fact]
    public void What_is_written_reads_back_the_same_whatever_it_is() =>
        EntryGens.Wide.Any.Sample(
            entry =>
            {
                string written = EntryFormat.Write(entry);
                LedgerEntry read = EntryFormat.Read(written);
                Assert.Equal(Told.Of(entry), Told.Of(read));
                Assert.Equal(written, EntryFormat.Write(read));
                Assert.DoesNotContain('\n', written);
            },
            iter: 2000
        );

    [Fact]
    public void Every_kind_of_entry_there_is_can_be_written()
    {
        foreach (Type type in EntryGens.Wide.ByKind.Keys)
        {
            LedgerEntry entry = Fixed.Samples(EntryGens.Wide.ByKind[type], 1, 7).First();
            Assert.Equal(type, EntryFormat.Read(EntryFormat.Write(entry)).GetType());
        }

        Assert.Equal(EntryGens.Wide.ByKind.Count, EntryFormat.Known.Count);
    }

    [Fact]
    public void Every_entry_ever_stored_still_reads_and_means_the_same()
    {
        // a name for a new file beside the old ones, which are never made again
        if (Environment.GetEnvironmentVariable("TOOLWEAR_WRITE_SAMPLES") is { Length: > 0 } name)
        {
            string added = Path.Combine(SampleFolder(), $"entries-{name}.jsonl");
            Assert.False(File.Exists(added), $"{added} is there already");
            HashSet<string> known = [.. Stored().Select(Kind)];
            File.WriteAllLines(
                added,
                EntryGens
                    .Wide.ByKind.Values.SelectMany(gen => Fixed.Samples(gen, 4, 11))
                    .Select(EntryFormat.Write)
                    .Where(line => !known.Contains(Kind(line)))
            );
        }

        string[] stored = Stored();
        Assert.Equal(stored.Select(Lean), stored.Select(line => EntryFormat.Write(EntryFormat.Read(line))));
        Assert.Equal(EntryFormat.Known.Keys.Order(), stored.Select(Kind).Distinct().Order());
    }

    [Theory]
    [InlineData("")]
    [InlineData("{}")]
    [InlineData("[]")]
    [InlineData("{\"kind\":\"heats-worked\",\"v\":1,\"entry\":null}")]
    [InlineData("{\"kind\":\"heats-worked\",\"v\":1,\"entry\":{}}")]
    [InlineData(
        "{\"kind\":\"heats-worked\",\"v\":2,\"entry\":{\"session\":\"s\",\"tool\":\"R3\",\"work\":\"cheeks\",\"heats\":1,\"how\":\"counted\"}}"
    )]
    [InlineData(
        "{\"kind\":\"heats-worked\",\"v\":1,\"entry\":{\"session\":\"s\",\"tool\":\"R3\",\"work\":\"cheeks\",\"heats\":0.3,\"how\":\"counted\"}}"
    )]
    [InlineData(
        "{\"kind\":\"heats-worked\",\"v\":1,\"entry\":{\"session\":\"s\",\"tool\":\"R3\",\"work\":\"chewing\",\"heats\":1,\"how\":\"counted\"}}"
    )]
    [InlineData(
        "{\"kind\":\"heats-worked\",\"v\":1,\"entry\":{\"session\":\"s\",\"tool\":\"R3\",\"work\":\"cheeks\",\"heats\":1,\"how\":\"counted\",\"more\":1}}"
    )]
    [InlineData("{\"kind\":\"unheard-of\",\"v\":1,\"entry\":{}}")]
    public void What_is_no_entry_is_refused(string body) =>
        Assert.ThrowsAny<JsonException>(() => EntryFormat.Read(body));

    /// <summary>The line without what the first programs wrote though it follows from the rest.</summary>
    private static string Lean(string line)
    {
        JsonNode stored = JsonNode.Parse(line)!;
        _ = stored["entry"]!.AsObject().Remove("texts");
        _ = stored["entry"]!.AsObject().Remove("tools");
        return stored.ToJsonString();
    }

    private static string[] Stored() =>
        [
            .. Directory
                .GetFiles(SampleFolder(), "entries-*.jsonl")
                .Order(StringComparer.Ordinal)
                .SelectMany(File.ReadAllLines),
        ];

    private static string Kind(string line) =>
        JsonDocument.Parse(line).RootElement.GetProperty("kind").GetString() ?? "";

    private static string SampleFolder()
    {
        string? folder = AppContext.BaseDirectory;
        while (folder is not null && !File.Exists(Path.Combine(folder, "ToolWear.sln")))
        {
            folder = Path.GetDirectoryName(folder);
        }

        return Path.Combine(folder!, "tests", "ToolWear.Storage.Tests", "samples");
    }
}
