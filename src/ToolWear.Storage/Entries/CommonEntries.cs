using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Tools;

namespace ToolWear.Storage.Entries;

/// <summary>The three kinds that make up nine tenths of a ledger, read where they stand as they are written.</summary>
/// <remarks>
/// A shortcut and nothing else: where it gives null the reader of JSON is asked, and where it gives an entry that reader
/// would give the same. It reads an entry in a tenth of the time, and a shop of a million is read at every start.
/// </remarks>
internal static class CommonEntries
{
    /// <summary>Reads an entry.</summary>
    /// <param name="body">The entry in UTF-8.</param>
    /// <returns>The entry, or null where it is of another kind, has a note, or stands in any way otherwise than is written.</returns>
    internal static LedgerEntry? TryRead(ReadOnlySpan<byte> body)
    {
        var form = new WrittenForm(body);
        return form.Take("{\"kind\":\"heats-worked\",\"v\":1,\"entry\":{\"session\":\""u8) ? Heats(form)
            : form.Take("{\"kind\":\"tool-measured\",\"v\":1,\"entry\":{\"tool\":\""u8) ? Measured(form)
            : form.Take("{\"kind\":\"tool-looked-over\",\"v\":1,\"entry\":{\"tool\":\""u8) ? LookedOver(form)
            : null;
    }

    private static HeatsWorked? Heats(WrittenForm form) =>
        form.TryText(out string session)
        && form.Take(",\"tool\":\""u8)
        && form.TryMark(out ToolMark tool)
        && form.Take(",\"work\":\""u8)
        && form.TryWord(Works.Words, out Work work)
        && form.Take(",\"heats\":"u8)
        && form.TryHeats(out Heats heats)
        && form.Take(",\"how\":\""u8)
        && form.TryWord(HeatsWorked.HowWords, out HeatsHow how)
        && form.TakeEnd()
            ? new HeatsWorked(session, tool, work, heats, how)
            : null;

    private static ToolMeasured? Measured(WrittenForm form)
    {
        if (
            !form.TryMark(out ToolMark tool)
            || !form.Take(",\"gauge\":\""u8)
            || !form.TryText(out string gauge)
            || !form.Take(",\"on\":\""u8)
            || !form.TryDay(out DateOnly on)
        )
        {
            return null;
        }
        string? session = null;
        Length? resolution = null;
        string? by = null;
        return
            (!form.Take(",\"session\":\""u8) || form.TryText(out session))
            && form.Take(",\"size\":"u8)
            && form.TryLength(out Length size)
            && (!form.Take(",\"resolution\":"u8) || TryLength(ref form, out resolution))
            && (!form.Take(",\"by\":\""u8) || form.TryText(out by))
            && form.TakeEnd()
            ? new ToolMeasured(tool, gauge, on, session, size, resolution, by, Note: null)
            : null;
    }

    private static ToolLookedOver? LookedOver(WrittenForm form)
    {
        string? by = null;
        return
            form.TryMark(out ToolMark tool)
            && form.Take(",\"on\":\""u8)
            && form.TryDay(out DateOnly on)
            && form.Take(",\"finding\":\""u8)
            && form.TryWord(ToolLookedOver.FindingWords, out Finding finding)
            && (!form.Take(",\"by\":\""u8) || form.TryText(out by))
            && form.TakeEnd()
            ? new ToolLookedOver(tool, on, finding, by, Note: null)
            : null;
    }

    private static bool TryLength(ref WrittenForm form, out Length? length)
    {
        bool isRead = form.TryLength(out Length read);
        length = read;
        return isRead;
    }
}
