using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;

namespace ToolWear.Core.Shops;

/// <content>The way of an entry: one arm for each thing that can happen.</content>
public sealed partial record Shop
{
    /// <summary>The shop after one entry more, or the reason why it cannot be. Nothing changes here.</summary>
    /// <param name="entered">The entry, its number <see cref="NextNumber"/>.</param>
    /// <returns>The shop after it or the reason.</returns>
    /// <exception cref="ArgumentException">The number is not the next one.</exception>
    public Step After(Entered entered)
    {
        if (entered.Number != NextNumber)
        {
            throw new ArgumentException($"Entry {entered.Number} where {NextNumber} comes next.", nameof(entered));
        }

        if (entered.What is EntryCrossedOut or EntryCountsAgain)
        {
            return TextFault(entered) is { } fault ? fault : Turn(entered);
        }

        Step step = Apply(entered);
        return step.After is { } after ? after with { Ledger = Ledger.Add(entered), recent = Remembered() } : step;
    }

    private Step Apply(Entered entered) => TextFault(entered) is { } fault ? fault : Arm(entered);

    private static string? TextFault(Entered entered) => FreeText.Fault(entered.What.Texts, entered.What.Notes);

    private Step Arm(Entered entered) =>
        entered.What switch
        {
            ToolAdded e => Add(entered, e),
            ToolRemarked e => Remark(e),
            ToolStartedHere e => StartHere(entered, e),
            ToolSetAside e => SetAside(entered, e),
            ToolBroughtBack e => BringBack(entered, e),
            ToolLent e => Lend(entered, e),
            ToolTakenBack e => TakeBack(entered, e),
            ToolLookedFor e => LookFor(entered, e),
            ToolScrapped e => Scrap(entered, e),
            SessionOpened e => Open(entered, e),
            SessionClosed e => Close(e),
            HeatsWorked e => Work(entered, e),
            HeadsDone e => Count(e),
            ToolMeasured e => Measure(entered, e),
            ToolReworked e => Rework(entered, e),
            ToolLookedOver e => LookOver(entered, e),
            EyeMeasured e => MeasureEye(entered, e),
            EyeDescribed e => Describe(e),
            HandleDescribed e => Describe(e),
            SeriesDescribed e => Describe(e),
            PatternDescribed e => Describe(e),
            BarDescribed e => Describe(e),
            OrderDescribed e => Describe(e),
            SettingChanged e => Change(e),
            _ => throw new InvalidOperationException($"No arm for {entered.What.GetType().Name}."),
        };
}
