namespace ToolWear.Screens.Running;

/// <summary>Every screen, a line each.</summary>
internal static class ScreenList
{
#pragma warning disable CA2000 // the host that they are added to disposes of them
    public static IEnumerable<Screen> All(Host host) =>
        [
            new ToolRack.ToolRackScreen(host),
            new Help.HelpScreen(host),
            new Choosing.ChoosingScreen(host),
            new Hammer.HammerScreen(host),
            new Closing.ClosingScreen(host),
            new CaliperRound.CaliperRoundScreen(host),
            new WearCard.WearCardScreen(host),
            new ToolPage.ToolPageScreen(host),
            new ForgeList.ForgeListScreen(host),
            new TrialPages.TrialPagesScreen(host),
            new LedgerPages.LedgerPagesScreen(host),
            new ShopPage.ShopPageScreen(host),
            new FirstStart.FirstStartScreen(host),
            new Import.ImportScreen(host),
            new ToolTable.ToolTableScreen(host, isTable: true),
            new ToolTable.ToolTableScreen(host, isTable: false),
            new Orders.OrdersScreen(host),
            new Patterns.PatternsScreen(host),
            new Costs.CostsScreen(host),
            new Eyes.EyesScreen(host),
            new SeriesPages.SeriesPagesScreen(host),
            new StockRack.StockRackScreen(host),
            new Year.YearScreen(host),
            new Year.LossesScreen(host),
            new HandOver.HandOverScreen(host),
            new Loans.LoansScreen(host),
            new StockTake.StockTakeScreen(host),
        ];
#pragma warning restore CA2000
}
