using System.Collections.Immutable;
using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;

namespace ToolWear.Core.Planning;

/// <summary>How many heats a head takes at a stage of a pattern, as worked.</summary>
/// <param name="Pattern">The pattern's name.</param>
/// <param name="Stage">The stage.</param>
/// <param name="Heats">Heats a head, as worked; 0 where neither records nor a guess say.</param>
/// <param name="Spread">Standard deviation from session to session; null below two sessions.</param>
/// <param name="Sessions">How many closed sessions taught it; 0 where the guess counts.</param>
/// <param name="Weight">How much a heat there counts on the tool: the shop's factor times the pattern's load.</param>
public sealed record HeatsAHead(
    string Pattern,
    PatternStage Stage,
    double Heats,
    double? Spread,
    int Sessions,
    double Weight
)
{
    // one evening may be an odd one
    private const int LeastSessions = 2;

    /// <summary>Weighted heats a head.</summary>
    public double Weighted => Heats * Weight;

    /// <summary>Whether the shop's records taught it, not the first guess.</summary>
    public bool IsLearned => Sessions > 0;

    /// <summary>The tools that a stage uses; null where no form was named.</summary>
    public ToolPlace? Tools => Stage.Form is { } form ? new ToolPlace(Stage.Eye, Stage.Place, form.Name) : null;

    /// <summary>The stages of every pattern of a shop.</summary>
    /// <param name="shop">The shop.</param>
    /// <returns>One for each stage, in order, by the pattern's name.</returns>
    public static ImmutableSortedDictionary<string, ImmutableArray<HeatsAHead>> Of(Shop shop)
    {
        ILookup<string, (ToolInShop Tool, HeatsWorked Heats)> worked = Worked(shop);
        return shop.Patterns.ToImmutableSortedDictionary(
            pattern => pattern.Key,
            pattern => Of(shop, pattern.Value, worked),
            StringComparer.Ordinal
        );
    }

    /// <summary>Heats a head at a stage in each closed session that tells them.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="pattern">The pattern.</param>
    /// <param name="stage">One of its stages.</param>
    /// <returns>The session's name and its heats a head, as worked; none where two stages use the same tools for the same
    /// work, which cannot be told apart afterwards.</returns>
    public static ImmutableArray<(string Session, double HeatsAHead)> BySession(
        Shop shop,
        PatternDescribed pattern,
        PatternStage stage
    ) => [.. InSessions(shop, pattern, stage, Worked(shop))];

    private static ImmutableArray<HeatsAHead> Of(
        Shop shop,
        PatternDescribed pattern,
        ILookup<string, (ToolInShop Tool, HeatsWorked Heats)> worked
    ) =>
        [
            .. pattern.Stages.Select(stage =>
                Of(shop, pattern, stage, [.. InSessions(shop, pattern, stage, worked).Select(each => each.HeatsAHead)])
            ),
        ];

    private static ILookup<string, (ToolInShop Tool, HeatsWorked Heats)> Worked(Shop shop) =>
        shop
            .Tools.Values.SelectMany(tool => tool.Events.Select(each => (tool, each.What as HeatsWorked)))
            .Where(each => each.Item2 is not null)
            .ToLookup(each => each.Item2!.Session, each => (each.tool, each.Item2!), StringComparer.Ordinal);

    private static IEnumerable<(string Session, double HeatsAHead)> InSessions(
        Shop shop,
        PatternDescribed pattern,
        PatternStage stage,
        ILookup<string, (ToolInShop Tool, HeatsWorked Heats)> worked
    ) =>
        IsAlone(pattern, stage)
            ? shop
                .Sessions.Values.Where(session =>
                    !session.IsOpen && session.Opened.Pattern == pattern.Pattern && HeadsAt(session, stage) > 0
                )
                .Select(session => (session, Heats: worked[session.Name].Where(each => Serves(each, stage)).ToArray()))
                // what was estimated came from the pattern and teaches nothing about it
                .Where(each => each.Heats.Length > 0 && each.Heats.All(heats => heats.Heats.How == HeatsHow.Counted))
                .Select(each =>
                    (each.session.Name, each.Heats.Sum(heats => heats.Heats.Heats.Count) / HeadsAt(each.session, stage))
                )
            : [];

    private static HeatsAHead Of(Shop shop, PatternDescribed pattern, PatternStage stage, double[] taught)
    {
        double weight = (stage.Form, stage.Work) switch
        {
            ({ } form, { } work) when form.MainWork(stage.Place) != work => shop.Settings.Factor(stage.Place, work),
            _ => 1,
        };
        weight *= stage.Load ?? 1;
        if (taught.Length < LeastSessions)
        {
            return new HeatsAHead(pattern.Pattern, stage, stage.HeatsAHead ?? 0, null, 0, weight);
        }

        double mean = taught.Average();
        double spread = Math.Sqrt(taught.Sum(heats => (heats - mean) * (heats - mean)) / (taught.Length - 1));
        return new HeatsAHead(pattern.Pattern, stage, mean, spread, taught.Length, weight);
    }

    // heads counted at the stage itself, where somebody did; else those that the session finished
    private static int HeadsAt(Session session, PatternStage stage) =>
        session.HeadsByStage.TryGetValue(stage.Name, out int heads) ? heads : session.Heads ?? 0;

    private static bool Serves((ToolInShop Tool, HeatsWorked Heats) each, PatternStage stage) =>
        each.Tool.Tool.Form == stage.Form
        && each.Tool.Tool.Place == stage.Place
        && each.Tool.Tool.Eye == stage.Eye
        && each.Heats.Work == stage.Work;

    // heats of two stages that use the same tools for the same work cannot be told apart afterwards
    private static bool IsAlone(PatternDescribed pattern, PatternStage stage) =>
        stage is { Form: not null, Work: not null }
        && pattern.Stages.Count(each =>
            each.Form == stage.Form && each.Place == stage.Place && each.Eye == stage.Eye && each.Work == stage.Work
        ) == 1;
}
