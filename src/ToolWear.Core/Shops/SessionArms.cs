using System.Collections.Immutable;
using ToolWear.Core.Fields;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Tools;
using static ToolWear.Core.Shops.ToolArms;

namespace ToolWear.Core.Shops;

/// <summary>What follows from entries of sessions, heats, readings, reworks and findings.</summary>
internal static class SessionArms
{
    internal static Step Open(Shop shop, Entered entered, SessionOpened e)
    {
        if (ToolMark.Fault("session", e.Session) is { } fault)
        {
            return fault;
        }

        if (shop.SessionShelf.Has(e.Session))
        {
            return $"there is a session {e.Session} already: each has a name of its own";
        }

        if (shop.OpenSession is { } open)
        {
            return $"session {open.Name} is still open: close it first";
        }

        if (e.On > entered.Day)
        {
            return Future(e.On, entered.Day);
        }

        if (e.Care.Blows is < 1 or > 1000)
        {
            return $"blows {e.Care.Blows}: a number from 1 to 1000";
        }

        Session session = new(e, entered.Number, IsOpen: true, Heads: null);
        return shop with
        {
            SessionShelf = shop.SessionShelf.With(e.Session, session),
            OpenName = e.Session,
            DayShelf = shop.DayShelf.With(
                e.On,
                (shop.DayShelf.TryFind(e.On, out ImmutableList<string>? before) ? before : []).Add(e.Session)
            ),
        };
    }

    internal static Step Close(Shop shop, SessionClosed e)
    {
        if (!shop.SessionShelf.TryFind(e.Session, out Session? session))
        {
            return UnknownSession(e.Session);
        }

        if (!session.IsOpen)
        {
            return $"session {e.Session} is closed already";
        }

        return e.Heads is < 0 or > Shop.MostHeads
            ? $"heads {e.Heads}: a number from 0 to {Shop.MostHeads}"
            : shop with
            {
                SessionShelf = shop.SessionShelf.With(e.Session, session with { IsOpen = false, Heads = e.Heads }),
                OpenName = null,
            };
    }

    internal static Step Count(Shop shop, HeadsDone e)
    {
        if (!shop.SessionShelf.TryFind(e.Session, out Session? session))
        {
            return UnknownSession(e.Session);
        }

        if (session.Opened.Pattern is not { } name || !shop.Patterns.TryGetValue(name, out PatternDescribed? pattern))
        {
            return $"session {e.Session} has no pattern, so it has no stages to count heads at";
        }

        if (!pattern.Stages.Any(stage => stage.Name == e.Stage))
        {
            return $"pattern {name} has no stage {e.Stage}: it has {string.Join(", ", pattern.Stages.Select(stage => stage.Name))}";
        }

        int all = session.HeadsByStage.GetValueOrDefault(e.Stage);
        if (e.Heads is < 1 or > Shop.MostHeads || all + e.Heads > Shop.MostHeads)
        {
            return $"heads {e.Heads}: a number from 1 to {Shop.MostHeads}, and no more than that at one stage";
        }

        Session counted = session with { HeadsByStage = session.HeadsByStage.SetItem(e.Stage, all + e.Heads) };
        return shop with { SessionShelf = shop.SessionShelf.With(e.Session, counted) };
    }

    internal static Step Work(Shop shop, Entered entered, HeatsWorked e)
    {
        if (!shop.SessionShelf.TryFind(e.Session, out Session? session))
        {
            return UnknownSession(e.Session);
        }

        if (e.Heats < Heats.Half || e.Heats > Heats.MostAtOnce)
        {
            return $"heats {e.Heats}: a number from 0.5 to 1000 in steps of a half";
        }

        if (Refused(shop, entered, e.Tool, session.On, out ToolInShop tool) is { } refusal)
        {
            return refusal;
        }

        // also of a tool that was set aside, lent or scrapped by then: it happened, and is told when it is recorded
        return With(shop, tool.With(entered));
    }

    internal static Step Measure(Shop shop, Entered entered, ToolMeasured e)
    {
        if (Refused(shop, entered, e.Tool, e.On, out ToolInShop tool) is { } refusal)
        {
            return refusal;
        }

        if (tool.Tool.Gauge(e.Gauge) is null)
        {
            return NoGauge(tool.Tool, e.Gauge);
        }

        if (e.Session is { } name && !shop.SessionShelf.Has(name))
        {
            return UnknownSession(name);
        }

        if (e.Session is { } named && e.On < shop.SessionShelf[named].On)
        {
            return $"a reading of {e.On:yyyy-MM-dd} cannot follow session {named} of {shop.SessionShelf[named].On:yyyy-MM-dd}";
        }

        if (
            tool.Events.Exists(each =>
                each.What is ToolStartedHere
                && (e.On < each.Day || shop.PlaceOf(tool, entered) < shop.PlaceOf(tool, each))
            )
        )
        {
            return $"{e.Tool} was started anew after {(e.Session is null ? $"{e.On:yyyy-MM-dd}" : "session " + e.Session)}: an earlier reading no longer counts";
        }

        return IsNoSize(e.Size) || e.Resolution <= Length.Zero
            ? "a size is above zero and at most 10 m"
            : With(shop, tool.With(entered));
    }

    internal static Step Rework(Shop shop, Entered entered, ToolReworked e)
    {
        if (Refused(shop, entered, e.Tool, e.On, out ToolInShop tool) is { } refusal)
        {
            return refusal;
        }

        if (e.Gauge is { } gauge && tool.Tool.Gauge(gauge) is null)
        {
            return NoGauge(tool.Tool, gauge);
        }

        if (e.Gauge is null && (e.Before ?? e.After) is not null)
        {
            return "a size before or after goes with the gauge mark where it was read";
        }

        return IsNoSize(e.Before) || IsNoSize(e.After) || e.Hours < 0 || e.Cost < 0
            ? "sizes are above zero and at most 10 m, hours and costs zero or more"
            : With(shop, tool.With(entered));
    }

    internal static Step LookOver(Shop shop, Entered entered, ToolLookedOver e) =>
        Refused(shop, entered, e.Tool, e.On, out ToolInShop tool) is { } refusal
            ? refusal
            : With(shop, tool.With(entered));

    internal static Step MeasureEye(Shop shop, Entered entered, EyeMeasured e)
    {
        if (e.On > entered.Day)
        {
            return Future(e.On, entered.Day);
        }

        if (e.Session is { } session && !shop.SessionShelf.Has(session))
        {
            return UnknownSession(session);
        }

        ToolInShop? maker = null;
        if (e.Tool is { } tool && !shop.TryFind(tool, out maker))
        {
            return shop.NoTool(tool);
        }

        return (FieldKinds.Size.Fault(e.Length) ?? FieldKinds.Size.Fault(e.Width)) is { } fault
            ? fault
            : shop with
            {
                EyesMeasured = shop.EyesMeasured.Add(entered),
                EyeMakers = maker is null ? shop.EyeMakers : shop.EyeMakers.SetItem(entered.Number, maker.Id),
            };
    }

    private static bool IsNoSize(Length? size) => size <= Length.Zero || size > SizeText.Longest;

    private static string NoGauge(Tool tool, string gauge) =>
        NearNames.Refusal($"gauge mark on {tool.Mark}", gauge, tool.GaugeMarks.Select(each => each.Name));

    private static string UnknownSession(string name) => $"there is no session {name}";
}
