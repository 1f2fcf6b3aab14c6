using ToolWear.Core.Measure;
using ToolWear.Core.Wear;
using ToolWear.Doors;
using ToolWear.Results.Tools;

[assembly: Xunit.AssemblyFixture(typeof(ToolWear.Tests.Commands.DemoFixture))]

namespace ToolWear.Tests.Commands;

/// <summary>The demo shop with its forecasts, built once for all tests that only read it.</summary>
public sealed class DemoFixture : IDisposable
{
    private readonly TestSite site = new();

    public DemoFixture()
    {
        site.Demo();
        RackText = site.Done("rack");
        ForecastText = site.Done("forecast");
        using StringWriter nothing = new();
        using Bench bench = Bench.ToRead(
            new Site(nothing, nothing, site.Clock, new Storage.Disks.RealDisk(), () => "", site.Store, site.Folder),
            site.Store
        );
        Forecasts = ShopForecasts.Of(bench.Shop);
    }

    public ShopForecasts Forecasts { get; }

    public string RackText { get; }

    public string ForecastText { get; }

    /// <summary>The card of every tool there ever was, in mm.</summary>
    internal Card[] Cards =>
        field ??= [.. Forecasts.Shop.Tools.Values.Select(tool => Card.Of(Forecasts, tool, LengthUnit.Mm))];

    internal TestSite Site => site;

    public void Dispose() => site.Dispose();
}
