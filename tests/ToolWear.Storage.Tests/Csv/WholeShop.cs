using ToolWear.Core.Eyes;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Sections;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;

namespace ToolWear.Storage.Tests.Csv;

/// <summary>A shop by hand that has everything the CSV set carries, the awkward orders of entry above all.</summary>
internal static class WholeShop
{
    public const string AwkwardNote = "=1+1, \"so\" he said\r\nthe würzburg drift \u2013 '";

    public static ShopInHand Make()
    {
        ShopInHand shop = new();
        DescribeEyes(shop);
        DescribeSeries(shop);
        DescribePlans(shop);
        AddTools(shop);
        WorkInMay(shop);
        LayAside(shop);
        ChangeMarks(shop);
        return shop;
    }

    private static void DescribeEyes(ShopInHand shop)
    {
        shop.Enter(new SettingChanged("hands", "Jo, Maria"));
        shop.Enter(new SettingChanged("lubricant", "-graphite"));
        shop.Enter(new SettingChanged("units", "in"));
        shop.Enter(
            new EyeDescribed(
                "H",
                SectionKind.Teardrop,
                ShopInHand.Mm(36.5m),
                ShopInHand.Mm(17.5m),
                ShopInHand.Mm(3.2m),
                ShopInHand.Mm(40),
                0.03,
                1e-5,
                Fit.Wedged,
                Driving.BothFaces,
                ShopInHand.Mm(35.7m),
                ShopInHand.Mm(36.9m),
                null,
                ShopInHand.Mm(0.396875m + 17.5m),
                "ash"
            )
        );
        shop.Enter(
            new HandleDescribed("ash", ShopInHand.Mm(38), ShopInHand.Mm(18), 0.04, ShopInHand.Mm(12), AwkwardNote)
        );
    }

    private static void DescribeSeries(ShopInHand shop)
    {
        shop.Enter(
            new SeriesDescribed(
                new(
                    "H",
                    Place.None,
                    ShopInHand.Form("slot punch"),
                    SectionKind.Other,
                    null,
                    null,
                    null,
                    null,
                    null,
                    200,
                    "H13",
                    true,
                    7,
                    null
                )
            )
        );
        shop.Enter(
            new SeriesDescribed(
                new(
                    "H",
                    Place.Rough,
                    ShopInHand.Form("drift"),
                    SectionKind.Teardrop,
                    ShopInHand.Mm(34.5m),
                    ShopInHand.Mm(14),
                    ShopInHand.Mm(2.6m),
                    0.03,
                    0.03,
                    null,
                    null,
                    false,
                    0,
                    "+plain"
                )
            )
        );
    }

    private static void DescribePlans(ShopInHand shop)
    {
        shop.Enter(
            new PatternDescribed(
                "hatchet",
                [
                    new("slit", "H", ShopInHand.Form("slitter"), Place.None, Core.Tools.Work.Slitting, 2, null),
                    new("rough", "H", ShopInHand.Form("drift"), Place.Rough, Core.Tools.Work.Cheeks, 3.5, 1.25),
                    new("clean", null, null, Place.None, null, null, null),
                ]
            )
        );
        shop.Enter(
            new BarDescribed("B1", "4140", SectionKind.Round, ShopInHand.Mm(32), null, ShopInHand.Mm(1800), "@7", 5.50m)
        );
        shop.Enter(new OrderDescribed("O1", "hatchet", 18, ShopInHand.Day("2027-01-31"), OrderState.Open));
    }

    private static void AddTools(ShopInHand shop)
    {
        shop.Enter(
            new ToolAdded(
                ShopInHand.Drift("H1") with
                {
                    MadeOn = ShopInHand.Day("2026-01-02"),
                    GuessHeats = 27.5,
                    Cost = new(2.50m, 0.7m, 0.2m, 0),
                    Peg = "3, left",
                    Note = AwkwardNote,
                    Stations =
                    [
                        new(BodyPart.Nose, Length.Zero, ShopInHand.Section(SectionKind.Round, 9, 9, 0)),
                        new(
                            BodyPart.FullSize,
                            ShopInHand.Mm(40),
                            ShopInHand.Section(SectionKind.Teardrop, 34.5m, 14.000001m, 2.6m)
                        ),
                        new(BodyPart.Shank, ShopInHand.Mm(80), ShopInHand.Section(SectionKind.Rectangle, 20, 20, 0)),
                        new(BodyPart.StruckEnd, ShopInHand.Mm(120), ShopInHand.Section(SectionKind.Oval, 22, 18, 0)),
                    ],
                }
            )
        );
        shop.Enter(new ToolAdded(ShopInHand.Drift("'H2")));
        shop.Enter(
            new ToolAdded(
                ShopInHand.Drift("Ä3") with
                {
                    Start = new(StartedAs.InUse, Heats.OfHalves(2501), HeatsBeforeHow.Estimated),
                }
            )
        );
        shop.Enter(
            new ToolAdded(ShopInHand.Drift("H4") with { Start = ToolStart.Unknown, Steel = null, Section = null })
        );
        shop.Enter(new ToolAdded(ShopInHand.Drift("H5") with { GaugeMarks = [] }));
    }

