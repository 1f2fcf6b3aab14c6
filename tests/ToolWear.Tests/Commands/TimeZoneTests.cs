using ToolWear.Testing.Goldens;

namespace ToolWear.Tests.Commands;

/// <summary>Days are the shop's: they change with its midnight, and nothing else does.</summary>
public sealed class TimeZoneTests
{
    // half past six in the evening in Greenwich on the day before or the same
    [Theory]
    [InlineData("Pacific/Kiritimati", "2026-11-11")]
    [InlineData("Asia/Kathmandu", "2026-11-11")]
    [InlineData("America/St_Johns", "2026-11-12")]
    [InlineData("Pacific/Pago_Pago", "2026-11-12")]
    [InlineData("Europe/Berlin", "2026-11-12")]
    public void The_day_is_that_of_the_shops_own_clock(string zone, string inGreenwich)
    {
        using TestSite site = new(inGreenwich);
        site.Clock.SetLocalTimeZone(TimeZoneInfo.FindSystemTimeZoneById(zone));
        site.Done("add-tool", "R3", "--form", "punch");
        site.Done("look-over", "R3", "sound");
        Assert.Contains("2026-11-12  found sound", site.Done("card", "R3"), StringComparison.Ordinal);
        Assert.Contains(
            "2026-11-12",
            site.Refused(1, "look-over", "R3", "sound", "--on", "2026-11-13"),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void The_demo_looks_the_same_where_the_day_begins_first()
    {
        using TestSite site = new("2026-11-11");
        site.Clock.SetLocalTimeZone(TimeZoneInfo.FindSystemTimeZoneById("Pacific/Kiritimati"));
        site.Demo();
        Golden.Same("commands/rack.txt", site.Done("rack"));
    }

    [Fact]
    public void A_journey_across_the_date_line_loses_nothing_and_is_told()
    {
        using TestSite site = new("2026-11-11");
        site.Clock.SetLocalTimeZone(TimeZoneInfo.FindSystemTimeZoneById("Pacific/Kiritimati"));
        site.Done("add-tool", "R3", "--form", "punch", "--gauge", "nose,smaller,60,14.0,12.8,");
        site.Done("open-session");
        site.Done("heats", "R3", "2");
        string before = site.Done("rack", "--as", "csv");

        // yesterday, by the clock on the wall: what is there stands, what is new waits for its day or a right clock
        site.Clock.SetLocalTimeZone(TimeZoneInfo.FindSystemTimeZoneById("Pacific/Pago_Pago"));
        Assert.Equal(before, site.Done("rack", "--as", "csv"));
        Assert.Contains(
            "2026-11-12 lies in the future: today is 2026-11-11 by this computer's clock",
            site.Refused(1, "heats", "R3", "1"),
            StringComparison.Ordinal
        );
        site.Done("check");
        site.Clock.SetLocalTimeZone(TimeZoneInfo.FindSystemTimeZoneById("Pacific/Kiritimati"));
        site.Done("heats", "R3", "1");
        site.Done("close-session", "--heads", "3");
        string card = site.Done("card", "R3");
        Assert.Contains("2026-11-12  2 heats", card, StringComparison.Ordinal);
        Assert.Contains("2026-11-12  1 heat", card, StringComparison.Ordinal);
    }
}
