using System.Collections.Immutable;
using System.Globalization;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Planning;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Core.Wear;

namespace ToolWear.ShopYears;

/// <summary>What came of a year.</summary>
/// <param name="Sessions">Days at the hammer.</param>
/// <param name="Stopped">Of them stopped for want of a tool.</param>
/// <param name="Made">Tools made by the plan.</param>
/// <param name="Urgent">Tools made because a session stopped.</param>
/// <param name="LeftOver">Of all those made, never used by the end.</param>
/// <param name="StoppedAt">The places where sessions stopped.</param>
internal sealed record YearResult(
    int Sessions,
    int Stopped,
    int Made,
    int Urgent,
    int LeftOver,
    ImmutableArray<string> StoppedAt
);

/// <summary>A year of the demo shop by the day: orders come in once a month, the plan is made anew and followed.</summary>
internal sealed class ShopYear
{
    private const int Days = 365;
    private const int DaysOfAPlan = 30;
    private const double Sure = 0.9;
    private const double ReadShare = 0.6;
    private const double SeverityOfSessions = 0.2;
    private const double SpreadOfHeatsAHead = 0.1;

    // pattern, chance that an order of it comes in a month, heads from, to: about as many as in the half year on record
    private static readonly ImmutableArray<(string Pattern, double Chance, int From, int To)> Coming =
    [
        ("hatchet", 0.8, 6, 18),
        ("cross-peen", 0.7, 5, 15),
        ("tomahawk", 0.7, 8, 16),
        ("adze", 0.6, 4, 8),
    ];

    private readonly Chance chance;
    private readonly int fewer;
    private readonly List<TrueTool> tools = [];
    private readonly Dictionary<DateOnly, List<(ToolPlace Place, int Number, int ReadyDays)>> toForge = [];
    private readonly List<string> stoppedAt = [];
    private Shop shop;
    private int marks;
    private int sessions;
    private int stopped;
    private int made;
    private int urgent;

    private ShopYear(Shop shop, ShopForecasts forecasts, int seed, int fewer)
    {
        (this.shop, this.fewer) = (shop, fewer);
        chance = new Chance(seed);
        tools.AddRange(
            forecasts
                .InService.Where(each => TrueTool.Deciding(each.Tool.Tool) is not null)
                .Select(each => TrueTool.There(shop, each, chance))
        );
    }

    /// <summary>Lives one year.</summary>
    /// <param name="shop">The shop it begins with.</param>
    /// <param name="forecasts">Its forecasts.</param>
    /// <param name="from">Its first day.</param>
    /// <param name="seed">The seed.</param>
    /// <param name="fewer">By how many each batch is smaller than planned.</param>
    public static YearResult Live(Shop shop, ShopForecasts forecasts, DateOnly from, int seed, int fewer)
    {
        ShopYear year = new(shop, forecasts, seed, fewer);
        for (int day = 0; day < Days; day++)
        {
            year.Day(from.AddDays(day), isPlanned: day % DaysOfAPlan == 0);
        }

        return new YearResult(
            year.sessions,
            year.stopped,
            year.made,
            year.urgent,
            year.tools.Count(tool => tool.ReadyOn > DateOnly.MinValue && !tool.WasUsed),
            [.. year.stoppedAt]
        );
    }

    private void Day(DateOnly today, bool isPlanned)
    {
        if (isPlanned)
        {
            OrdersComeIn(today);
            Plan(today);
        }

        if (toForge.Remove(today, out List<(ToolPlace Place, int Number, int ReadyDays)>? batches))
        {
            foreach ((ToolPlace place, int number, int readyDays) in batches)
            {
                for (int i = 0; i < number; i++)
                {
                    Forge(place, today, readyDays);
                    made++;
                }
            }
        }

        if (
            shop.Settings.IsHammerDay(today.DayOfWeek)
            && shop.Orders.Values.Any(order => order.State == OrderState.Open)
        )
        {
            AtTheHammer(today);
        }
    }

