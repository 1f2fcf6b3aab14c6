using System.Text;
using ToolWear.Core.Shops;
using ToolWear.Storage.Csv;
using Xunit;

namespace ToolWear.Storage.Tests.Csv;

/// <summary>Export, import into an empty store, export.</summary>
internal static class RoundTrip
{
    public static Shop Through(Shop shop, DateOnly today)
    {
        IReadOnlyList<CsvFile> first = CsvSet.Export(shop);
        CsvImported imported = CsvSet.Import(first, today);
        Assert.Equal("", FaultsOf(imported));
        Shop after = ShopInHand.Folded(imported.Entries, today);
        IReadOnlyList<CsvFile> second = CsvSet.Export(after);
        Assert.Equal(NamesOf(first), NamesOf(second));
        foreach ((CsvFile before, CsvFile again) in first.Zip(second))
        {
            Assert.Equal(TextOf(before), TextOf(again));
            Assert.True(before.Bytes.Span.SequenceEqual(again.Bytes.Span));
        }

        Assert.Equal(Lines(Histories.Of(shop)), Lines(Histories.Of(after)));
        Assert.Equal(Lines(Histories.StatesOf(shop)), Lines(Histories.StatesOf(after)));
        return after;
    }

    public static string Lines(IEnumerable<string> lines) => string.Join('\n', lines);

    public static string NamesOf(IEnumerable<CsvFile> files) => Lines(files.Select(file => file.Name));

    public static string FaultsOf(CsvImported imported) => Lines(imported.Faults.Select(fault => fault.ToString()));

    public static string TextOf(CsvFile file) => Encoding.UTF8.GetString(file.Bytes.Span);

    public static string TextOf(Shop shop, string name) =>
        TextOf(CsvSet.Export(shop).Single(file => file.Name == name));

    public static CsvFile File(string name, string text) => new(name, Encoding.UTF8.GetBytes(text));
}
