using System.Collections.Immutable;
using ToolWear.Core.Ledger;
using ToolWear.Core.Tools;
using static ToolWear.DemoMaker.Written;

namespace ToolWear.DemoMaker;

/// <summary>The morning after a session: the tools are cold, are read, looked over, dressed or done.</summary>
internal static class MorningAfter
{
    /// <summary>What nobody looked over after the last session it worked in, so that the rack asks for it.</summary>
    private static readonly ImmutableArray<string> NotLookedOver = ["H6", "FL1", "SF1"];

    /// <summary>The jaw of the caliper stood on scale and the reading came out this much too large, mm.</summary>
    private const double JawOnScaleMm = 0.6;

    /// <summary>Goes through the tools of a session.</summary>
    public static void Go(Diary diary, DaysWork session)
    {
        DateOnly day = session.On.AddDays(1);
        ImmutableArray<string> used = [.. session.Shares.Select(share => share.Tool).Distinct(StringComparer.Ordinal)];
        foreach (string mark in used)
        {
            Read(diary, session, day, mark);
        }

        Mishaps.After(diary, session, day);
        foreach (string mark in used.Where(mark => !Mishaps.IsSpoken(session.Name, mark)))
        {
            bool isLast = SessionPlan.All.Last(each => each.Shares.Any(share => share.Tool == mark)) == session;
            if (isLast && NotLookedOver.Contains(mark, StringComparer.Ordinal))
            {
                continue;
            }

            diary.LookOver(day, mark, Finding.Sound, session.Hand);
            DressEdge(diary, day, mark, isLast);
        }

        MeasuredEyes.After(diary, session, day);
    }

    private static void Read(Diary diary, DaysWork session, DateOnly day, string mark)
    {
        TrueTool tool = diary[mark];
        tool.Unread++;
        if (tool.Unread < Every(tool.Tool) || day > ReadUntil(mark))
        {
            return;
        }

        tool.Unread = 0;
        bool hasOverall = tool.Tool.Form.MainWork(tool.Tool.Place) == Work.Slitting;
        foreach (GaugeMark gauge in tool.Tool.GaugeMarks)
        {
            if (gauge.Measures == Measures.Overall && !hasOverall)
            {
                continue;
            }

            bool isSlip = (session.Name, mark, gauge.Name) == ("tomahawks 6", "T2", "width");
            diary.Measure(
                day,
                mark,
                gauge.Name,
                session.Name,
                session.Hand,
                isSlip ? JawOnScaleMm : 0,
                isSlip ? "not brushed, read in a hurry" : null
            );
        }
    }

    /// <summary>Until when a tool was read: two were let slide, so that the rack asks for a reading of them.</summary>
    private static DateOnly ReadUntil(string mark) =>
        mark switch
        {
            "FU2" or "H2ND" => Day(7, 14),
            _ => DateOnly.MaxValue,
        };

    /// <summary>After how many of its sessions a tool is read.</summary>
    private static int Every(Tool tool) =>
        tool.Mark.Text switch
        {
            // close to its limit
            "A2ND" => 1,
            "B1" => 20,
            "D1" => 25,
            _ => tool.Place switch
            {
                Place.Rough or Place.Opener => 1,
                Place.Second or Place.Finish => 2,
                _ => tool.MainWork switch
                {
                    Work.Slitting => 1,
                    Work.Fullering => 2,
                    _ => 4,
                },
            },
        };

    /// <summary>Slitters and punches are dressed every 10 to 16 heats, 1.5 mm each time; not yet after the last.</summary>
    private static void DressEdge(Diary diary, DateOnly day, string mark, bool isLast)
    {
        if (diary[mark].Tool.MainWork == Work.Slitting && !isLast)
        {
            diary.Rework(day, mark, Rework.Dressed, ToolForm.Overall, -1.5, 0.2m);
        }
    }
}
