using System.Collections.Immutable;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Tools;

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
            return FreeText.NoteFault(crossing.Why) is { } fault ? fault : CrossOut(entered, crossing);
        }

        Step step = Apply(entered);
        return step.After is { } after ? after with { Ledger = Ledger.Add(entered) } : step;
    }

    private Step Apply(Entered entered) =>
        FreeText.Fault(entered.What.Texts, entered.What.Notes) is { } fault ? fault : Arm(entered);

    private Step Arm(Entered entered) =>
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
        if (CrossingFault(crossing.Entry, [.. Ledger], CrossedOut.ContainsKey(crossing.Entry)) is { } fault)
        {
            return fault;
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

    /// <summary>Why an entry cannot be crossed out, whatever rests on it.</summary>
    private static string? CrossingFault(long number, ReadOnlySpan<Entered> before, bool isCrossedOut) =>
        before.IsEmpty ? $"there is no entry {number}: the ledger is empty"
        : number < 1 || number > before.Length ? $"there is no entry {number}: the ledger holds 1 to {before.Length}"
        : isCrossedOut ? $"entry {number} is crossed out already"
        : before[(int)number - 1].What is EntryCrossedOut
            ? $"entry {number} is itself a crossing out: enter again what it crossed out"
        : null;

    /// <summary>
    /// The entries that could not stand, or would speak of another tool, if one were missing: directly or because
    /// another of them falls.
    /// </summary>
    private ImmutableArray<long> RestingOn(long number)
    {
        Shop whole = Empty;
        Shop without = Empty;
        ImmutableArray<long>.Builder resting = ImmutableArray.CreateBuilder<long>();
        foreach (Entered each in Ledger)
        {
            if (each.What is EntryCrossedOut || CrossedOut.ContainsKey(each.Number))
            {
                continue;
            }

            if (each.Number != number)
            {
                Step step = SpeaksOfTheSame(whole, without, each.What) ? without.Apply(each) : default;
                without = step.After ?? without;
                if (step.After is null)
                {
                    resting.Add(each.Number);
                }
            }

            whole = whole.Apply(each).After ?? whole;
        }

        return resting.ToImmutable();
    }

    /// <summary>Whether the marks of an entry mean the same tools in two shops; one that was reused may not.</summary>
    private static bool SpeaksOfTheSame(Shop one, Shop other, LedgerEntry what) =>
        what is ToolAdded || what.Tools.All(mark => one.IdOf(mark) == other.IdOf(mark));

    private long? IdOf(ToolMark mark) => TryFind(mark, out ToolInShop? tool) ? tool.Id : null;
}
