using ToolWear.Core.Tools;
using ToolWear.Screens.ToolTable;

namespace ToolWear;

/// <content>What is asked where tools are entered.</content>
public static partial class Words
{
    internal const string LimitDoubtful =
        "The scrap size lies more than a quarter of the size away. Enter once more takes it.";

    internal static string ToolEntered(string mark, int rows) => $"{mark} is entered ({rows} so far).";

    internal static string Column(Asked asked) =>
        asked switch
        {
            Asked.Mark => "Mark",
            Asked.Form => "Form",
            Asked.Eye => "Eye",
            Asked.Place => "Place",
            Asked.Steel => "Steel",
            Asked.Start => "New or in use",
            Asked.Before => "Heats before",
            Asked.Size => "Size now",
            _ => "Scrap size",
        };

    internal static string Question(Asked asked) =>
        asked switch
        {
            Asked.Mark => "The mark stamped on the tool, such as R3.",
            Asked.Form =>
                "What it is: the first letters do, or the arrows. drift, slitter, slot punch, punch, fuller, ...",
            Asked.Eye => "The eye it works for, such as H; empty where it serves all.",
            Asked.Place =>
                "Its place in the series: opener, rough, second, finish, none. The first letters do, or the arrows.",
            Asked.Steel => "Its steel, such as 4140; empty where nobody knows.",
            Asked.Start => "New from the fire, or in use already: the arrows change it.",
            Asked.Before =>
                "Heats it worked before these records, roughly; empty where nobody knows, or where it is new.",
            Asked.Size => "The size at its gauge mark now (of a new tool, as made); empty where not measured yet.",
            _ =>
                "The size at which it is done: under it for a drift, over it for a fuller's flat; empty where none is set.",
        };

    /// <summary>Two marks can be mixed up.</summary>
    /// <param name="given">The mark just given.</param>
    /// <param name="other">The one of another tool.</param>
    /// <returns>One line.</returns>
    public static string MarksAlike(ToolMark given, ToolMark other) =>
        $"{given} and {other} differ only in capital letters and are two tools: re-mark one if they could be mixed up";
}
