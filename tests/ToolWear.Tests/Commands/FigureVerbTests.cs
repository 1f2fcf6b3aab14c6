using System.Text.Json;

namespace ToolWear.Tests.Commands;

/// <summary>The verbs that reckon from figures alone, by their pinned names.</summary>
public sealed class FigureVerbTests
{
    // worked out apart from any program code: geometry.md of the design, by hand
    [Theory]
    [InlineData("rectangle --a 40 --b 16 --r 3", 632.27433, 106.84956)]
    [InlineData("teardrop --a 44 --large-r 9 --small-r 2.5", 518.30220, 102.43270)]
    [InlineData("teardrop --a 40 --large-r 8 --small-r 8", 585.06193, 98.26548)]
    [InlineData("oval --a 40 --b 20", 628.31853, 96.88448)]
    [InlineData("round --d 20", 314.15927, 62.83185)]
    [InlineData("rectangle --a 40 --b 16 --r 0", 640, 112)]
    public void Section_gives_area_and_perimeter(string options, double area, double perimeter)
    {
        JsonElement json = Json(["section", .. options.Split(' ')]);
        Assert.Equal(area, Number(json, "area_mm2"), 5);
        Assert.Equal(perimeter, Number(json, "perimeter_mm"), 5);
    }

    [Fact]
    public void Inside_says_where_a_section_bursts_another()
    {
        JsonElement json = Json("inside", "--outer", "teardrop 36.8 8.8 3.2", "--inner", "rectangle 34 15 3");
        Assert.Equal(-3.157, Number(json, "clearance_mm"), 3);
        Assert.Equal("nose", json.GetProperty("least_at").GetString());
    }

    [Theory]
    [InlineData("round --d 30 --a 20", "--a does not belong to round")]
    [InlineData("oval --a 30 --b 20 --r 2", "--r does not belong to oval")]
    [InlineData("teardrop --a 36.8 --large-r 8.8 --small-r 3.2 --b 17", "--b does not belong to teardrop")]
    public void A_size_of_another_section_is_refused(string options, string says)
    {
        using TestSite site = new();
        Assert.Contains(says, site.Refused(2, ["section", .. options.Split(' ')]), StringComparison.Ordinal);
    }

    [Fact]
    public void An_outline_comes_as_svg_too()
    {
        using TestSite site = new();
        string one = site.Done(
            "section",
            "teardrop",
            "--a",
            "36.8",
            "--large-r",
            "8.8",
            "--small-r",
            "3.2",
            "--as",
            "svg"
        );
        Assert.Single(System.Xml.Linq.XDocument.Parse(one).Descendants(), each => each.Name.LocalName == "path");
        string both = site.Done("inside", "--outer", "round 20", "--inner", "oval 18 12", "--as", "svg");
        Assert.Contains("inside by 1.0", both, StringComparison.Ordinal);
        Assert.Equal(
            2,
            System.Xml.Linq.XDocument.Parse(both).Descendants().Count(each => each.Name.LocalName == "path")
        );
        Assert.Contains(
            "svg",
            site.Refused(2, "section", "round", "--d", "20", "--as", "pdf"),
            StringComparison.Ordinal
        );
    }

    // EN 1993-1-2, 3.4.1.1: e(750) = 1.1e-2, e(250) = 1.2e-5 x 250 + 0.4e-8 x 250^2 - 2.416e-4 = 3.0084e-3
    [Fact]
    public void Eye_and_drift_are_each_others_way_back()
    {
        double eye = Number(Json("eye", "--drift-mm", "36.8", "--eye-c", "750", "--drift-c", "250"), "eye_mm");
        Assert.Equal(36.8 * 1.0030084 / 1.011, eye, 10);
        double drift = Number(
            Json("eye", "--eye-mm", eye.ToString("R"), "--eye-c", "750", "--drift-c", "250"),
            "drift_mm"
        );
        Assert.Equal(36.8, drift, 10);
    }

