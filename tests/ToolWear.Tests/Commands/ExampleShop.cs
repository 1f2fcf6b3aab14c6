namespace ToolWear.Tests.Commands;

/// <summary>A copy of the demo shop with the files that the examples in the help name, in a folder of its own.</summary>
internal static class ExampleShop
{
    private const string Readings =
        "kind,group,tool,segment,start_mm,heats,wear_mm\n"
        + "drift rough width,4140,A,1,0,8,0.30\ndrift rough width,4140,A,1,0,20,0.62\n"
        + "drift rough width,4140,B,1,0,10,0.33\ndrift rough width,4140,B,1,0,22,0.70\n"
        + "drift rough width,mild,C,1,0,6,0.41\ndrift rough width,mild,C,1,0,14,0.92\n"
        + "drift rough width,mild,D,1,0,7,0.44\ndrift rough width,mild,D,1,0,15,0.97\n";

    private const string Tools =
        "kind,group,tool,limit_mm,resolution_mm,guess_heats,heats_now\n"
        + "drift rough width,4140,A,1.2,0.05,60,20\ndrift rough width,4140,B,1.2,0.05,60,22\n"
        + "drift rough width,mild,C,1.2,0.05,60,14\ndrift rough width,mild,D,1.2,0.05,60,15\n";

    private const string Lives =
        "tool,heats,failed,from_heats\nS1,240,1,\nS2,310,0,\nS3,180,1,\nS4,400,0,120\nS5,95,0,\nS6,330,1,\n";

    private const string Stations =
        "from_mark_mm,section,a_mm,b_mm,radius_mm,large_radius_mm\n"
        + "0,round,30,,,\n60,round,30,,,\n150,round,18,,,\n";

    private const string MyTools =
        "tool,form,eye,place,steel,size_mm,scrap_mm,heats_before,heats_before_how\n"
        + "R1,drift,H,rough,4140,13.6,12.8,,unknown\nR2,drift,H,rough,mild,13.1,12.8,20,estimated\n";

    /// <summary>Makes the folder.</summary>
    public static TestSite Make(DemoFixture demo)
    {
        TestSite site = new();
        foreach (string ending in new[] { "", ".journal" })
        {
            File.Copy(demo.Site.Store + ending, site.Store + ending);
        }

        site.Write("readings.csv", Readings);
        site.Write("tools.csv", Tools);
        site.Write("slitters.csv", Lives);
        site.Write("stations.csv", Stations);
        site.Write("my-tools.csv", MyTools);
        return site;
    }

    /// <summary>What has to have happened before the example of a verb makes sense.</summary>
    public static string[][] Before(string verb) =>
        verb switch
        {
            "close-session" =>
            [
                ["open-session", "--pattern", "hatchet"],
            ],
            "take-back" or "loans" =>
            [
                ["lend", "H4", "a smith near by", "--on", "2026-11-08", "--note", "until spring"],
            ],
            "restore" =>
            [
                ["backup", "shop-2026-05-01.backup"],
            ],
            _ => [],
        };

    /// <summary>A command line as a shell would split it.</summary>
    public static string[] Split(string line) =>
        [
            .. line.Split('\'', '"')
                .SelectMany((part, i) => i % 2 == 1 ? [part] : part.Split(' ', StringSplitOptions.RemoveEmptyEntries)),
        ];

    /// <summary>Every verb and its example, from the help.</summary>
    public static (string Verb, string Example)[] All()
    {
        using TestSite site = new();
        return
        [
            .. Named(site.Done("help", "all").Split("Options of")[0])
                .Select(verb => (verb, ExampleIn(site.Done(verb, "--help")))),
        ];
    }

    private static string ExampleIn(string help)
    {
        const string Before = "Example:\n  toolwear ";
        // a long one goes on behind a backslash, as a shell has it
        return help[(help.IndexOf(Before, StringComparison.Ordinal) + Before.Length)..]
            .Replace(" \\\n    ", " ", StringComparison.Ordinal)
            .Split('\n')[0];
    }

    /// <summary>The verbs that a page of help names.</summary>
    public static string[] Named(string help) =>
        [
            .. help.Split('\n')
                .Where(line => line.Length > 2 && line.StartsWith("  ", StringComparison.Ordinal) && line[2] != ' ')
                .Select(line => line.Trim().Split(' ')[0]),
        ];
}
