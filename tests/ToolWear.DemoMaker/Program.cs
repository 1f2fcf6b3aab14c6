using ToolWear.Core.Shops;
using ToolWear.DemoMaker;

if (args is not [string folder])
{
    Console.Error.WriteLine("usage: dotnet run --project tests/ToolWear.DemoMaker -- FOLDER");
    return 2;
}

Shop shop = HalfYear.Live();
Console.WriteLine($"{folder}: {shop.Tools.Count} tools, {shop.Sessions.Count} sessions, {shop.Ledger.Count} entries");
return 0;
