using System.Collections.Immutable;
using ToolWear.Core.Deeds;
using ToolWear.Core.Fields;
using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;

namespace ToolWear.Storage.Csv;

/// <summary>Tries what was read on an empty shop, so that what the shop refuses is told at its row.</summary>
internal sealed class Trial(ShopRead read, DateOnly today)
{
    private readonly ImmutableArray<LedgerEntry>.Builder entries = ImmutableArray.CreateBuilder<LedgerEntry>();
    private Shop shop = Shop.Empty;

    /// <summary>Tries everything in the order in which it is to be entered.</summary>
    /// <returns>The entries that the shop takes.</returns>
    public ImmutableArray<LedgerEntry> Run()
    {
        foreach (EntryRead each in read.Descriptions)
        {
            Try(each);
        }

        foreach (PatternRead each in read.Patterns)
        {
            Try(new(each.Row, "pattern", new PatternDescribed(each.Name, [.. each.Stages])));
        }

        foreach (ToolRead each in read.Tools)
        {
            TryTool(each);
        }

        foreach (EntryRead each in read.Orders)
        {
            Try(each);
        }

        foreach (EventRead each in EventOrder.Of(read))
        {
            if (Try(each.Entry) && each.Then is { } then)
            {
                Try(each.Entry with { What = then });
            }
        }

        foreach (EntryRead each in read.SizesNow)
        {
            Try(each);
        }

        return entries.ToImmutable();
    }

    private void TryTool(ToolRead tool)
    {
        if (tool.IsDoubtful || !Try(new(tool.Row, "tool", new ToolAdded(tool.Made()))))
        {
            read.Doubt("tool", tool.Tool.Mark.ToString());
        }
    }

    private bool Try(EntryRead entry)
    {
        if (read.IsDoubtful(entry.What))
        {
            return false;
        }

        Step step = shop.After(new(shop.NextNumber, DateTimeOffset.UnixEpoch, today, entry.What));
        string? cannot = SizeRule.Of(shop, entry.What).Cannot;
        if (step.After is { } after && cannot is null)
        {
            shop = after;
            entries.Add(entry.What);
            return true;
        }

        FieldFault fault = step.Fault ?? new("size_mm", cannot!);
        bool isAtCell = entry.Row.HasColumn(fault.Field);
        entry.Row.Fault(isAtCell ? fault.Field : entry.Column, isAtCell ? fault.Sentence : fault.ToString());
        DoubtWhatFollows(entry.What);
        return false;
    }

    private void DoubtWhatFollows(LedgerEntry refused)
    {
        switch (refused)
        {
            case SessionOpened e:
                read.Doubt("session", e.Session);
                break;
            case PatternDescribed e:
                read.Doubt("pattern", e.Pattern);
                break;
            case ToolSetAside or ToolBroughtBack or ToolLent or ToolTakenBack or ToolScrapped:
                read.Doubt("tool", refused.Tools[0].Text);
                break;
            default:
                break;
        }
    }
}
