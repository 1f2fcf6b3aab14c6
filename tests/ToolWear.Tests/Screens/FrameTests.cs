using System.Collections.Immutable;
using System.Text.RegularExpressions;
using CsCheck;
using ToolWear.Keys;
using ToolWear.Pens;
using ToolWear.Results;
using ToolWear.Screens;
using ToolWear.Screens.Drawing;
using ToolWear.Tests.Commands;
using Xunit;

namespace ToolWear.Tests.Screens;

/// <summary>Title and foot: measured, never cut.</summary>
public sealed partial class FrameTests
{
    [Fact]
    public void A_rack_with_many_more_keys_shows_them_all_in_three_lines_of_80_columns()
    {
        KeyRow[] more =
        [
            .. new[] { "o orders", "c costs", "y eyes", "b bars", "v year", "n loans", "k stock-take" }
                .Select(each => each.Split(' '))
                .Where(each => !KeyTable.Of(ScreenName.ToolRack).Any(row => row.Shown == each[0]))
                .Select(each => Row(each[0], each[1])),
        ];
        ImmutableArray<KeyRow> rows =
        [
            .. KeyTable.Of(ScreenName.ToolRack).Where(row => !row.OnlyInHelp && row.Need != Need.Typing).Concat(more),
        ];
        IReadOnlyList<ImmutableArray<KeyRow>> lines = ScreenFrame.Lines(rows, 80, 24);
        Assert.InRange(lines.Count, 1, 3);
        Assert.Equal(
            rows.Select(row => row.Shown).Order(StringComparer.Ordinal),
            lines.SelectMany(line => line).Select(row => row.Shown).Order(StringComparer.Ordinal)
        );
        Assert.All(lines, line => Assert.InRange(Columns(line), 1, 80));
    }

    [Fact]
    public void However_many_keys_there_are_no_line_is_too_long_help_stays_and_none_goes_without_need() =>
        Gen.Select(Gen.Int[0, 40], Gen.Int[1, 18], Gen.Int[40, 130], Gen.Int[6, 50])
            .Sample(
                (count, words, width, height) =>
                {
                    ImmutableArray<KeyRow> rows =
                    [
                        .. Enumerable.Range(0, count).Select(i => Row($"{i}", new string('w', 1 + (i * 7 % words)))),
                        Row("?", "help") with
                        {
                            Act = Act.Help,
                        },
                    ];
                    IReadOnlyList<ImmutableArray<KeyRow>> lines = ScreenFrame.Lines(rows, width, height);
                    int most = Math.Max(1, height / 6);
                    Assert.InRange(lines.Count, 1, most);
                    Assert.All(lines, line => Assert.InRange(Columns(line), 1, width));
                    Assert.Equal(Act.Help, lines[^1][^1].Act);
                    int shown = lines.Sum(line => line.Length);
                    if (shown < rows.Length)
                    {
                        // as many lines as may be, and all of the keys would have wanted more
                        Assert.True(ScreenFrame.Lines(rows, width, 6 * 60).Count > most);
                        Assert.Equal(most, lines.Count);
                    }
                },
                iter: 300
            );

    [Fact]
    public void In_a_small_window_moving_about_leaves_the_foot_first_and_taking_back_last()
    {
        KeyRow[] work = [.. Enumerable.Range(0, 12).Select(i => Row($"{i}", "something"))];
        KeyRow back = Row("Bksp", "take back") with { Where = null, Act = Act.TakeBack };
        KeyRow help = Row("?", "help") with { Where = null, Act = Act.Help };
        KeyRow move = Row("↑↓", "choose") with { Act = Act.Move };
        ImmutableArray<KeyRow> rows = [.. work, move, help, back];
        Act[] shown = [.. ScreenFrame.Lines(rows, 40, 12).SelectMany(line => line).Select(row => row.Act)];
        Assert.DoesNotContain(Act.Move, shown);
        Assert.Contains(Act.TakeBack, shown);
        Assert.Contains(Act.Help, shown);
    }

    [Fact]
    public void The_mark_of_the_demo_is_never_cut_however_long_the_heading()
    {
        using TestSite site = new();
        site.Demo();
        using BareScreens screens = new(site);
        bool[] behind = [true, false];
        foreach (bool isBehind in behind)
        {
            Assert.Equal(isBehind, screens.Sitting.Forecaster.IsBehind);
            for (int length = 0; length <= 100; length += 3)
            {
                Longwinded screen = new(screens.Host, new string('h', length));
                foreach (int width in (int[])[24, 40, 60, 80, 100, 120])
                {
                    Picture drawn = screen.Whole(width, 24);
                    string title = drawn.ToString().Split('\n')[0];
                    Assert.Matches(DemoMark(), title);
                    Assert.Equal(width >= 8 + length, title.StartsWith(screen.Heading, StringComparison.Ordinal));
                    Assert.Empty(drawn.Overlaps);
                    Assert.Empty(drawn.LeftOut);
                }
            }

            screens.Wait();
        }
    }

    [Fact]
    public void What_was_said_is_broken_into_lines_and_takes_them_from_the_body()
    {
        using TestSite site = new();
        using BareScreens screens = new(site);
        const string caution =
            "An over-heated air-hardening tool is brittle until tempered; a drift stuck in a head that "
            + "went back to the fire counts as over-heated. Press it out; never hammer on a cracked one.";
        screens.Sitting.Say(caution, Ink.Warn);
        string[] lines = screens.Text.Split('\n');
        Assert.Equal(caution, string.Join(' ', lines[19..22]).Trim());
        Assert.Empty(screens.Drawn.LeftOut);
    }

    [Fact]
    public void A_list_sends_no_control_character_to_the_terminal()
    {
        ListColumn column = new("", 8, _ => "");
        Assert.Equal("a\uFFFD[2J   ", column.Set("a\u001b[2J"));
        Assert.Equal("a\uFFFDbcdef…", column.Set("a\u0007bcdefghij"));
    }

    [Fact]
    public void No_tick_is_a_zero_with_a_sign() =>
        Gen.Select(Gen.Double[-2, 1], Gen.Double[0.001, 3], Gen.Int[2, 12])
            .Sample(
                (from, length, most) =>
                {
                    (IReadOnlyList<double> at, int decimals) = RoundTicks.Of(from, from + length, most);
                    Assert.All(at, tick => Assert.DoesNotMatch("^-0(\\.0*)?$", RoundTicks.Text(tick, decimals)));
                },
                iter: 2000
            );

    private static KeyRow Row(string key, string words) => new(Act.GoShop, key, words) { Where = ScreenName.ToolRack };

    private static int Columns(ImmutableArray<KeyRow> line) =>
        Picture.ColumnsOf(string.Join("  ", line.Select(row => $"{row.Shown} {row.Words}")));

    [GeneratedRegex(@"\[demo(: an invented shop)?\]")]
    private static partial Regex DemoMark();

    /// <summary>A screen with nothing but a heading.</summary>
    private sealed class Longwinded(Host host, string heading) : Screen(host)
    {
        public override ScreenName Name => ScreenName.TrialPages;

        public override string Heading => heading;

        public override void Do(Act act, int which) { }

        public override void Compose(Picture body) { }
    }
}