    private void OrdersComeIn(DateOnly today)
    {
        foreach ((string pattern, double often, int from, int to) in Coming)
        {
            if (chance.Uniform() < often)
            {
                string name = string.Create(CultureInfo.InvariantCulture, $"{pattern} {today:yyyy-MM-dd}");
                Enter(
                    today,
                    new OrderDescribed(
                        name,
                        pattern,
                        chance.Whole(from, to),
                        today.AddDays(chance.Whole(20, 75)),
                        OrderState.Open
                    )
                );
            }
        }
    }

    private void Plan(DateOnly today)
    {
        toForge.Clear();
        ForgeList list = ForgeList.Of(new ShopLives(ShopForecasts.Of(shop)), today, Sure, until: null);
        foreach (ForgeBatch batch in list.Batches)
        {
            DateOnly day = batch.ForgeBy < today ? today : batch.ForgeBy;
            if (day < today.AddDays(DaysOfAPlan) && batch.Number > fewer)
            {
                if (!toForge.TryGetValue(day, out List<(ToolPlace, int, int)>? same))
                {
                    toForge[day] = same = [];
                }

                same.Add((batch.Tools, batch.Number - fewer, batch.Series?.ReadyDays ?? 0));
            }
        }
    }

    private void Forge(ToolPlace place, DateOnly today, int readyDays)
    {
        Tool like = shop
            .Tools.Values.Where(tool =>
                tool.Tool.Form.Name == place.Form
                && tool.Tool.Place == place.Place
                && TrueTool.Deciding(tool.Tool) is not null
            )
            .OrderBy(tool => tool.Tool.Eye == place.Eye)
            .ThenBy(tool => tool.Id)
            .Last()
            .Tool;
        Series? series = place.Eye is { } eye
            ? shop.Series.GetValueOrDefault(new SeriesKey(eye, place.Place, place.Form))
            : null;
        Tool tool = like with
        {
            Mark = NewMark(),
            Eye = place.Eye,
            Steel = series?.Steel ?? like.Steel,
            MadeOn = today,
            Start = ToolStart.New,
            GaugeMarks = [TrueTool.Deciding(like)!],
        };
        Enter(today, new ToolAdded(tool));
        // the shop writes the gauge mark over all beside those that are given
        tools.Add(TrueTool.New(tool, today.AddDays(readyDays), chance));
    }

    private ToolMark NewMark() =>
        ToolMark.TryParse(string.Create(CultureInfo.InvariantCulture, $"N{++marks}"), out ToolMark mark, out string why)
            ? mark
            : throw new InvalidOperationException(why);

    private void AtTheHammer(DateOnly today)
    {
        SessionDay day = SessionCalendar.Of(shop, today).Days[0];
        if (day.On != today)
        {
            throw new InvalidOperationException($"the calendar begins on {day.On}, not on {today}");
        }

        sessions++;
        double severity = Math.Exp(chance.Normal(SeverityOfSessions));
        int number = 0;
        foreach (HeadsOfOrder order in day.Heads)
        {
            SessionOfOrder one = new(shop, order.Order, tools, today, chance, severity, SpreadOfHeatsAHead);
            int heads = one.Forge(order.Heads);
            string name = string.Create(CultureInfo.InvariantCulture, $"{today:yyyy-MM-dd} {++number}");
            foreach (LedgerEntry entry in one.Entries(name, heads, ReadShare))
            {
                Enter(today, entry);
            }

            if (one.Missing is { } place)
            {
                stopped++;
                stoppedAt.Add(place.ToString());
                int days = place.Eye is { } eye
                    ? shop.Series.GetValueOrDefault(new SeriesKey(eye, place.Place, place.Form))?.ReadyDays ?? 0
                    : 0;
                Forge(place, today, Math.Max(1, days));
                urgent++;
                break;
            }
        }
    }

    private void Enter(DateOnly today, LedgerEntry what)
    {
        Step step = shop.After(new Entered(shop.NextNumber, DateTimeOffset.UnixEpoch, today, what));
        shop = step.After ?? throw new InvalidOperationException($"{what}: {step.Refusal}");
    }
}
