using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using CsCheck;
using ToolWear.Core.Deeds;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Planning;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Core.Wear;
using ToolWear.Core.Wear.OneTool;
using ToolWear.Pens;
using ToolWear.Results;
using ToolWear.Results.Eyes;
using ToolWear.Results.Plans;
using ToolWear.Results.Tools;
using ToolWear.Screens.Hammer;
using ToolWear.Testing.Generators;

namespace ToolWear.Tests.Commands;

/// <summary>The same fact is the same wherever it stands: heats left, where to stop, which tool next, cut length, weight,
/// cost, ready date. Read from what is printed, over random shops.</summary>
public sealed partial class AgreementTests(DemoFixture demo)
{
    private static readonly string[] Facts =
    [
        "heats left",
        "stop",
        "next",
        "cut",
        "weight",
        "cost",
        "forge by",
        "ready by",
        "order done",
    ];

    [Fact]
    public void Over_random_shops_each_fact_is_the_same_in_all_its_places()
    {
        foreach (Shop shop in Fixed.Samples(Shops(), 3))
        {
            Assert.Equal("", string.Join('\n', Disagreements(All(shop))));
        }
    }

    /// <summary>Of each fact one place is made to say something else; each must be found, and each stands in two or more.</summary>
    [Fact]
    public void One_disagreement_put_in_on_purpose_is_found()
    {
        Said[] said = All(demo.Forecasts.Shop);
        Assert.Empty(Disagreements(said));
        foreach (string fact in Facts)
        {
            IGrouping<string, Said>[] told =
            [
                .. said.Where(each => each.Fact == fact)
                    .GroupBy(each => each.Of, StringComparer.Ordinal)
                    .Where(of => of.Select(each => each.Place).Distinct(StringComparer.Ordinal).Count() > 1),
            ];
            Assert.NotEmpty(told);
            foreach (
                string place in told.SelectMany(of => of.Select(each => each.Place)).Distinct(StringComparer.Ordinal)
            )
            {
                Said wrong = told.SelectMany(of => of).First(each => each.Place == place);
                Said[] planted =
                [
                    .. said.Select(each => each == wrong ? each with { Value = Other(each.Value) } : each),
                ];
                Assert.Equal(
                    $"{fact} of {wrong.Of}",
                    Assert.Single(Disagreements(planted)).Split(':')[0],
                    StringComparer.Ordinal
                );
            }
        }
    }

    private static string Other(string value) =>
        double.TryParse(value, CultureInfo.InvariantCulture, out double number)
            ? (number + 1).ToString(CultureInfo.InvariantCulture)
            : value + "?";

    private static IEnumerable<string> Disagreements(IEnumerable<Said> said) =>
        said.GroupBy(each => (each.Fact, each.Of))
            .Where(of => of.Any(each => !IsSame(each.Value, of.First().Value)))
            .Select(of =>
                $"{of.Key.Fact} of {of.Key.Of}: {string.Join(", ", of.Select(each => $"{each.Place} {each.Value}"))}"
            );

    // what is printed for people is rounded to whole heats, millimetres and days; money to the cent
    private static bool IsSame(string one, string other) =>
        one == other
        || double.TryParse(one, CultureInfo.InvariantCulture, out double a)
            && double.TryParse(other, CultureInfo.InvariantCulture, out double b)
            && Math.Abs(a - b) <= 1e-6 * Math.Max(1, Math.Abs(a))
        || one.EndsWith('~') != other.EndsWith('~') && IsRounded(one, other);

    private static bool IsRounded(string one, string other)
    {
        (string rounded, string full) = one.EndsWith('~') ? (one[..^1], other) : (other[..^1], one);
        int point = rounded.IndexOf('.', StringComparison.Ordinal);
        int places = point < 0 ? 0 : rounded.Length - point - 1;
        return double.TryParse(full, CultureInfo.InvariantCulture, out double exact)
            && Math.Abs(exact - double.Parse(rounded, CultureInfo.InvariantCulture))
                <= (0.5 * Math.Pow(10, -places)) + 1e-9;
    }

    private Said[] All(Shop shop)
    {
        ShopForecasts all = ShopForecasts.Of(shop, demo.Forecasts);
        ShopLives lives = new(all);
        DateOnly today = shop.Ledger[^1].Day;
        ForgeList list = ForgeList.Of(lives, today, 0.9, null);
        return [.. OfTools(all), .. OfHammer(all), .. OfMaking(lives, list), .. OfDays(shop, list)];
    }

