using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using CsCheck;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Sections;
using ToolWear.Core.Tools;
using ToolWear.Core.Tools.Forms;
using ToolWear.Storage.Entries;
using ToolWear.Testing;
using ToolWear.Testing.Generators;
using Xunit;

namespace ToolWear.Storage.Tests.Entries;

public sealed class EntryFormatTests
{
    [Theory]
    [InlineData("night of 24 Nov")]
    [InlineData("\"quoted\" \\ Größe")]
    public void The_key_of_a_command_done_once_stands_in_the_entry_and_changes_nothing_else(string key)
    {
        LedgerEntry entry = new SettingChanged("note \"v\":2,\"once\":\"no\"", "x");
        string without = EntryFormat.Write(entry);
        string with = EntryFormat.Write(entry, key);
        Assert.Null(EntryFormat.OnceOf(Encoding.UTF8.GetBytes(without)));
        Assert.Equal(key, EntryFormat.OnceOf(Encoding.UTF8.GetBytes(with)));
        Assert.Equal(entry, EntryFormat.Read(with));
        Assert.Equal(entry, EntryFormat.Read(without));
        // written once, read for ever
        Assert.Equal(
            new SettingChanged("units", "in"),
            EntryFormat.Read("""{"kind":"setting-changed","v":2,"once":"k","entry":{"setting":"units","value":"in"}}""")
        );
        // an older program says that a newer wrote it
        Assert.StartsWith("{\"kind\":\"setting-changed\",\"v\":2,", with, StringComparison.Ordinal);
        Assert.Throws<JsonException>(() =>
            EntryFormat.Read(with.Replace("\"v\":2", "\"v\":3", StringComparison.Ordinal))
        );
    }

    [Fact]
    public void What_an_older_program_cannot_hold_is_a_newer_version_with_or_without_a_key()
    {
        ToolLookedOver found = new(Texts.MarkOf("R3"), new(2026, 5, 1), Finding.Cracked, null, null);
        Assert.Contains("\"v\":1,", EntryFormat.Write(found), StringComparison.Ordinal);
        ToolLookedOver placed = found with { Part = ToolPart.StruckEnd };
        string with = EntryFormat.Write(placed, "k");
        Assert.Contains("\"v\":3,\"once\":\"k\",", with, StringComparison.Ordinal);
        Assert.Equal("k", EntryFormat.OnceOf(Encoding.UTF8.GetBytes(with)));
        Assert.Equal(placed, EntryFormat.Read(with));
        Assert.Equal(placed, EntryFormat.Read(EntryFormat.Write(placed)));
    }

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
                    .Select(entry => EntryFormat.Write(entry))
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

    [Theory]
    [InlineData("\"tool\":\"R3\"", "\"tool\":null")]
    [InlineData("\"tool\":\"R3\"", "\"tool\":7")]
    [InlineData("\"tool\":\"R3\"", "\"tool\":\"R\\u0000\"")]
    [InlineData("\"work\":\"cheeks\"", "\"work\":null")]
    [InlineData("\"heats\":1", "\"heats\":-1")]
    [InlineData("\"heats\":1", "\"heats\":79228162514264337593543950335")]
    [InlineData("\"heats\":1", "\"heats\":1e300")]
    [InlineData("\"heats\":1", "\"heats\":null")]
    [InlineData("\"heats\":1", "\"heats\":[[[1]]]")]
    [InlineData("\"v\":1", "\"v\":0")]
    [InlineData("\"v\":1", "\"v\":1,\"w\":2")]
    [InlineData("\"kind\":\"heats-worked\"", "\"kind\":null")]
    [InlineData("\"counted\"}", "\"counted\"},\"more\":1")]
    [InlineData("\"counted\"}}", "\"counted\"}}{}")]
    [InlineData("{\"kind\"", "[{\"kind\"")]
    public void Heats_that_are_written_otherwise_are_refused(string part, string otherwise) =>
        RefusesOtherwise(
            """{"kind":"heats-worked","v":1,"entry":{"session":"s","tool":"R3","work":"cheeks","heats":1,"how":"counted"}}""",
            part,
            otherwise
        );

    [Theory]
    [InlineData("\"round\"", "null")]
    [InlineData("\"round\"", "\"hexagon\"")]
    [InlineData("[\"round\",9,9,0]", "9")]
    [InlineData("[\"round\",9,9,0]", "[]")]
    [InlineData("[\"round\",9,9,0]", "[\"round\",9]")]
    [InlineData("[\"round\",9,9,0]", "[\"round\",9,9,0,0]")]
    [InlineData("[\"round\",9,9,0]", "[\"rectangle\",9,9,99]")]
    [InlineData("[\"round\",9,9,0]", "[\"round\",1e20,9,0]")]
    [InlineData("\"from_mark\":5", "\"from_mark\":1e20")]
    [InlineData("\"form\":\"drift\"", "\"form\":null")]
    [InlineData("\"form\":\"drift\"", "\"form\":\"wedge\"")]
    public void A_tool_that_is_written_otherwise_is_refused(string part, string otherwise)
    {
        var added = (ToolAdded)Fixed.Samples(EntryGens.Wide.Of<ToolAdded>(), 1).First();
        var nine = Length.FromMm(9m);
        Assert.True(Section.TryMake(SectionKind.Round, nine, nine, Length.Zero, out Section? round, out _));
        Tool tool = added.Tool with
        {
            Form = ToolForms.All.First(form => form.Name == "drift"),
            Stations = [new(BodyPart.Shank, Length.FromMm(5m), round)],
        };
        RefusesOtherwise(EntryFormat.Write(new ToolAdded(tool)), part, otherwise);
    }

    private static void RefusesOtherwise(string body, string part, string otherwise)
    {
        Assert.NotNull(EntryFormat.Read(body));
        Assert.Contains(part, body, StringComparison.Ordinal);
        Assert.ThrowsAny<JsonException>(() =>
            EntryFormat.Read(body.Replace(part, otherwise, StringComparison.Ordinal))
        );
    }

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

    [Fact]
    public void Half_a_letter_is_refused_as_unreadable() =>
        Assert.Throws<JsonException>(() =>
            EntryFormat.Read("""{"kind":"setting-changed","v":1,"entry":{"setting":"units","value":"\ud800"}}""")
        );
}