    [Theory]
    [InlineData("slitter", 0, 40)] // 2 s = 100 / 1.25
    [InlineData("slot-punch", 6, 36.5752220)] // 2 s + (pi - 2) 6 = 80
    [InlineData("square-punch", 6, 34)] // 2 (s + 6) = 80
    public void Slit_is_what_stretches_so_far(string tool, double edge, double slit) =>
        Assert.Equal(
            slit,
            Number(
                Json(
                    "slit",
                    "--perimeter-mm",
                    "100",
                    "--tool",
                    tool,
                    "--edge-mm",
                    edge.ToString("R"),
                    "--stretch",
                    "0.25"
                ),
                "slit_mm"
            ),
            6
        );

    [Fact]
    public void Drive_depth_is_wear_over_taper() =>
        Assert.Equal(10, Number(Json("drive-depth", "--worn-mm", "0.3", "--taper", "0.03"), "shift_mm"), 12);

    // a prismoid 20 x 10 to 30 x 16 over 100 mm is 33000 mm3
    [Fact]
    public void Stock_is_the_volume_with_its_loss_over_the_area_of_the_bar()
    {
        using TestSite site = new();
        string file = site.Write(
            "stations.csv",
            "from_mark_mm,section,a_mm,b_mm,radius_mm,large_radius_mm\n0,rectangle,20,10,0,\n100,rectangle,30,16,0,\n"
        );
        string[] options = ["--bar-area-mm2", "500", "--loss", "0.1", "--extra-mm", "7"];
        JsonElement json = Parse(site.Done(["stock", file, .. options, "--as", "json"]));
        Assert.Equal(33000, Number(json, "volume_mm3"), 6);
        Assert.Equal(33000 * 7850e-9, Number(json, "mass_kg"), 9);
        Assert.Equal((33000 * 1.1 / 500) + 7, Number(json, "length_mm"), 9);
        Assert.Contains(
            "give one of FILE and --like TOOL",
            site.Refused(2, "stock", "--bar-area-mm2", "500"),
            StringComparison.Ordinal
        );
        string broken = site.Write("broken.csv", "from_mark_mm,section,a_mm\n0,hexagon,20\n");
        Assert.Contains("hexagon", site.Refused(1, "stock", broken, "--bar-area-mm2", "500"), StringComparison.Ordinal);
        Assert.Contains(
            "no file",
            site.Refused(1, "stock", site.In("none.csv"), "--bar-area-mm2", "500"),
            StringComparison.Ordinal
        );
    }

    // by hand, the opener of the demo: round 18 over 60 mm, to 20 over 10, to 19.8 over 20, to 9 over 130; a frustum is
    // pi l (d^2 + d e + e^2) / 12: 15 268.1 + 2 837.9 + 6 220.6 + 22 164.2 = 46 490.9 mm3, 0.365 kg; with 7 % lost from a
    // round of 32, 804.248 mm2: 61.85 mm
    [Fact]
    public void A_demo_drifts_cut_is_what_it_is_by_hand()
    {
        using TestSite site = new();
        site.Demo();
        JsonElement json = Parse(site.Done("stock", "--like", "TO1", "--bar-area-mm2", "804.2477", "--as", "json"));
        Assert.Equal(46_490.9, Number(json, "volume_mm3"), 0.1);
        Assert.Equal(0.36495, Number(json, "mass_kg"), 5e-6);
        Assert.Equal(61.853, Number(json, "length_mm"), 5e-4);
    }

    // the worked example of the plan: computed in R by convolution (reference-data/wear/cases.json, s10)
    [Fact]
    public void Plan_meets_the_worked_example()
    {
        JsonElement json = Json([.. Plan, "--sure", "0.9"]);
        Assert.Equal(360, Number(json, "demand_heats"));
        Assert.Equal(0.9, Number(json, "sure"));
        Assert.Equal(6, Number(json, "needed"));
        Assert.Equal(5.162160719, Number(json, "expected"), 8);
        double[] cover = [.. json.GetProperty("cover").EnumerateArray().Select(each => each.GetDouble())];
        Assert.Equal(0.6666190547, cover[5], 9);
        Assert.Equal(0.9564995895, cover[6], 9);
    }