    private static IEnumerable<Said> OfTools(ShopForecasts all)
    {
        foreach (
            var row in Read(RackTable.Columns.Over(RackTable.Rows(all))).Where(row => row["heats_left"].Length > 0)
        )
        {
            string mark = row["tool"];
            yield return new("heats left", mark, "rack", row["heats_left"]);
            ToolForecast tool = all.Tools.Single(each => each.Tool.Mark.Text == mark);
            yield return new(
                "heats left",
                mark,
                "forecast",
                Read(ForecastTable.Of(tool.Gauges)).Single(gauge => gauge["gauge"] == row["gauge"])["heats_left"]
            );
            Card card = Card.Of(all, tool.Tool, LengthUnit.Mm);
            string text = CardText.Of(card);
            string part = text[text.IndexOf($"\n{row["gauge"]}: start", StringComparison.Ordinal)..].Split("\n\n")[0];
            Match about = CardLeft().Match(part.ReplaceLineEndings(" "));
            if (about.Success)
            {
                yield return new("heats left", mark, "card", about.Groups[1].Value + "~");
            }
        }
    }

    private static IEnumerable<Said> OfHammer(ShopForecasts all)
    {
        string[] next =
        [
            .. Read(RackTable.Columns.Over(RackTable.Rows(all)))
                .Where(row => row["next"] == "yes")
                .Select(row => row["tool"]),
        ];
        foreach (string pattern in all.Shop.Patterns.Keys)
        {
            foreach (HandOverStep step in HandOverTable.Steps(all, pattern))
            {
                var row = Read(HandOverTable.Columns.Over([step])).Single();
                if (step.First is not { } first)
                {
                    continue;
                }

                string stop = $"{row["tool"]} {Works.Words.Word(step.Work)} {pattern}";
                string of = $"{step.Stage.Eye} {step.Stage.Form} {step.Stage.Place} {pattern} {step.Number}";
                if (step.Stage.Eye is not null)
                {
                    yield return new("next", of, "helper's sheet", row["tool"]);
                    yield return new(
                        "next",
                        of,
                        "rack",
                        string.Join(
                            ' ',
                            next.Where(mark =>
                                LastTime.Fits(
                                    step.Stage,
                                    all.Tools.Single(each => each.Tool.Mark.Text == mark).Tool.Tool
                                )
                            )
                        )
                    );
                }

                if (step.Dressing is null)
                {
                    yield return new("stop", stop, "helper's sheet", row["stop_after_heats"]);
                    yield return new(
                        "stop",
                        stop,
                        "hammer",
                        HammerText
                            .MoreToday(all.Shop, all, pattern, new BoardTool(first.Tool.Id, step.Work))
                            ?.ToString(CultureInfo.InvariantCulture)
                            ?? ""
                    );
                }
            }
        }
    }

    private static IEnumerable<Said> OfMaking(ShopLives lives, ForgeList list) =>
        OfPlaces(lives).Concat(OfBatches(list));

    private static IEnumerable<Said> OfPlaces(ShopLives lives)
    {
        Shop shop = lives.Shop;
        foreach (PlaceHeatCost place in ToolingCosts.Of(lives).Places)
        {
            var row = Read(CostTables.Places.Over([place])).Single();
            yield return new("cost", place.Tools.ToString(), "costs", row["cost"]);
            foreach (string parts in new[] { Sum(row) }.OfType<string>())
            {
                yield return new("cost", place.Tools.ToString(), "its parts", parts);
            }
        }

        foreach (EyeDescribed eye in shop.Eyes.Values.Where(eye => shop.Series.Keys.Any(key => key.Eye == eye.Name)))
        {
            SeriesPlan plan = SeriesPlan.Of(shop, eye, [.. shop.Series.Values.Where(each => each.Eye == eye.Name)]);
            foreach (PlannedTool tool in plan.Tools)
            {
                string of = new ToolPlace(eye.Name, tool.Series.Place, tool.Series.Form.Name).ToString();
                string said = EyeWords.StockSentence(tool, LengthUnit.Mm);
                foreach (Said each in OfPiece(of, "series", tool.Stock))
                {
                    yield return each;
                }

                if (Kilos().Match(said) is { Success: true } kg)
                {
                    yield return new("weight", $"{of} {BarOf(tool.Stock)}", "series page", kg.Groups[1].Value + "~");
                }
            }

            foreach (QuotedTool tool in OddEyeQuote.Of(lives, plan, 3, 0.9).Tools)
            {
                string of = new ToolPlace(eye.Name, tool.Tool.Series.Place, tool.Tool.Series.Form.Name).ToString();
                yield return new("cost", of, "quote", Read(QuoteTable.Tools.Over([tool])).Single()["cost"]);
            }
        }
    }

