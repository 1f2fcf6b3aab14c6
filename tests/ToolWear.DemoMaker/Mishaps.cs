using ToolWear.Core.Ledger;
using ToolWear.Core.Tools;
using static ToolWear.DemoMaker.Written;

namespace ToolWear.DemoMaker;

/// <summary>What befell the tools of the invented shop besides ordinary wear.</summary>
internal static class Mishaps
{
    /// <summary>Whether a tool's finding after a session is told here and not as a matter of course.</summary>
    public static bool IsSpoken(string session, string tool) =>
        (session, tool)
            is
                ("hatchets 2", "H1" or "H2")
                or
                ("hatchets 3", "H2")
                or
                ("hatchets 4", "H3")
                or
                ("hatchets 5", "H3" or "HS1")
                or
                ("hatchets 6", "H4" or "H2ND" or "FU1")
                or
                ("hatchets 7", "HF1")
                or
                ("hatchets 10", "HC1")
                or
                ("tomahawks 3", "TF1")
                or
                ("tomahawks 5", "T1")
                or
                ("tomahawks 6", "T3")
                or
                ("tomahawks 7", "TP1")
                or
                ("hammers 2", "X1")
                or
                ("hammers 4", "X1")
                or
                ("hammers 6", "XP1")
                or
                ("adzes 4", "A1");

    /// <summary>Tells what befell the tools of a session.</summary>
    public static void After(Diary diary, DaysWork session, DateOnly day)
    {
        switch (session.Pattern)
        {
            case PatternsAndOrders.Hatchet:
                AfterHatchets(diary, session, day);
                break;
            case PatternsAndOrders.Tomahawk:
                AfterTomahawks(diary, session, day);
                break;
            default:
                AfterOthers(diary, session, day);
                break;
        }
    }

    private static void AfterHatchets(Diary diary, DaysWork session, DateOnly day)
    {
        string by = session.Hand;
        switch (session.Name)
        {
            case "hatchets 2":
                WornOut(diary, day, "H1");
                diary.LookOver(day, "H2", Finding.Bent, by);
                diary.Rework(day, "H2", Rework.Straightened, 0.2m, "bowed by about 1 mm");
                diary.LookOver(day, "H2", Finding.Sound, by);
                break;
            case "hatchets 3":
                WornOut(diary, day, "H2");
                break;
            case "hatchets 4":
                diary.Rework(day, "H3", Rework.Reforged, "width", 0.9, 0.5m, "on its edges", cost: 2);
                diary.Rework(day, "H3", Rework.Reforged, "length", -0.2, null, "same heat: what the width gained");
                diary.LookOver(day, "H3", Finding.Sound, by);
                break;
            case "hatchets 5":
                WornOut(diary, day, "H3");
                Cracked(diary, day, by);
                break;
            case "hatchets 6":
                GroundBack(diary, day, "H4", -3, by);
                GroundBack(diary, day, "H2ND", -2.5, by);
                FullerDressed(diary, day, by);
                break;
            case "hatchets 7":
                diary.LookOver(day, "HF1", Finding.PickedUp, by, "a streak along one cheek");
                diary.Rework(day, "HF1", Rework.Dressed, 0.3m, "stoned off, size not touched");
                diary.LookOver(day, "HF1", Finding.Sound, by);
                break;
            case "hatchets 8":
                diary.Measure(day, "H4", "width", session.Name, ShopWays.Bram, note: "read again by the other hand");
                break;
            case "hatchets 10":
                diary.LookOver(day, "HC1", Finding.Soft, by, "left on a hot bar; a file bites");
                break;
            default:
                break;
        }
    }

    private static void AfterTomahawks(Diary diary, DaysWork session, DateOnly day)
    {
        string by = session.Hand;
        switch (session.Name)
        {
            case "tomahawks 3":
                GroundBack(diary, day, "TF1", -2.5, by);
                break;
            case "tomahawks 5":
                WornOut(diary, day, "T1");
                break;
            case "tomahawks 6":
                diary.LookOver(day, "T3", Finding.HeatChecked, by, "fine net near the nose");
                break;
            case "tomahawks 7":
                diary.LookOver(day, "TP1", Finding.Mushroomed, by);
                break;
            default:
                break;
        }
    }

    private static void AfterOthers(Diary diary, DaysWork session, DateOnly day)
    {
        string by = session.Hand;
        switch (session.Name)
        {
            case "hammers 2":
                diary.LookOver(session.On, "X1", Finding.Stuck, by, "pressed out cold, head not put back in the fire");
                diary.LookOver(day, "X1", Finding.Sound, ShopWays.Orla);
                break;
            case "hammers 4":
                diary.LookOver(day, "X1", Finding.Sound, by);
                diary.Write(
                    day,
                    new ToolSetAside(Mark("X1"), day, "worn to its limit; may be ground into something smaller")
                );
                break;
            case "hammers 6":
                diary.LookOver(day, "XP1", Finding.Chipped, by, "one corner");
                diary.Rework(day, "XP1", Rework.Dressed, ToolForm.Overall, -3, 0.4m, "chip ground out");
                diary.LookOver(day, "XP1", Finding.Sound, by);
                break;
            case "adzes 4":
                WornOut(diary, day, "A1");
                break;
            default:
                break;
        }
    }

    private static void WornOut(Diary diary, DateOnly day, string tool) =>
        diary.Scrap(day, tool, ScrapCause.Worn, "too thin to spread the cheeks");

    /// <summary>The first slitter was dipped at red in the session before: air-hardening steel takes that ill.</summary>
    private static void Cracked(Diary diary, DateOnly day, string by)
    {
        const string how = "across the blade, after the dip in water at red";
        diary.LookOver(day, "HS1", Finding.Cracked, by, how, ToolPart.WorkingEnd);
        diary.Scrap(day, "HS1", ScrapCause.Cracked, "dipped in water at red", ToolPart.WorkingEnd, LedTo.Water);
    }

    private static void GroundBack(Diary diary, DateOnly day, string tool, double byMm, string by)
    {
        diary.LookOver(day, tool, Finding.Mushroomed, by);
        diary.Rework(day, tool, Rework.Dressed, ToolForm.Overall, byMm, 0.2m, "struck end ground back and chamfered");
        diary.LookOver(day, tool, Finding.Sound, by);
    }

    /// <summary>The flat is dressed away at 3.0: half a millimetre off the nose.</summary>
    private static void FullerDressed(Diary diary, DateOnly day, string by)
    {
        double over = diary["FU1"].Size("flat") - 1.0;
        diary.Rework(day, "FU1", Rework.Dressed, "flat", -over, 0.5m, "nose ground round again");
        diary.Rework(day, "FU1", Rework.Dressed, ToolForm.Overall, -0.5, null, "what the nose lost");
        diary.LookOver(day, "FU1", Finding.Sound, by);
    }
}