    [Fact]
    public void Sudden_failures_make_a_plan_longer()
    {
        JsonElement json = Json([.. Plan, "--sure", "0.9", "--crack-shape", "1.5", "--crack-scale", "100"]);
        Assert.True(Number(json, "needed") > 6);
    }

    [Fact]
    public void A_certainty_of_90_is_refused_with_the_right_form()
    {
        using TestSite site = new();
        Assert.Contains("write 0.9", site.Refused(2, [.. Plan, "--sure", "90"]), StringComparison.Ordinal);
        Assert.Contains("0.9", site.Refused(2, [.. Plan, "--sure", "0"]), StringComparison.Ordinal);
        Assert.Contains("--sure", site.Refused(2, Plan), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("plan --life-median 0 --life-sdlog 0.3 --demand 10 --sure 0.9", "0.5 to 100000")]
    [InlineData("plan --life-median 60 --life-sdlog 0.3 --demand 99999 --sure 0.9", "0 to 20000")]
    [InlineData("plan --life-median 60 --life-sdlog 0.3 --used x --demand 10 --sure 0.9", "--used")]
    [InlineData("plan --life-median 60 --life-sdlog 0.3 --demand 10 --sure 0.9 --crack-shape 2", "go together")]
    [InlineData("section rectangle --a 40 --b 16 --r 9", "0 to 8 mm")]
    [InlineData("section hexagon --a 40", "round")]
    [InlineData("section oval --a 40", "--b")]
    [InlineData("section round --d 2000", "1000 mm")]
    [InlineData("inside --outer round --inner round", "'round d'")]
    [InlineData("eye --drift-mm 36.8 --eye-c 2000", "20 to 1200")]
    [InlineData("eye --drift-mm 36.8 --eye-mm 36.5", "one of")]
    [InlineData("slit --perimeter-mm 100 --tool slitter --stretch 7", "0 to 1")]
    [InlineData("drive-depth --worn-mm 0.3 --taper 0", "0.5 mm per mm")]
    [InlineData("make-into --worn x", "'rectangle a b r'")]
    [InlineData("make-into --clean-up-mm 1", "--into")]
    public void Impossible_figures_are_refused_with_what_is_allowed(string line, string allowed)
    {
        using TestSite site = new();
        Assert.Contains(allowed, site.Refused(2, line.Split(' ')), StringComparison.Ordinal);
    }

    [Fact]
    public void Making_into_compares_the_room_with_the_clean_up()
    {
        using TestSite site = new();
        string[] line =
        [
            "make-into",
            "--worn",
            "rectangle 30.2 23.6 3",
            "--into",
            "rectangle 29 21.5 3",
            "--as",
            "json",
        ];
        JsonElement made = Assert.Single(Parse(site.Done(line)).EnumerateArray());
        Assert.Equal("yes", made.GetProperty("possible").GetString());
        Assert.Equal(0.6, Number(made, "clearance_mm"), 6);
        JsonElement tight = Assert.Single(Parse(site.Done([.. line, "--clean-up-mm", "0.7"])).EnumerateArray());
        Assert.Equal("no", tight.GetProperty("possible").GetString());
    }

    private static readonly string[] Plan =
    [
        "plan",
        "--life-median",
        "60",
        "--life-sdlog",
        "0.3",
        "--used",
        "15,40",
        "--demand",
        "360",
    ];

    private static JsonElement Json(params string[] arguments)
    {
        using TestSite site = new();
        return Parse(site.Done([.. arguments, "--as", "json"]));
    }

    private static JsonElement Parse(string json)
    {
        using JsonDocument document = JsonDocument.Parse(json);
        return document.RootElement.Clone();
    }

    private static double Number(JsonElement json, string name) => json.GetProperty(name).GetDouble();
}
