using System.Collections.Immutable;
using System.CommandLine;
using System.CommandLine.Completions;
using ToolWear.Commands.Files;
using ToolWear.Core.Ledger;
using ToolWear.Core.Sections;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Storage;

namespace ToolWear.Commands.Calls;

/// <summary>What may stand for the arguments and options of the verbs, for shells that complete what is typed.</summary>
internal static class Completing
{
    private static readonly ImmutableDictionary<string, Func<Shop, IEnumerable<string>>> OfTheShop =
        ImmutableDictionary.CreateRange<string, Func<Shop, IEnumerable<string>>>([
            new("TOOL", Marks),
            new("OLD", Marks),
            new("GAUGE", shop => shop.Tools.Values.SelectMany(tool => tool.Tool.GaugeMarks, (_, gauge) => gauge.Name)),
            new("ORDER", shop => shop.Orders.Keys),
            new("--eye", shop => shop.Eyes.Keys),
            new("--pattern", shop => shop.Patterns.Keys),
            new("--session", shop => shop.Sessions.Keys),
        ]);

    private static readonly ImmutableDictionary<string, ImmutableArray<string>> Fixed = ImmutableDictionary.CreateRange<
        string,
        ImmutableArray<string>
    >([
        new("--as", ["text", "csv", "json"]),
        new("--units", ["mm", "in"]),
        new("--work", [.. Works.Words.All]),
        new("--place", [.. Places.Words.All]),
        new("--form", [.. ToolForms.All.Select(form => form.Name)]),
        new("--section", [.. SectionKinds.Words.All]),
        new("--cooling", [.. Care.CoolingWords.All]),
        new("--state", [.. OrderDescribed.StateWords.All]),
        new("FINDING", [.. ToolLookedOver.FindingWords.All]),
        new("WHAT", [.. ToolReworked.WhatWords.All]),
        new("CAUSE", [.. ToolScrapped.CauseWords.All]),
        new("SETTING", [.. ShopSetting.All.Select(setting => setting.Name)]),
        new("SHELL", [.. Shells.All]),
    ]);

    /// <summary>Lets every argument and option say what may stand for it.</summary>
    /// <param name="site">The world around, for the store.</param>
    /// <param name="root">The command line.</param>
    public static void Teach(Site site, RootCommand root)
    {
        foreach (Command command in root.Subcommands.Prepend<Command>(root))
        {
            foreach (Argument argument in command.Arguments)
            {
                Teach(site, argument.Name, argument.CompletionSources);
                // else help would list every tool of the shop in the name's place
                argument.HelpName ??= argument.Name;
            }

            foreach (Option option in command.Options)
            {
                Teach(site, option.Name, option.CompletionSources);
                if (OfTheShop.ContainsKey(option.Name))
                {
                    option.HelpName ??= option.Name.TrimStart('-').ToUpperInvariant();
                }
            }
        }
    }

    private static void Teach(Site site, string name, List<Func<CompletionContext, IEnumerable<CompletionItem>>> to)
    {
        if (Fixed.TryGetValue(name, out ImmutableArray<string> words))
        {
            to.Clear();
            to.Add(_ => words.Select(word => new CompletionItem(word)));
        }
        else if (OfTheShop.TryGetValue(name, out Func<Shop, IEnumerable<string>>? from))
        {
            to.Clear();
            to.Add(typed => Known(site, typed).SelectMany(from).Distinct(StringComparer.Ordinal).Select(Item));
        }
    }

    private static CompletionItem Item(string word) => new(word);

    /// <summary>The shop that was named; none where it cannot be read: a shell wants words, not sentences.</summary>
    private static IEnumerable<Shop> Known(Site site, CompletionContext typed)
    {
        try
        {
            string path = typed.ParseResult.GetValue(Common.Store) ?? site.UsualStore;
            using Bench bench = Bench.ToRead(site, Path.GetFullPath(path));
            return [bench.Shop];
        }
        catch (Exception e)
            when (e is StoreException or IOException or UnauthorizedAccessException or ArgumentException)
        {
            return [];
        }
    }

    private static IEnumerable<string> Marks(Shop shop) =>
        shop.Tools.Values.Where(tool => tool.State != ToolState.Scrapped).Select(tool => tool.Mark.Text);
}