    private static IEnumerable<Said> OfBatches(ForgeList list)
    {
        foreach ((ForgeBatch batch, int i) in list.Batches.Select((batch, i) => (batch, i)))
        {
            var row = Read(ForgeTable.Columns.Over([batch])).Single();
            string of = batch.Tools.ToString();
            string text = PlanWords.WallDetails(batch, LengthUnit.Mm);
            foreach (Said each in OfPiece(of, "forge list", batch.Stock))
            {
                yield return each;
            }

            if (Kilos().Match(text) is { Success: true } kg)
            {
                yield return new("weight", $"{of} {BarOf(batch.Stock)}", "wall", kg.Groups[1].Value + "~");
            }

            if (Cut().Match(PlanWords.WallSentence(batch, LengthUnit.Mm)) is { Success: true } cut)
            {
                yield return new("cut", $"{of} {BarOf(batch.Stock)}", "wall", cut.Groups[1].Value + "~");
            }

            if (double.TryParse(row["cost"], CultureInfo.InvariantCulture, out double cost))
            {
                yield return new("cost", of, "forge list", Text(cost / batch.Number));
                yield return new("cost", $"{of} batch {i}", "forge list", row["cost"]);
                yield return new("cost", $"{of} batch {i}", "wall", Cost().Match(text).Groups[1].Value + "~");
            }
        }

        // what the cut list takes off a bar, piece by piece
        foreach (BarUse bar in list.Cuts.Bars)
        {
            double used = bar.Batches.Sum(batch => batch.Pieces * (batch.PieceMm + bar.CutMm));
            yield return new("cut", $"bar {bar.Bar.Name} {bar.Bar.Size}", "its pieces", Text(used + bar.LeftMm));
            yield return new("cut", $"bar {bar.Bar.Name} {bar.Bar.Size}", "its length", Text(bar.LengthMm));
        }
    }

    private static IEnumerable<Said> OfPiece(string of, string place, BatchStock stock)
    {
        if (stock.PieceKg is { } kg)
        {
            yield return new("weight", $"{of} {BarOf(stock)}", place, Text(kg));
        }

        double? mm = stock.Cuts.IsEmpty ? stock.Buy?.PieceMm : stock.Cuts[0].PieceMm;
        if (mm is { } cut)
        {
            yield return new("cut", $"{of} {BarOf(stock)}", place, Text(cut));
        }
    }

    // another bar gives another length
    private static string BarOf(BatchStock stock) =>
        stock.Cuts.IsEmpty ? $"{stock.Buy?.Bar.Size}" : $"{stock.Cuts[0].Bar.Size}";

    private static IEnumerable<Said> OfDays(Shop shop, ForgeList list)
    {
        foreach ((ForgeBatch batch, int i) in list.Batches.Select((batch, i) => (batch, i)))
        {
            var row = Read(ForgeTable.Columns.Over([batch])).Single();
            string of = $"{batch.Tools} batch {i}";
            string wall = PlanWords.WallSentence(batch, LengthUnit.Mm);
            yield return new("forge by", of, "forge list", row["forge_by"]);
            yield return new("forge by", of, "wall", ForgeBy().Match(wall).Groups[1].Value);
            int days = batch.Series?.ReadyDays ?? batch.ReadyBy.DayNumber - batch.ForgeBy.DayNumber;
            yield return new("ready by", of, "forge list", row["ready_by"]);
            // never before today plus its days, and it says so where that is late
            DateOnly first = list.From.AddDays(days);
            yield return new("ready by", of, "its days", Iso(batch.ReadyBy < first ? first : batch.ReadyBy));
            yield return new(
                "ready by",
                of,
                "wall",
                Ready().Match(wall) is { Success: true } late ? late.Groups[1].Value : row["ready_by"]
            );
        }

        foreach (PlaceInBoth place in new TwoForgeLists(list, list).Places)
        {
            var row = Read(BothTable.Columns.Over([place])).Single();
            int first = list.Batches.Select((batch, i) => (batch, i)).First(each => each.batch.Tools == place.Tools).i;
            yield return new("forge by", $"{place.Tools} batch {first}", "two lists", row["forge_by"]);
        }

        OrderBook book = OrderBook.Of(shop, list.From, list.Calendar);
        foreach (OrderOutlook order in book.Orders.Where(order => order.DoneOn is not null))
        {
            DateOnly? last = list
                .Calendar.Days.LastOrDefault(day => day.Heads.Any(each => each.Order.Order == order.Order.Order))
                ?.On;
            yield return new(
                "order done",
                order.Order.Order,
                "orders",
                Read(OrderTable.Columns.Over([order])).Single()["done_on"]
            );
            yield return new("order done", order.Order.Order, "calendar", last is { } on ? Iso(on) : "");
        }
    }

