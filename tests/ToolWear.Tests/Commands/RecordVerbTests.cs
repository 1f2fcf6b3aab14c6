using System.Text.Json;

namespace ToolWear.Tests.Commands;

/// <summary>lifetimes, comparisons, and the plans of the demo shop.</summary>
public sealed class RecordVerbTests(DemoFixture demo)
{
    [Fact]
    public void Lifetimes_give_the_pinned_names()
    {
        using TestSite site = new();

        // by hand: of 4 watched one fails at 10, of the 2 left after a worn-out one at 20, one at 30
        string file = site.Write("lives.csv", "tool,heats,failed,from_heats\nA,10,1,\nB,20,0,\nC,30,1,\nD,40,0,\n");
        using JsonDocument document = JsonDocument.Parse(site.Done("lifetimes", file, "--as", "json"));
        JsonElement json = document.RootElement;
        Assert.Equal((4, 2), (json.GetProperty("tools").GetInt32(), json.GetProperty("failures").GetInt32()));
        JsonElement[] steps = [.. json.GetProperty("survival").EnumerateArray()];
        Assert.Equal((10, 4, 1), (Int(steps[0], "heats"), Int(steps[0], "at_risk"), Int(steps[0], "failed")));
        Assert.Equal(0.75, steps[0].GetProperty("surviving").GetDouble(), 12);
        Assert.Equal(0.375, steps[1].GetProperty("surviving").GetDouble(), 12);
        Assert.True(steps[0].GetProperty("lo95").GetDouble() < 0.75);
        Assert.Equal(JsonValueKind.Number, json.GetProperty("weibull").GetProperty("log_likelihood").ValueKind);
        Assert.True(json.GetProperty("weibull_with_prior").GetProperty("b10").GetDouble() > 0);
    }

