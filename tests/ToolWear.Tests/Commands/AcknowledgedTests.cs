using System.Text;
using ToolWear.Commands;
using ToolWear.Doors;
using ToolWear.Storage.Disks;

namespace ToolWear.Tests.Commands;

/// <summary>What a script can rely on: the number said first, the exit code of what is durable, a key that records once.</summary>
public sealed class AcknowledgedTests
{
    [Fact]
    public void An_entry_that_is_durable_ends_with_0_whatever_becomes_of_the_output_and_its_cautions_still_come()
    {
        using TestSite site = WithTool();
        long before = Entries(site);
        foreach (
            Exception trouble in new Exception[] { new IOException("No space left"), new UnauthorizedAccessException() }
        )
        {
            using StringWriter error = new();
            using FullWriter full = new(trouble);
            Site broken = new(
                full,
                error,
                site.Clock,
                new RealDisk(),
                () => new string('0', 32),
                site.Store,
                site.Folder
            );
            Assert.Equal(0, Verbs.Run(broken, ["look-over", "H5", "sound"]));
            Assert.Contains($"entry {++before} is recorded and safe", error.ToString(), StringComparison.Ordinal);
            Assert.Contains(Wording.Cautions.FindingCaution.Split(" (")[0], error.ToString(), StringComparison.Ordinal);
            Assert.Equal(before, Entries(site));
            // what records nothing fails as before
            Assert.Equal(1, Verbs.Run(broken, ["rack"]));
        }
    }

    [Fact]
    public void A_command_with_a_key_records_once_and_gives_the_first_number_again()
    {
        using TestSite site = WithTool();
        string first = site.Done("look-over", "H5", "sound", "--once", "evening 1");
        Ran again = site.Run("look-over", "H5", "sound", "--once", "evening 1");
        Assert.Equal((0, first), (again.Exit, again.Output));
        Assert.Contains("recorded before", again.Error, StringComparison.Ordinal);
        Assert.NotEqual(first, site.Done("look-over", "H5", "sound", "--once", "evening 2"));
        // a command that the shop could not take a second time is harmless too
        string open = site.Done("open-session", "--once", "open");
        Assert.StartsWith(open.Split('\n')[0], open, StringComparison.Ordinal);
        Assert.Equal(open.Split('\n')[0], site.Done("open-session", "--once", "open").TrimEnd());
        // the key outlives a backup
        site.Done("backup", site.In("b"));
        site.Done("restore", site.In("b"), "--yes");
        Assert.Equal(first, site.Done("look-over", "H5", "sound", "--once", "evening 1"));
        site.Done("check");
    }

    [Fact]
    public void A_day_that_has_not_come_is_refused_before_the_screens()
    {
        using TestSite site = new();
        Ran ran = site.Run("--on", "2036-01-01");
        Assert.Equal(2, ran.Exit);
        Assert.Contains("lies in the future", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void What_can_be_proved_of_a_damaged_shop_is_saved_into_a_new_one_and_crossings_out_follow_their_entries()
    {
        using TestSite site = WithTool();
        long lost = Entries(site) + 1;
        site.Done("look-over", "H5", "sound", "--note", "this one rots");
        site.Done("look-over", "H5", "blunt", "--note", "a slip");
        site.Done("cross-out", $"{lost + 1}", "a slip");
        site.Done("cross-out", $"{lost}", "gone too");
        byte[] journal = File.ReadAllBytes(site.Store + ".journal");
        journal[journal.AsSpan().IndexOf("rots"u8)] = (byte)'R';
        File.WriteAllBytes(site.Store + ".journal", journal);
        File.Delete(site.Store);
        Ran saved = site.Run("check", "--salvage", site.In("new.db"));
        Assert.Equal(1, saved.Exit);
        Assert.Contains($"missing: entry {lost}\n", saved.Output, StringComparison.Ordinal);
        Assert.Contains($"not taken: entry {lost + 3}: ", saved.Output, StringComparison.Ordinal);
        Assert.Contains($"{lost + 1} entries saved", saved.Output, StringComparison.Ordinal);
        string ledger = site.Done("ledger", "--store", site.In("new.db"), "--as", "csv");
        Assert.Contains("a slip", ledger, StringComparison.Ordinal);
        site.Done("check", "--store", site.In("new.db"));
        Assert.Equal(1, site.Run("check", "--salvage", site.In("new.db")).Exit);
        Assert.Equal(journal, File.ReadAllBytes(site.Store + ".journal"));
    }

    [Fact]
    public void A_tampered_entry_is_refused_by_its_field_and_not_by_names_of_the_program()
    {
        using TestSite site = WithTool();
        string body =
            "{\"kind\":\"tool-looked-over\",\"v\":1,\"entry\":{\"tool\":\"H5\",\"on\":\"2026-11-12\",\"finding\":7}}";
        var disk = new RealDisk();
        Site world = new(TextWriter.Null, TextWriter.Null, site.Clock, disk, () => "", site.Store, site.Folder);
        using (var store = Storage.Stores.Store.Open(new(site.Store), disk, Bench.Settings(world), _ => { }))
        {
            store.Append(new DateOnly(2026, 11, 12), body);
        }

        Ran ran = site.Run("rack");
        Assert.Equal(1, ran.Exit);
        Assert.Contains("its field finding", ran.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("ToolWear.Core", ran.Error, StringComparison.Ordinal);
    }

    private static TestSite WithTool()
    {
        TestSite site = new();
        site.Demo();
        return site;
    }

    private static long Entries(TestSite site)
    {
        long entries = 0;
        Storage.Stores.Store.Read(
            new(site.Store),
            new RealDisk(),
            Bench.Settings(At(site)).Kinds,
            line => entries = line.LastSeq
        );
        return entries;
    }

    private static Site At(TestSite site) =>
        new(TextWriter.Null, TextWriter.Null, site.Clock, new RealDisk(), () => "", site.Store, site.Folder);

    private sealed class FullWriter(Exception trouble) : TextWriter
    {
        public override Encoding Encoding => Encoding.UTF8;

        public override void Write(char value) => throw trouble;

        public override void Write(string? value) => throw trouble;
    }
}
