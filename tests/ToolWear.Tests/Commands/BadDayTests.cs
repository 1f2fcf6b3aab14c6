using System.Collections.Immutable;
using System.Text;
using CsCheck;
using ToolWear.Core.Deeds;
using ToolWear.Core.Findings;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Planning;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Core.Tools.Forms;
using ToolWear.Core.Wear;
using ToolWear.Core.Wear.Figures;
using ToolWear.Core.Wear.OneTool;
using ToolWear.Pens;
using ToolWear.Results.Tools;
using ToolWear.Testing.Generators;
using ToolWear.Testing.Goldens;
using ToolWear.Wording;

namespace ToolWear.Tests.Commands;

/// <summary>What was found on a tool is said everywhere, and nothing offers a tool that may not be used.</summary>
public sealed class BadDayTests(DemoFixture demo)
{
    [Fact]
    public void Every_finding_by_place_and_steel_says_the_same_everywhere()
    {
        StringBuilder text = new();
        foreach (Finding finding in Enum.GetValues<Finding>().Where(each => each != Finding.Sound))
        {
            text.Append($"== {ToolLookedOver.FindingWords.Word(finding)}\n");
            foreach (ToolPart? part in FindingTable.PartsOf(finding).Select(each => (ToolPart?)each).Append(null))
            {
                foreach (string? steel in new[] { "mild", "4140", "H13", null })
                {
                    text.Append(Told(finding, part, steel));
                }
            }
        }

        Golden.Same("findings.txt", text.ToString());
    }

    [Fact]
    public void Over_random_ledgers_nothing_offers_or_plans_a_tool_that_may_not_be_used_or_hides_a_finding()
    {
        ImmutableArray<ToolMark> marks = [.. demo.Forecasts.InService.Select(each => each.Tool.Mark)];
        DateOnly today = demo.Forecasts.Shop.Ledger[^1].Day;
        Gen<LedgerEntry> happens = Gen.Frequency<LedgerEntry>(
            (
                6,
                Gen.Select(
                    Gen.OneOf([.. marks.Select(Gen.Const)]),
                    Gen.Enum<Finding>(),
                    Gen.Nullable(Gen.Enum<ToolPart>()),
                    LedgerEntry (mark, finding, part) =>
                        new ToolLookedOver(mark, today, finding, null, null, finding == Finding.Sound ? null : part)
                )
            ),
            (
                3,
                Gen.Select(
                    Gen.OneOf([.. marks.Select(Gen.Const)]),
                    Gen.Enum<Rework>(),
                    LedgerEntry (mark, what) => new ToolReworked(mark, today, what, null, null, null, null, null, null)
                )
            ),
            (
                2,
                Gen.OneOf([.. marks.Select(Gen.Const)])
                    .Select(LedgerEntry (mark) => new ToolLookedOver(mark, today, Finding.Sound, null, null))
            )
        );
        happens
            .Array[1, 40]
            .Sample(
                entries =>
                {
                    Shop shop = entries.Aggregate(
                        demo.Forecasts.Shop,
                        (before, what) => before.After(Ledgers.Number(before, new Attempt(today, what))).After ?? before
                    );
                    Check(ShopForecasts.Of(shop, demo.Forecasts));
                },
                iter: 25,
                threads: 1
            );
    }

    private static void Check(ShopForecasts all)
    {
        Shop shop = all.Shop;
        HashSet<long> forbidden =
        [
            .. shop
                .Tools.Values.Where(tool => OpenPlainly(shop, tool).Any(each => each.Forbids))
                .Select(tool => tool.Id),
        ];
        Assert.Empty(NextToTake.Of(all).Intersect(forbidden));
        Assert.DoesNotContain(RackTable.Rows(all), row => row.IsNext && forbidden.Contains(row.Tool.Tool.Id));
        foreach (string? pattern in shop.Patterns.Keys.Select(each => (string?)each).Append(null))
        {
            foreach (ShopForecasts? known in new[] { all, null })
            {
                Assert.Empty(LastTime.Of(shop, pattern, known).Chosen.Select(each => each.Tool).Intersect(forbidden));
            }

            Assert.DoesNotContain(
                pattern is null ? [] : HandOverTable.Steps(all, pattern),
                step => step.Fitting.Any(each => forbidden.Contains(each.Tool.Id))
            );
        }

        ShopLives lives = new(all);
        foreach (ToolForecast tool in all.InService)
        {
            CountedTool counted = lives
                .InService(ToolPlace.Of(tool.Tool.Tool))
                .Single(each => each.Forecast.Tool.Id == tool.Tool.Id);
            Assert.True(!forbidden.Contains(tool.Tool.Id) || counted.WhyNot is not null, tool.Tool.Mark.Text);
            string why = all.VerdictOf(tool).Why;
            string card = CardText.Of(Card.Of(all, tool.Tool, LengthUnit.Mm)).ReplaceLineEndings(" ");
            foreach ((ToolLookedOver found, _) in OpenPlainly(shop, tool.Tool))
            {
                string word = $"found {ToolLookedOver.FindingWords.Word(found.Finding)}";
                Assert.Contains(word, why, StringComparison.Ordinal);
                Assert.Contains(word, card, StringComparison.Ordinal);
            }
        }
    }

