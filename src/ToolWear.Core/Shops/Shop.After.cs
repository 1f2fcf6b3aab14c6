using System.Collections.Immutable;
using ToolWear.Core.Ledger;

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

        if (entered.What is EntryCrossedOut crossing)
        {
            return CrossOut(entered, crossing);
        }

        Step step = Apply(entered);
        return step.After is { } after ? after with { Ledger = Ledger.Add(entered) } : step;
    }

    private Step Apply(Entered entered) =>
        entered.What switch
        {
            ToolAdded e => Add(entered, e),
            ToolRemarked e => Remark(e),
            ToolStartedHere e => StartHere(entered, e),
            ToolSetAside e => SetAside(entered, e),
            ToolBroughtBack e => BringBack(entered, e),
            ToolScrapped e => Scrap(entered, e),
            SessionOpened e => Open(entered, e),
            SessionClosed e => Close(e),
            HeatsWorked e => Work(entered, e),
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

    private Step CrossOut(Entered entered, EntryCrossedOut crossing)
    {
        if (crossing.Entry < 1 || crossing.Entry >= entered.Number)
        {
            return $"there is no entry {crossing.Entry}: the ledger {(Ledger.IsEmpty ? "is empty" : $"holds 1 to {Ledger.Count}")}";
        }

        if (CrossedOut.ContainsKey(crossing.Entry))
        {
            return $"entry {crossing.Entry} is crossed out already";
        }

        if (Ledger[(int)crossing.Entry - 1].What is EntryCrossedOut)
        {
            return $"entry {crossing.Entry} is itself a crossing out: enter again what it crossed out";
        }

        ImmutableArray<long> resting = RestingOn(crossing.Entry);
        if (!resting.IsEmpty)
        {
            string named =
                string.Join(", ", resting.Take(10)) + (resting.Length > 10 ? $" and {resting.Length - 10} more" : "");
            return $"entry {crossing.Entry} cannot be crossed out: {(resting.Length == 1 ? $"entry {named} rests" : $"entries {named} rest")} on it; cross out the last of them first";
        }

        return Fold([.. Ledger, entered]);
    }

    /// <summary>The entries that could not stand if one were missing, directly or because another of them falls.</summary>
    private ImmutableArray<long> RestingOn(long number)
    {
        Shop shop = Empty;
        ImmutableArray<long>.Builder resting = ImmutableArray.CreateBuilder<long>();
        foreach (Entered each in Ledger)
        {
            if (each.Number == number || each.What is EntryCrossedOut || CrossedOut.ContainsKey(each.Number))
            {
                continue;
            }

            Step step = shop.Apply(each);
            if (step.After is { } after)
            {
                shop = after;
            }
            else
            {
                resting.Add(each.Number);
            }
        }

        return resting.ToImmutable();
    }
}
