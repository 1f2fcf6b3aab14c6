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
            ToolAdded e => ToolArms.Add(this, entered, e),
            ToolCorrected e => ToolArms.Correct(this, entered, e),
            ToolRemarked e => ToolArms.Remark(this, e),
            ToolStartedHere e => ToolArms.StartHere(this, entered, e),
            ToolSetAside e => ToolArms.SetAside(this, entered, e),
            ToolBroughtBack e => ToolArms.BringBack(this, entered, e),
            ToolLent e => ToolArms.Lend(this, entered, e),
            ToolTakenBack e => ToolArms.TakeBack(this, entered, e),
            ToolLookedFor e => ToolArms.LookFor(this, entered, e),
            ToolScrapped e => ToolArms.Scrap(this, entered, e),
            SessionOpened e => SessionArms.Open(this, entered, e),
            SessionClosed e => SessionArms.Close(this, e),
            HeatsWorked e => SessionArms.Work(this, entered, e),
            HeadsDone e => SessionArms.Count(this, e),
            ToolMeasured e => SessionArms.Measure(this, entered, e),
            ToolReworked e => SessionArms.Rework(this, entered, e),
            ToolLookedOver e => SessionArms.LookOver(this, entered, e),
            EyeMeasured e => SessionArms.MeasureEye(this, entered, e),
            EyeDescribed e => DescriptionArms.Describe(this, e),
            HandleDescribed e => DescriptionArms.Describe(this, e),
            SeriesDescribed e => DescriptionArms.Describe(this, e),
            PatternDescribed e => DescriptionArms.Describe(this, e),
            BarDescribed e => DescriptionArms.Describe(this, e),
            OrderDescribed e => DescriptionArms.Describe(this, e),
            SettingChanged e => DescriptionArms.Change(this, e),
            _ => throw new InvalidOperationException($"No arm for {entered.What.GetType().Name}."),
        };
}