    private static void WorkInMay(ShopInHand shop)
    {
        shop.Open("2026-05-01", "2026-05-01", "hatchet");
        shop.Work("2026-05-01", "H1", 6);
        shop.Work("2026-05-01", "'H2", 5);
        shop.Work("2026-05-01", "H1", 3);
        shop.Rework("H1", "2026-05-01");
        shop.Work("2026-05-01", "H1", 2);
        shop.Enter(
            new HeatsWorked(
                "2026-05-01",
                ShopInHand.Mark("H1"),
                Core.Tools.Work.Opening,
                Heats.Of(1),
                HeatsHow.Estimated
            )
        );
        shop.Close("2026-05-01", 6);
        shop.Measure("H1", "2026-05-02", 13.55m, "2026-05-01", AwkwardNote);
        long wrong = shop.Enter(
            new HeatsWorked(
                "2026-05-01",
                ShopInHand.Mark("'H2"),
                Core.Tools.Work.Cheeks,
                Heats.Of(100),
                HeatsHow.Counted
            )
        );
        shop.Rework("'H2", "2026-05-03", Rework.Dressed);
        shop.Enter(
            new SessionOpened(
                "2026-05-03",
                ShopInHand.Day("2026-05-03"),
                "hatchet",
                new("oil, soap", Cooling.DipWhenBlack, 12),
                "Jo",
                "wet"
            )
        );
        shop.Work("2026-05-03", "'H2", 3);
        shop.Close("2026-05-03");
        shop.Enter(new EntryCrossedOut(wrong, "meant ten"));
        shop.Work("2026-05-01", "Ä3", 7);
    }

    private static void LayAside(ShopInHand shop)
    {
        shop.Enter(new ToolSetAside(ShopInHand.Mark("Ä3"), ShopInHand.Day("2026-05-04"), "loaned"));
        shop.Enter(new ToolBroughtBack(ShopInHand.Mark("Ä3"), ShopInHand.Day("2026-05-06"), null));
        shop.Enter(new ToolLent(ShopInHand.Mark("Ä3"), ShopInHand.Day("2026-05-06"), "=a smith", "=for a day"));
        shop.Enter(new ToolTakenBack(ShopInHand.Mark("Ä3"), ShopInHand.Day("2026-05-06"), "-with rust"));
        shop.Enter(new ToolLookedFor(ShopInHand.Mark("Ä3"), ShopInHand.Day("2026-05-06"), Seen: false, "@hand"));
        shop.Open("2026-05-06", "2026-05-06");
        shop.Work("2026-05-06", "Ä3", 4);
        shop.Close("2026-05-06");
        shop.Enter(
            new ToolLookedOver(ShopInHand.Mark("Ä3"), ShopInHand.Day("2026-05-06"), Finding.Sound, "Maria", "-")
        );
        shop.Enter(
            new EyeMeasured(
                "H",
                ShopInHand.Day("2026-05-07"),
                "2026-05-06",
                ShopInHand.Mark("Ä3"),
                EyeWhere.Waist,
                ShopInHand.Mm(36.4m),
                null,
                HandleFits.Tight
            )
        );
    }

    private static void ChangeMarks(ShopInHand shop)
    {
        shop.Enter(new ToolRemarked(ShopInHand.Mark("'H2"), ShopInHand.Mark("H2")));
        shop.Enter(
            new ToolScrapped(
                ShopInHand.Mark("H1"),
                ShopInHand.Day("2026-05-10"),
                ScrapCause.MadeInto,
                ShopInHand.Mark("H5"),
                "ground"
            )
        );
        shop.Enter(new ToolAdded(ShopInHand.Drift("H1")));
        shop.Open("2026-05-12", "2026-05-12");
        shop.Work("2026-05-12", "H1", 8);
        shop.Enter(
            new EyeMeasured(
                "H",
                ShopInHand.Day("2026-05-12"),
                null,
                ShopInHand.Mark("H1"),
                null,
                null,
                ShopInHand.Mm(17),
                null
            )
        );
        shop.Close("2026-05-12");
        shop.Enter(
            new ToolScrapped(ShopInHand.Mark("H1"), ShopInHand.Day("2026-05-12"), ScrapCause.Cracked, null, null)
        );
        shop.Enter(new ToolAdded(ShopInHand.Drift("H1")));
        shop.Enter(new ToolStartedHere(ShopInHand.Mark("H2"), "the scale is off"));
        shop.Measure("H2", "2026-06-30", 13.1m);
        shop.Open("late", "2026-04-01");
        shop.Work("late", "H4", 40);
    }
}
