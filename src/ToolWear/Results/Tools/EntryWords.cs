using ToolWear.Core.Deeds;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Tools;
using ToolWear.Wording;

namespace ToolWear.Results.Tools;

/// <summary>An entry of the ledger in a smith's words.</summary>
internal static class EntryWords
{
    /// <summary>Says an entry.</summary>
    /// <param name="what">The entry.</param>
    /// <param name="units">The unit for sizes.</param>
    /// <returns>One line without a full stop.</returns>
    public static string Of(LedgerEntry what, LengthUnit units) =>
        what switch
        {
            ToolAdded e => $"{e.Tool.Mark} added, {e.Tool.Form}",
            ToolCorrected e =>
                $"{e.Tool.Mark} corrected, {(Correcting.Changes(e, units).ToArray() is { Length: > 0 } changed ? string.Join("; ", changed) : e.Tool.Form)}{Because(e.Why)}",
            ToolRemarked e => $"{e.From} marked {e.To} from now on",
            ToolStartedHere e => $"{e.Tool} starts here",
            ToolSetAside e => $"{e.On:yyyy-MM-dd}  set aside{Because(e.Why)}",
            ToolBroughtBack e => $"{e.On:yyyy-MM-dd}  brought back{Because(e.Why)}",
            ToolLent e => $"{e.On:yyyy-MM-dd}  lent to {e.To}{Because(e.Note)}",
            ToolTakenBack e => $"{e.On:yyyy-MM-dd}  back from a loan{Because(e.Note)}",
            ToolLookedFor e => $"{e.On:yyyy-MM-dd}  stock-take: {(e.Seen ? "seen" : "not seen")}{By(e.By)}",
            ToolScrapped e => $"{e.On:yyyy-MM-dd}  scrapped, {ToolScrapped.CauseWords.Word(e.Cause)}{At(e.Part)}"
                + (e.Into is { } into ? $" {into}" : "")
                + (e.LedTo is { } led ? $"; {FindingWords.LedTo(led)}" : "")
                + Because(e.Note),
            SessionOpened e => $"session {e.Session} opened",
            SessionClosed e => $"session {e.Session} closed",
            HeatsWorked e =>
                $"{e.Session}  {Words.HeatsOf(e.Heats)} {Works.Words.Word(e.Work)}{(e.How == HeatsHow.Estimated ? ", estimated" : "")}",
            HeadsDone e => $"{e.Session}  {Words.HeadsAt(e.Stage, e.Heads)}",
            ToolMeasured e => $"{e.On:yyyy-MM-dd}  {e.Gauge} read {Size(e.Size, units)}{By(e.By)}{Because(e.Note)}",
            ToolReworked e =>
                $"{e.On:yyyy-MM-dd}  {ToolReworked.WhatWords.Word(e.What)}{Sizes(e, units)}{Because(e.Note)}",
            ToolLookedOver e =>
                $"{e.On:yyyy-MM-dd}  found {ToolLookedOver.FindingWords.Word(e.Finding)}{At(e.Part)}{By(e.By)}{Because(e.Note)}",
            EyeMeasured e => $"{e.On:yyyy-MM-dd}  eye {e.Eye} measured",
            EyeDescribed e => $"eye {e.Name} saved",
            HandleDescribed e => $"handle {e.Name} saved",
            SeriesDescribed e => $"series for eye {e.Series.Eye}, {Places.Words.Word(e.Series.Place)} {e.Series.Form}",
            PatternDescribed e => $"pattern {e.Pattern} saved",
            BarDescribed e => $"bar {e.Bar} saved",
            OrderDescribed e =>
                $"order {e.Order}: {e.Heads} {e.Pattern} by {e.DueOn:yyyy-MM-dd}, {OrderDescribed.StateWords.Word(e.State)}",
            SettingChanged e => $"{e.Setting} set to {(e.Value.Length == 0 ? "the usual" : e.Value)}",
            EntryCrossedOut e => $"entry {e.Entry} crossed out{Because(e.Why)}",
            EntryCountsAgain e => $"entry {e.Entry} counts again{Because(e.Why)}",
            _ => throw new InvalidOperationException($"No words for {what.GetType().Name}."),
        };

    /// <summary>Says where a tally says less than the heads done.</summary>
    /// <param name="tally">The tally.</param>
    /// <returns>One sentence.</returns>
    public static string FallsShort(ShortTally tally) =>
        tally.Missing.IsEmpty
            ? $"{tally.Stage}: {Words.CountOf(tally.Heads, "head")}, and no tool for it was chosen."
            : $"{tally.Stage}: {Words.CountOf(tally.Heads, "head")} and {Words.HeatsOf(tally.Tallied)} tallied; the pattern says about {Words.About(tally.Says)}.";

    private static string Sizes(ToolReworked e, LengthUnit units) =>
        e.Gauge is null
            ? ""
            : $", {e.Gauge}"
                + (e.Before is { } before ? $" from {Size(before, units)}" : "")
                + (e.After is { } after ? $" to {Size(after, units)}" : "");

    private static string Size(Length size, LengthUnit units) =>
        $"{SizeShown.Caliper(size, units)} {SizeShown.Mark(units)}";

    private static string At(ToolPart? part) =>
        part is { } known ? $" at the {ToolLookedOver.PartWords.Word(known)}" : "";

    private static string By(string? who) => who is null ? "" : $" by {who}";

    private static string Because(string? note) => note is null ? "" : $": {note.ReplaceLineEndings(" ")}";
}
