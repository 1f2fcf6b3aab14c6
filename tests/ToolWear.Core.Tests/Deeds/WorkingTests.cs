using ToolWear.Core.Deeds;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Tests.Shops;
using Xunit;

namespace ToolWear.Core.Tests.Deeds;

/// <summary>Which session heats go to, where none is named.</summary>
public sealed class WorkingTests
{
    private readonly Story story = new() { Today = Story.Day(3) };

    public WorkingTests() => story.Add("R1");

    [Fact]
    public void Without_a_session_one_is_opened_with_them()
    {
        Working deed = Work(null);
        Assert.Equal(Story.Opening("2026-05-03", Story.Day(3)), deed.Opens);
        Assert.Equal([deed.Opens!, deed.Heats], deed.Entries);
        Assert.Equal(("2026-05-03", Core.Tools.Work.Cheeks), (deed.Heats.Session, deed.Heats.Work));
    }

    [Fact]
    public void The_open_session_gets_them_whatever_its_day_unless_a_day_is_named()
    {
        story.Open("evening", Story.Day(2));
        Assert.Equal("evening", Work(null).Heats.Session);
        Assert.Equal("evening", Work(Story.Day(2)).Heats.Session);
        Assert.Equal("2026-05-01", Work(Story.Day(1)).Heats.Session);
    }

    [Fact]
    public void The_last_session_of_the_day_gets_them_where_none_is_open()
    {
        foreach (string session in (string[])["one", "two"])
        {
            story.Open(session);
            story.Close(session);
        }

        Working deed = Work(null);
        Assert.Null(deed.Opens);
        Assert.Equal("two", deed.Heats.Session);
    }

    private Working Work(DateOnly? day) =>
        Working.Of(story.Shop, story.Tool("R1"), Heats.Of(2), null, HeatsHow.Counted, null, day, story.Today);
}
