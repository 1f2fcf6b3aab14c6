using ToolWear.Keys;
using ToolWear.Screens;
using Xunit;

namespace ToolWear.Tests.Cautions;

/// <summary>Each caution of the trade stands where the trade's table puts it, and nowhere else, so that it is read.</summary>
public sealed class CautionTests(CautionReadings readings) : IClassFixture<CautionReadings>
{
    public static TheoryData<string> Cautions => [.. Caution.All.Select(caution => caution.Name)];

    [Theory]
    [MemberData(nameof(Cautions))]
    public void It_stands_in_its_places_and_nowhere_else(string name)
    {
        Caution caution = Caution.All.Single(each => each.Name == name);
        Assert.Equal(
            caution.Screens.Order(StringComparer.Ordinal),
            Places(PlaceKind.Screen, caution).Order(StringComparer.Ordinal)
        );
        Assert.Equal(
            caution.Sheets.Order(StringComparer.Ordinal),
            Places(PlaceKind.Sheet, caution).Order(StringComparer.Ordinal)
        );
        Assert.Equal(
            caution.Commands.Order(StringComparer.Ordinal),
            Places(PlaceKind.Command, caution).Order(StringComparer.Ordinal)
        );
    }

    [Theory]
    [MemberData(nameof(Cautions))]
    public void It_stands_every_time_on_a_screen_and_on_a_sheet(string name)
    {
        Caution caution = Caution.All.Single(each => each.Name == name);
        string[] lacking =
        [
            .. readings
                .All.Where(read =>
                    (read.Kind == PlaceKind.Screen && caution.Screens.Contains(read.Place))
                    || (read.Kind == PlaceKind.Sheet && caution.Sheets.Contains(read.Place))
                )
                .Where(read => !caution.StandsIn(read.Text))
                .Select(read => $"{read.Place} ({read.How})"),
        ];
        Assert.Empty(lacking);
    }

    [Fact]
    public void Help_repeats_only_what_stands_on_its_screen()
    {
        string[] more =
        [
            .. from read in readings.All
            where read.Kind == PlaceKind.Help
            from caution in Caution.All
            where caution.StandsIn(read.Text) && !caution.Screens.Contains(read.Place)
            // the end of the round has the help of the round
            where !read.Place.StartsWith("caliper round", StringComparison.Ordinal)
            select $"{read.Place}: {caution.Name}",
        ];
        Assert.Empty(more);
    }

    [Fact]
    public void Every_screen_was_come_by() => Assert.Empty(Enum.GetValues<ScreenName>().Except(readings.Screens));

    [Fact]
    public void The_table_of_places_is_this_one()
    {
        string told = File.ReadAllText(Path.Combine(HouseRules.House.Root, "tests/ToolWear.Tests/Cautions/PLACES.md"));
        const string Heading = "| caution | screens | sheets | commands |\n|---|---|---|---|\n";
        string table = Heading + string.Concat(Caution.All.Select(caution => caution.Row + "\n"));
        Assert.True(told.Contains(table, StringComparison.Ordinal), $"PLACES.md:\n{table}");
    }

    private IEnumerable<string> Places(PlaceKind kind, Caution caution) =>
        readings
            .All.Where(read => read.Kind == kind && caution.StandsIn(read.Text))
            .Select(read => read.Place)
            .Distinct();
}
