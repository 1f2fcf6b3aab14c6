using ToolWear.Core.Shops;
using ToolWear.Core.Wear.Verdicts;

namespace ToolWear;

/// <content>What is said of loans.</content>
public static partial class Words
{
    internal const string LoansHeading = "Loans";
    internal const string LendHeading = "A tool is lent out";
    internal const string NoLoans = "No tool is lent out: a lends one.";
    internal const string LoansLegend =
        "A lent tool is on no rack. Back again it is to be looked over: what it worked meanwhile nobody here counted.";
    internal const string AboutLoans =
        "The tools that are lent out, longest first. A lent tool is on no rack and in no plan. When it comes back it is looked over; until a finding is sound its verdict is \"look it over\". What it worked elsewhere was not counted: measure it too.";
    internal const string AskLent = "The tool's mark; the arrows show those in service.";
    internal const string AskLentTo = "Who has it.";
    internal const string AskLentNote = "A note, such as for how long; empty for none.";
    internal const string WhoWanted = "Who has it is wanted.";
    internal const string LookLater = "look it over later";

    internal static string LentNow(string mark, string to) => $"{mark} is lent to {to}.";

    internal static string BackNow(string mark) =>
        $"{mark} is back. Look it over, and measure it: what it worked meanwhile nobody here counted.";

    internal static string FoundOnReturn(string mark) => $"{mark} is back. What was found on it?";

    internal static string AsideOr(ToolInShop tool, Judged verdict) =>
        tool.Lent is not null ? "lent out"
        : tool.State == ToolState.SetAside ? "set aside"
        : verdict.Word;

    internal static string LentSince(string to, DateOnly on) => $"lent to {to} since {on:yyyy-MM-dd}";
}
