using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using static ToolWear.DemoMaker.Written;

namespace ToolWear.DemoMaker;

/// <summary>The half year of the invented shop, from the first entry to the morning after the last session.</summary>
internal static class HalfYear
{
    /// <summary>Lives through it.</summary>
    /// <returns>The shop at its end; the same in every run.</returns>
    public static Shop Live()
    {
        Diary diary = new();
        foreach (LedgerEntry entry in FirstEvening)
        {
            diary.Write(Begin, entry);
        }

        Queue<Tool> toCome = new(Drifts.All.Concat(StruckTools.All).OrderBy(tool => tool.MadeOn ?? DateOnly.MinValue));
        EnterMade(diary, toCome, Begin);
        ReadWhatWasInUse(diary);
        foreach (DaysWork session in SessionPlan.All)
        {
            EnterMade(diary, toCome, session.On);
            Forge(diary, session);
            MorningAfter.Go(diary, session);
        }

        foreach (LedgerEntry order in PatternsAndOrders.Orders)
        {
            diary.Write(SessionPlan.All[^1].On.AddDays(1), order);
        }

        return diary.Shop;
    }

    private static IEnumerable<LedgerEntry> FirstEvening =>
        [
            .. ShopWays.Settings,
            .. EyesAndSeries.Eyes,
            .. EyesAndSeries.Handles,
            .. EyesAndSeries.Series,
            .. PatternsAndOrders.Patterns,
            .. Bars.InRack,
        ];

    /// <summary>Enters the tools that were made up to a day, each on the day it was made or on the first evening.</summary>
    private static void EnterMade(Diary diary, Queue<Tool> toCome, DateOnly through)
    {
        while (toCome.TryPeek(out Tool? tool) && (tool.MadeOn ?? Begin) <= through)
        {
            DateOnly made = tool.MadeOn ?? Begin;
            diary.Write(made > Begin ? made : Begin, new ToolAdded(toCome.Dequeue()));
        }
    }

    /// <summary>The size now of each tool in use is its first reading.</summary>
    private static void ReadWhatWasInUse(Diary diary)
    {
        foreach (Tool tool in Drifts.All.Concat(StruckTools.All).Where(tool => tool.Start.As == StartedAs.InUse))
        {
            foreach (GaugeMark gauge in tool.GaugeMarks)
            {
                diary.Measure(Begin, tool.Mark.Text, gauge.Name, null, ShopWays.Orla);
            }
        }
    }

    private static void Forge(Diary diary, DaysWork session)
    {
        diary.Write(
            session.On,
            new SessionOpened(session.Name, session.On, session.Pattern, session.Care, session.Hand, session.Note)
        );
        foreach (Share share in session.Shares)
        {
            if (share.BentBefore)
            {
                diary.LookOver(session.On, share.Tool, Finding.Bent, session.Hand, "seen between two heats");
                diary.Rework(session.On, share.Tool, Rework.Straightened, 0.2m, "in the fire, between two heads");
            }

            diary.Work(session, share);
        }

        diary.Write(session.On, new SessionClosed(session.Name, session.Heads));
    }
}