    private static string? Sum(Dictionary<string, string> row) =>
        row["cost"].Length == 0
            ? null
            : Text(
                new[] { "steel_cost", "hours_cost", "treat_cost" }.Sum(part =>
                    double.TryParse(row[part], CultureInfo.InvariantCulture, out double money) ? money : 0
                )
            );

    private static List<Dictionary<string, string>> Read(Table table)
    {
        List<List<string>> csv = CsvCells.Of(table.ToCsv());
        return
        [
            .. csv.Skip(1)
                .Select(row =>
                    csv[0].Zip(row).ToDictionary(cell => cell.First, cell => cell.Second, StringComparer.Ordinal)
                ),
        ];
    }

    private static string Text(double number) => number.ToString("R", CultureInfo.InvariantCulture);

    private static string Iso(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    /// <summary>The demo shop some evenings on: worked, read, dressed, found, ordered, and set otherwise at random.</summary>
    private Gen<Shop> Shops()
    {
        Shop before = demo.Forecasts.Shop;
        DateOnly today = before.Ledger[^1].Day;
        (ToolMark Mark, GaugeMark Gauge, Length Size)[] gauges =
        [
            .. demo
                .Forecasts.InService.SelectMany(each => each.Gauges)
                .Where(each => each.History.LastKnown is not null)
                .Select(each => (each.History.Tool.Mark, each.History.Gauge, each.History.LastKnown!.Value)),
        ];
        Gen<LedgerEntry> happens = Gen.OneOf<LedgerEntry>(
            Gen.Select(
                Gen.OneOf([.. gauges.Select(Gen.Const)]),
                Gen.Int[1, 30],
                LedgerEntry (at, heats) =>
                    new HeatsWorked(before.Sessions.Keys.Last(), at.Mark, Work.Other, Heats.Of(heats), HeatsHow.Counted)
            ),
            Gen.Select(
                Gen.OneOf([.. gauges.Select(Gen.Const)]),
                Gen.Double[0, 0.6],
                LedgerEntry (at, mm) =>
                    new ToolMeasured(
                        at.Mark,
                        at.Gauge.Name,
                        today,
                        null,
                        Length.FromMm(at.Size.Mm + (at.Gauge.Wears == Wears.Smaller ? -mm : mm)),
                        null,
                        null,
                        null
                    )
            ),
            Gen.OneOf([.. gauges.Select(Gen.Const)])
                .Select(LedgerEntry (at) => new ToolLookedOver(at.Mark, today, Finding.Sound, null, null)),
            Gen.Select(
                Gen.OneOf([.. before.Patterns.Keys.Select(Gen.Const)]),
                Gen.Int[1, 40],
                Gen.Int[0, 60],
                LedgerEntry (pattern, heads, days) =>
                    new OrderDescribed($"{pattern} {heads}", pattern, heads, today.AddDays(days), OrderState.Open)
            ),
            Gen.Int[0, 5].Select(LedgerEntry (mm) => new SettingChanged("cut_width_mm", $"{mm}")),
            Gen.Int[20, 90].Select(LedgerEntry (rate) => new SettingChanged("hour_rate", $"{rate}"))
        );
        return happens
            .Array[1, 30]
            .Select(entries =>
                entries.Aggregate(
                    before,
                    (shop, what) => shop.After(Ledgers.Number(shop, new Attempt(today, what))).After ?? shop
                )
            );
    }

    [GeneratedRegex(@"about\s+(\d+)\s+heats\s+left")]
    private static partial Regex CardLeft();

    [GeneratedRegex(@"([\d.]+) kg (as cut|each)")]
    private static partial Regex Kilos();

    [GeneratedRegex(@", (\d+) mm")]
    private static partial Regex Cut();

    [GeneratedRegex(@"cost ([\d.]+)")]
    private static partial Regex Cost();

    [GeneratedRegex(@" by ... (\d{4}-\d\d-\d\d)")]
    private static partial Regex ForgeBy();

    [GeneratedRegex(@"ready on ... (\d{4}-\d\d-\d\d)")]
    private static partial Regex Ready();

    private sealed record Said(string Fact, string Of, string Place, string Value);
}