    /// <summary>The rules of the trade page told once more, plainly: what is still open of a tool, and whether it keeps the
    /// tool out of use. Where the page asks for more than one thing, the first of them is asked for here.</summary>
    internal static List<(ToolLookedOver Found, bool Forbids)> OpenPlainly(Shop shop, ToolInShop tool)
    {
        string? steel = tool.Tool.Steel;
        bool isMild = steel == "mild";
        List<(ToolLookedOver Found, bool Forbids)> open = [];
        foreach (LedgerEntry what in shop.HistoryOf(tool).Select(each => each.Entered.What))
        {
            if (what is ToolLookedOver { Finding: Finding.Sound })
            {
                open.RemoveAll(each => !each.Forbids);
            }
            else if (what is ToolLookedOver found)
            {
                bool isLookEnough =
                    found.Finding == Finding.MarkGone
                    || (found.Finding == Finding.Stuck && isMild)
                    || (found.Finding == Finding.Soft && (isMild || found.Part == ToolPart.StruckEnd));
                open.Add((found, !isLookEnough));
            }
            else if (what is ToolReworked rework)
            {
                open.RemoveAll(each => MayHelp(each.Found.Finding, each.Found.Part, rework.What));
            }
        }

        return open;
    }

    private static bool MayHelp(Finding finding, ToolPart? part, Rework rework) =>
        finding switch
        {
            Finding.Broken => false,
            Finding.Cracked => part == ToolPart.StruckEnd && rework == Rework.Dressed,
            Finding.Bent => rework == Rework.Straightened,
            Finding.Stuck or Finding.GlassHard => rework is Rework.Tempered or Rework.Rehardened,
            Finding.Soft => rework == Rework.Rehardened,
            Finding.LooseHandle => rework == Rework.Rehandled,
            Finding.MarkGone => false,
            _ => rework == Rework.Dressed,
        };

    /// <summary>One tool that worked, was read and found sound, and then this was found on it.</summary>
    private static string Told(Finding finding, ToolPart? part, string? steel)
    {
        DateOnly day = new(2026, 5, 4);
        ToolMark mark = Texts.MarkOf("R1");
        ToolLookedOver found = new(mark, day, finding, "Ada", null, part);
        Tool drift = new(
            mark,
            ToolForms.TryFind("drift", out ToolForm form, out string refusal)
                ? form
                : throw new InvalidOperationException(refusal),
            "H",
            Place.Rough,
            null,
            steel,
            null,
            null,
            ToolStart.New,
            null,
            ToolCost.Unknown,
            null,
            null,
            [new("width", Wears.Smaller, Measures.Width, null, Length.FromMm(16m), Length.FromMm(14m), null, null)],
            []
        );
        Shop shop = new LedgerEntry[]
        {
            new ToolAdded(drift),
            new SessionOpened("s1", day, null, Care.Usual, null, null),
            new HeatsWorked("s1", mark, Work.Cheeks, Heats.Of(6), HeatsHow.Counted),
            new ToolMeasured(mark, "width", day, "s1", Length.FromMm(15.6), null, null, null),
            new ToolLookedOver(mark, day, Finding.Sound, "Ada", null),
            found,
        }.Aggregate(Shop.Empty, (before, what) => before.After(Ledgers.Number(before, new Attempt(day, what))).After!);
        ShopForecasts all = ShopForecasts.Of(shop);
        ToolInShop tool = shop.Tools.Values.Single();
        Judged judged = all.VerdictOf(tool.Id)!;
        Card card = Card.Of(all, tool, LengthUnit.Mm);
        string made = card.Into is { } into ? string.Join(' ', EyeText.CautionsOf(into)) : "";
        CountedTool counted = new ShopLives(all).InService(ToolPlace.Of(drift))[0];
        string next = NextToTake.Of(all).IsEmpty ? "not offered" : "offered";
        string left = card.Forecast.HeatsLeft is { } heats ? Words.HeatsLeft(heats) : "heats left: nothing is said";
        ScrapCause cause = LookedOver.Of(shop, tool).Forbids is { } open
            ? FindingTable.CauseOf(open.Found.Finding)
            : ScrapCause.Worn;
        return $"-- {(part is { } known ? ToolLookedOver.PartWords.Word(known) : "place not known")}, {steel ?? "steel not known"}\n"
            + $"   rack, card    {judged.Shown} ({judged.Word}): {judged.Why}\n"
            + $"   next          {next}; hammer and helper's sheet: {(LastTime.Of(shop, null, all).Chosen.IsEmpty ? "not offered" : "offered")}\n"
            + $"   wear          {left}\n"
            + $"   plan          {(counted.WhyNot is null ? "counts on it" : "not counted on")}\n"
            + $"   round, verb   {FindingWords.Found(shop, found)}\n"
            + $"   scrap         proposes {ToolScrapped.CauseWords.Word(cause)}\n"
            + (made.Length == 0 ? "" : $"   make into     {made}\n");
    }
}