    [Fact]
    public void Lifetimes_without_failures_have_no_curve_of_their_own()
    {
        using TestSite site = new();
        string file = site.Write("lives.csv", "tool,heats,failed\nA,10,0\nB,20,0\n");
        using JsonDocument document = JsonDocument.Parse(site.Done("lifetimes", file, "--as", "json"));
        Assert.Equal(JsonValueKind.Null, document.RootElement.GetProperty("weibull").ValueKind);
        Assert.Contains("Not enough data", site.Done("lifetimes", file), StringComparison.Ordinal);
        Assert.Contains(
            "guess-heats",
            site.Refused(2, "lifetimes", file, "--guess-heats", "0"),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Groups_are_compared_with_the_pinned_names_and_few_tools_say_nothing()
    {
        using TestSite site = new();
        string[] fast = [.. Enumerable.Range(0, 4).SelectMany(i => Tool("k", "mild", $"M{i}", 0.04))];
        string[] slow = [.. Enumerable.Range(0, 4).SelectMany(i => Tool("k", "4140", $"C{i}", 0.012))];
        string readings = site.Write(
            "r.csv",
            Lines(["kind,group,tool,segment,start_mm,heats,wear_mm", .. fast, .. slow, "k,one,X,1,0,10,0.2"])
        );
        string[] tools =
        [
            .. Enumerable
                .Range(0, 4)
                .SelectMany(i => (string[])[$"k,mild,M{i},1.2,0.05,60,20", $"k,4140,C{i},1.2,0.05,60,20"]),
            "k,one,X,1.2,0.05,60,10",
        ];
        string limits = site.Write(
            "t.csv",
            Lines(["kind,group,tool,limit_mm,resolution_mm,guess_heats,heats_now", .. tools])
        );
        string[] line = ["compare-groups", "--readings", readings, "--tools", limits, "--as", "json"];

        using JsonDocument document = JsonDocument.Parse(site.Done([.. line, "4140", "mild"]));
        JsonElement json = document.RootElement;
        Assert.Equal("a lasts longer", json.GetProperty("verdict").GetString());
        Assert.InRange(json.GetProperty("life_ratio").GetDouble(), 2, 5);
        Assert.True(json.GetProperty("lo90").GetDouble() < json.GetProperty("hi90").GetDouble());
        Assert.True(json.GetProperty("chance_a_lasts_longer").GetDouble() > 0.95);

        using JsonDocument few = JsonDocument.Parse(site.Done([.. line, "one", "mild"]));
        Assert.Equal("not enough data", few.RootElement.GetProperty("verdict").GetString());
        Assert.Equal(JsonValueKind.Null, few.RootElement.GetProperty("life_ratio").ValueKind);
        Assert.Contains("There are", site.Refused(1, [.. line, "brass", "mild"]), StringComparison.Ordinal);
        site.Refused(2, [.. line, "mild", "mild"]);
    }

    [Fact]
    public void The_demo_shop_is_planned_and_its_batches_make_up_the_plan()
    {
        TestSite site = demo.Site;
        Assert.Contains("make one H second drift by", site.Done("forge-list"), StringComparison.Ordinal);
        Assert.StartsWith(
            "forge_by,ready_by,number,",
            site.Done("forge-list", "--as", "csv"),
            StringComparison.Ordinal
        );

        using JsonDocument plan = JsonDocument.Parse(site.Done("plan", "--sure", "0.8", "--as", "json"));
        JsonElement[] places = [.. plan.RootElement.EnumerateArray()];
        Assert.Equal(
            "eye place form demand_heats sure cover needed expected",
            string.Join(' ', places[0].EnumerateObject().Select(member => member.Name))
        );
        Assert.All(places, place => Assert.Equal(0.8, place.GetProperty("sure").GetDouble()));

        using JsonDocument list = JsonDocument.Parse(site.Done("forge-list", "--sure", "0.8", "--as", "json"));
        Assert.Equal(
            places.Sum(place => Int(place, "needed")),
            list.RootElement.EnumerateArray().Sum(batch => Int(batch, "number"))
        );
        Assert.Contains("2026-11-01", site.Refused(2, "forge-list", "--until", "2026-11-01"), StringComparison.Ordinal);
        site.Refused(2, "forge-list", "--sure", "90");
    }

    [Fact]
    public void The_demo_shop_tells_its_costs_quotes_and_trials()
    {
        TestSite site = demo.Site;
        using JsonDocument costs = JsonDocument.Parse(site.Done("costs", "--as", "json"));
        JsonElement worn = costs
            .RootElement.GetProperty("tools")
            .EnumerateArray()
            .Single(row =>
                row.GetProperty("eye").GetString() == "T" && row.GetProperty("place").GetString() == "rough"
            );
        Assert.Equal(1, Int(worn, "scrapped"));

        // T1, of 4140 as the forecast is, lasted 66 heats, as the ledger has it
        Assert.Equal(66, worn.GetProperty("true_life_heats").GetDouble(), 0.5);
        // the three mild drifts of H lasted 27 heats each and stand apart from a forecast for 4140
        Assert.Contains(
            "H rough drift: the forecast is for 4140; 3 of mild lasted 27 heats",
            site.Done("costs"),
            StringComparison.Ordinal
        );
        Assert.Contains("Left on the shelf", site.Done("quote", "C", "--heads", "3"), StringComparison.Ordinal);
        site.Refused(2, "quote", "C", "--heads", "0");
        site.Refused(1, "quote", "nosuch", "--heads", "3");
        Assert.Contains(
            "a lasts longer",
            site.Done("compare", "4140", "mild", "--by", "steel"),
            StringComparison.Ordinal
        );
        site.Refused(1, "compare", "4140", "brass", "--by", "steel");
        site.Refused(2, "compare", "4140", "mild", "--by", "colour");
    }

    [Fact]
    public void The_demo_shop_answers_the_verbs_of_its_tools()
    {
        TestSite site = demo.Site;
        Assert.Contains("Eye length", site.Done("eye", "HF1"), StringComparison.Ordinal);
        Assert.Contains("New mark", site.Done("drive-depth", "HF1"), StringComparison.Ordinal);
        Assert.Contains("A rough drift", site.Done("make-into", "A2ND"), StringComparison.Ordinal);
        Assert.Contains(
            "Weight",
            site.Done("stock", "--like", "HF1", "--bar-area-mm2", "615"),
            StringComparison.Ordinal
        );
        Assert.Contains("Stretch", site.Done("slit", "H"), StringComparison.Ordinal);
        Assert.Contains("There are", site.Refused(1, "slit", "nosuch"), StringComparison.Ordinal);
        site.Refused(1, "eye", "HS2");
    }

    private static string Lines(IEnumerable<string> lines) => string.Concat(lines.Select(line => line + "\n"));

    private static int Int(JsonElement json, string name) => (int)json.GetProperty(name).GetDouble();

    private static IEnumerable<string> Tool(string kind, string group, string tool, double rate) =>
        new[] { 5, 10, 15, 20 }.Select(heats => $"{kind},{group},{tool},1,0,{heats},{heats * rate:0.00}");
}
