using ToolWear.Core.Shops;
using ToolWear.DemoMaker;
using ToolWear.Storage.Csv;

if (args is not [string folder])
{
    Console.Error.WriteLine("usage: dotnet run --project tests/ToolWear.DemoMaker -- FOLDER");
    return 2;
}

Shop shop = HalfYear.Live();
Directory.CreateDirectory(folder);
foreach (CsvFile file in CsvSet.Export(shop))
{
    File.WriteAllBytes(Path.Combine(folder, file.Name), file.Bytes.ToArray());
}

Console.WriteLine($"{folder}: {shop.Tools.Count} tools, {shop.Sessions.Count} sessions, {shop.Ledger.Count} entries");
return 0;
