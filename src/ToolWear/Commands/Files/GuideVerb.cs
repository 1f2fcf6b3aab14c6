using System.Collections.Immutable;
using System.CommandLine;
using ToolWear.Commands.Calls;
using ToolWear.Core.Shops;
using ToolWear.Doors;
using ToolWear.Sheets;
using ToolWear.Wording;

namespace ToolWear.Commands.Files;

/// <summary>guide: what to do in the five situations that every shop meets, a page each.</summary>
internal static class GuideVerb
{
    private static readonly Argument<string?> Name = Said.Maybe("PAGE", "one page; usually all");

    /// <summary>The pages in their order: a line "# name Title", then its text, at most 80 columns wide.</summary>
    internal static ImmutableArray<(string Name, string Title, string Text)> Pages { get; } =
    [
        .. Written()
            .Split("\n# ", StringSplitOptions.RemoveEmptyEntries)
            .Select(page => page.Split(['\n'], 2))
            .Select(page => (page[0].Split(' ')[0], page[0][(page[0].IndexOf(' ') + 1)..], page[1].Trim('\n') + "\n")),
    ];

    public static Verb Verb { get; } =
        new(
            "guide",
            "Says step by step what to do, a page a situation.",
            "guide morning-after",
            [Name.Offering([.. Pages.Select(page => page.Name)])],
            Run,
            "Pages: " + string.Join(", ", Pages.Select(page => page.Name)) + "\n" + Verb.MakesSheet,
            "html"
        );

    private static void Run(Call call)
    {
        string? name = call.Get(Name);
        ImmutableArray<(string Name, string Title, string Text)> chosen =
        [
            .. Pages.Where(page => name is null || page.Name == name),
        ];
        if (chosen.IsEmpty)
        {
            throw RefusedException.WrongUsage(Call.NoSuch("page", name!, Pages.Select(page => page.Name)));
        }

        if (call.Format != "html")
        {
            call.Print(string.Join("\n", chosen.Select(page => $"{page.Title}\n\n{page.Text}")));
            return;
        }

        Sheet sheet = new("A guide for the bench", Shop.Empty, call.On);
        foreach ((int i, (string _, string title, string text)) in chosen.Index())
        {
            sheet.Head(title, isOnNewPage: i > 0);
            sheet.Lines(text);
        }

        call.Print(sheet.Done(Cautions.ForecastCaution));
    }

    private static string Written()
    {
        using StreamReader text = new(typeof(GuideVerb).Assembly.GetManifestResourceStream("guide.txt")!);
        return "\n" + text.ReadToEnd();
    }
}
