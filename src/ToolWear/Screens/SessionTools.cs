using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;

namespace ToolWear.Screens;

/// <summary>Which tools worked in a session.</summary>
internal static class SessionTools
{
    public static IEnumerable<string> Marks(Shop shop, string session) =>
        shop
            .Tools.Values.Where(tool => tool.Events.Exists(each => each.What is HeatsWorked h && h.Session == session))
            .Select(tool => tool.Mark.Text);
}
