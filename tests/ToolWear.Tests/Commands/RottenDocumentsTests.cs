using ToolWear.Doors;
using ToolWear.Results.Tools;
using ToolWear.Screens.Drawing;
using ToolWear.Screens.LedgerPages;
using ToolWear.Storage.Disks;
using ToolWear.Tests.Screens;

namespace ToolWear.Tests.Commands;

/// <summary>A document file that has rotted and that nobody has checked: what is shown is the truth all the same.</summary>
public sealed class RottenDocumentsTests
{
    [Fact]
    public void Fifty_flipped_bits_change_neither_rack_nor_card_nor_export_nor_the_ledger_screen()
    {
        using TestSite site = new();
        Fill(site);
        byte[] whole = File.ReadAllBytes(site.Store);
        string before = Shown(site);
        Random chance = new(20261125);
        HashSet<int> flipped = [];
        while (flipped.Count < 50)
        {
            int at = chance.Next(whole.Length);
            // pages are mostly empty: a bit flipped there proves nothing
            if (whole[at] != 0 && flipped.Add(at))
            {
                byte[] rotten = [.. whole];
                rotten[at] ^= (byte)(1 << chance.Next(8));
                File.WriteAllBytes(site.Store, rotten);
                Assert.Equal(before, Shown(site));
            }
        }
    }

    private static void Fill(TestSite site)
    {
        foreach (string mark in (string[])["R1", "R2", "P1"])
        {
            site.Done(
                "add-tool",
                mark,
                "--form",
                "punch",
                "--gauge",
                "nose,smaller,60,14.0,12.8,",
                "--note",
                "one of three"
            );
            site.Done("heats", mark, "2");
            site.Done("look-over", mark, "sound", "--note", "nothing seen");
        }

        site.Done("close-session");
    }

    private static string Shown(TestSite site)
    {
        string folder = site.In("out");
        string shown = site.Done("rack", "--as", "csv") + site.Done("card", "R1") + site.Done("export", folder);
        foreach (string file in Directory.GetFiles(folder).Order(StringComparer.Ordinal))
        {
            shown += File.ReadAllText(file);
        }

        return shown + LedgerScreen(site);
    }

    private static string LedgerScreen(TestSite site)
    {
        Site world = new(
            TextWriter.Null,
            TextWriter.Null,
            site.Clock,
            new RealDisk(),
            () => "",
            site.Store,
            site.Folder
        );
        using Bench bench = Bench.ToWrite(world, site.Store);
        Picture picture = new(100, 30);
        LedgerPagesText.Draw(picture, bench.Shop, LedgerTable.Found(bench.Shop, ""), new ListPlace(), "", "");
        picture.WithList();
        return picture.ToString();
    }
}
