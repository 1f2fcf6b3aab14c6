using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using ToolWear.Testing.Goldens;

namespace ToolWear.Tests.Commands;

/// <summary>The example in the help of every verb does what it says: in text, csv and json, as accepted.</summary>
[Collection(Screens.ScreenLibrary.Alone)]
public sealed partial class ExampleTests(DemoFixture demo)
{
    /// <summary>Verbs that say the same in every format: what they do is not to show figures.</summary>
    private static readonly string[] SayOneThing =
    [
        "demo",
        "import",
        "export",
        "export-history",
        "backup",
        "restore",
        "check",
        "completion",
        "guide",
        "open-session",
        "close-session",
    ];

    /// <summary>Verbs whose json is held against their csv elsewhere.</summary>
    private static readonly string[] HeldElsewhere = ["rack", "forge-list"];

    /// <summary>Other ways to call those verbs that reckon from figures: from the shop itself.</summary>
    private static readonly string[] FromTheShop =
    [
        "plan",
        "costs",
        "order",
        "eye --eye-mm 36.4",
        "eye HF1",
        "drive-depth TF1",
        "slit H",
        "make-into H5",
        "bars '4140 32'",
        "hand-over --units in",
        "forge-list --if-sure 0.99",
    ];

    // the manual page repeats the help of all verbs, which is kept already
    public static TheoryData<string, string> Examples => [.. ExampleShop.All().Where(each => each.Item1 != "man")];

    public static TheoryData<string> Others => [.. FromTheShop];

    [Theory]
    [MemberData(nameof(Examples))]
    public void The_example_of_a_verb_runs(string verb, string example)
    {
        StringBuilder record = new();
        string text = Run(verb, example, null);
        record.Append($"$ toolwear {example}\n{text}");
        bool saysOneThing = SayOneThing.Contains(verb) || text.StartsWith("entry ", StringComparison.Ordinal);
        string[] formats =
            saysOneThing || example.Contains("--as", StringComparison.Ordinal) ? []
            : HeldElsewhere.Contains(verb) ? ["csv"]
            : Formats;
        foreach (string format in formats)
        {
            record.Append($"\n$ toolwear {example} --as {format}\n{Run(verb, example, format)}");
        }

        Golden.Same($"examples/{verb}.txt", record.ToString());
    }

    [Theory]
    [MemberData(nameof(Others))]
    public void A_verb_speaks_of_the_shop_in_all_formats(string line)
    {
        StringBuilder record = new();
        foreach (string format in Formats)
        {
            record.Append($"$ toolwear {line} --as {format}\n{Run(ExampleShop.Split(line)[0], line, format)}\n");
        }

        Golden.Same(
            $"examples/of-the-shop/{line.Replace(' ', '_').Replace("'", "", StringComparison.Ordinal)}.txt",
            record.ToString()
        );
    }

    private static string[] Formats => ["csv", "json"];

    private string Run(string verb, string line, string? format)
    {
        using TestSite site = ExampleShop.Make(demo);
        string before = Environment.CurrentDirectory;
        Environment.CurrentDirectory = site.Folder;
        try
        {
            foreach (string[] first in ExampleShop.Before(verb))
            {
                site.Done(first);
            }

            string[] store = verb == "import" ? ["--store", site.In("new.db")] : [];
            string[] asked = format is null ? [] : ["--as", format];
            string output = site.Done([.. ExampleShop.Split(line), .. asked, .. store]);
            // the last digits are the processor's
            string text = output.ReplaceLineEndings("\n").Replace(site.Folder, "FOLDER", StringComparison.Ordinal);
            return LongNumber().Replace(text, Rounded);
        }
        finally
        {
            Environment.CurrentDirectory = before;
        }
    }

    private static string Rounded(Match number)
    {
        double value = double.Parse(number.Value, CultureInfo.InvariantCulture);
        return Math.Abs(value) < 1e-9 ? "0" : value.ToString("G4", CultureInfo.InvariantCulture);
    }

    [GeneratedRegex("-?[0-9]+\\.[0-9]{5,}(E[-+]?[0-9]+)?|-?[0-9]+(\\.[0-9]+)?E-[0-9]+")]
    private static partial Regex LongNumber();
}
