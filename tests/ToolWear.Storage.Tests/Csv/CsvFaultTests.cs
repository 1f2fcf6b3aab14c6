using System.Text;
using ToolWear.Storage.Csv;
using Xunit;

namespace ToolWear.Storage.Tests.Csv;

public sealed class CsvFaultTests
{
    private static readonly DateOnly Today = ShopInHand.Day("2026-06-30");

    private const string Tools = "tool,form,made_on\r\nR1,drift,2026-01-02\r\nR2,drift,\r\n";
    private const string Gauges = "tool,gauge,wears\r\nR1,width,smaller\r\n";
    private const string Sessions = "session,on\r\ns1,2026-05-01\r\n";

    [Theory]
    [InlineData("", "tools.csv:1: the file is empty; begin it with a header row")]
    [InlineData("\uFEFF \r\n", "tools.csv:1: the file is empty; begin it with a header row")]
    [InlineData(
        "tool,form\r\nR1,dr\0ift\r\n",
        "tools.csv:2: holds a NUL byte, so this is no text file; save the table as CSV in UTF-8"
    )]
    [InlineData("tool;form\r\nR1;drift\r\n", "tools.csv:1: the columns are not parted by commas; part them by commas")]
    [InlineData("tool,place\r\nR1,rough\r\n", "tools.csv:1: form: the column is missing and cannot be left out")]
    [InlineData("tool,form,tool\r\nR1,drift,R1\r\n", "tools.csv:1: tool: the column stands here twice; once is right")]
    [InlineData(
        "tool,form\r\nR1,drift,rough\r\n",
        "tools.csv:2: 3 cells where the header has 2 columns; write one cell for each column"
    )]
    [InlineData(
        "tool,form\r\nR\"1,drift\r\n",
        "tools.csv:2: a quote inside a cell that is not quoted; quote the whole cell and double the quotes in it"
    )]
    [InlineData(
        "tool,form\r\n\"R1\"x,drift\r\n",
        "tools.csv:2: text after the closing quote of a cell; double the quotes inside it"
    )]
    [InlineData(
        "tool,form\r\n\r\nR1,\"drift\r\nR2,drift\r\n",
        "tools.csv:3: a quoted cell that begins in this row is never closed"
    )]
    [InlineData(
        "tool,form\r\nR1,drift\r\nR1,drift\r\n",
        "tools.csv:3: tool: R1 stands in tools.csv:2 already; once is right"
    )]
    [InlineData("tool,form\r\n,drift\r\n", "tools.csv:2: tool: the cell is empty and cannot be left out")]
    [InlineData(
        "tool,form,made_on\r\nR1,drift,2026-02-30\r\n",
        "tools.csv:2: made_on: \"2026-02-30\" is no day; write one that there is like 2026-05-01"
    )]
    [InlineData(
        "tool,form,made_on\r\nR1,drift,2026-07-01\r\n",
        "tools.csv:2: made_on: 2026-07-01 lies in the future; today is 2026-06-30"
    )]
    [InlineData(
        "tool,form,steel\r\nR1,drift,a\u001Bb\r\n",
        "tools.csv:2: steel: holds the control character or line end U+001B; take it out"
    )]
    [InlineData(
        "tool,form,heats_before,heats_before_how\r\nR1,drift,12,\r\n",
        "tools.csv:2: heats_before: heats_before and heats_before_how go together: a number with counted or estimated, or none with unknown"
    )]
    [InlineData(
        "tool,form,steel_cost\r\nR1,drift,\"1,200\"\r\n",
        "tools.csv:2: steel_cost: \"1,200\" is no amount; write a bare number from 0 with a point, such as 1.5"
    )]
    [InlineData(
        "tool,form,place\r\nR1,drift,first\r\n",
        "tools.csv:2: place: \"first\" is not known here. There are opener, rough, second, finish, none."
    )]
    public void A_bad_table_of_tools_is_refused_in_one_sentence(string text, string fault) =>
        Assert.Equal(fault, Faults(("tools.csv", text)));

    [Theory]
    [InlineData("loans.csv", "tool,on,what,who\r\nR1,2026-04-01,out,\r\n", "loans.csv:2: tool: R1: say who has it")]
    [InlineData(
        "loans.csv",
        "tool,on,what,who\r\nR1,2026-04-01,back,Ada\r\n",
        "loans.csv:2: who: who has it stands in the row \"out\"; empty is right here"
    )]
    [InlineData("loans.csv", "tool,on,what\r\nR1,2026-04-01,back\r\n", "loans.csv:2: tool: R1 is not lent out")]
    [InlineData(
        "stock-takes.csv",
        "tool,on,seen\r\nR1,2026-04-01,\r\n",
        "stock-takes.csv:2: seen: the cell is empty and cannot be left out"
    )]
    [InlineData(
        "stock-takes.csv",
        "tool,on,seen\r\nR2,2026-04-01,yes\r\n",
        "stock-takes.csv:2: tool: no tool is marked R2; tools.csv names every tool"
    )]
    public void Bad_loans_and_stock_takes_are_refused_in_one_sentence(string file, string text, string fault) =>
        Assert.Equal(fault, Faults(("tools.csv", "tool,form\r\nR1,drift\r\n"), (file, text)));

    [Fact]
    public void An_unknown_column_is_named_with_those_there_are() =>
        Assert.Equal(
            "orders.csv:1: heds: unknown column; there are order, pattern, heads, due_on, state\n"
                + "orders.csv:1: heads: the column is missing and cannot be left out",
            Faults(("orders.csv", "order,pattern,heds,due_on\r\n"))
        );

    [Fact]
    public void Bytes_that_are_not_UTF_8_are_refused_with_their_line()
    {
        CsvFile latin1 = new("tools.csv", Encoding.Latin1.GetBytes("tool,form\r\nR1,drift\r\nÄ2,drift\r\n"));
        Assert.Equal(
            "tools.csv:3: byte 0xC4 is not UTF-8; save the table as CSV in UTF-8",
            RoundTrip.FaultsOf(CsvSet.Import([latin1], Today))
        );
    }

    [Fact]
    public void A_row_over_64_KiB_is_refused_and_the_next_is_read()
    {
        string text = $"tool,form,note\r\nR1,drift,\"{new string('x', 66_000)}\"\r\nR2,drif,\r\n";
        Assert.StartsWith(
            "tools.csv:2: a row of 66011 bytes; at most 65536 belong to one row\ntools.csv:3: form: \"drif\" is not known here. Did you mean drift?",
            Faults(("tools.csv", text)),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_note_may_have_2000_characters_and_no_more()
    {
        Assert.Equal("", Faults(("tools.csv", $"tool,form,note\r\nR1,drift,{new string('x', 2000)}\r\n")));
        Assert.Equal(
            "tools.csv:2: note: a text of 2001 characters; at most 2000",
            Faults(("tools.csv", $"tool,form,note\r\nR1,drift,{new string('x', 2001)}\r\n"))
        );
    }

    [Theory]
    [InlineData("R9,width,2026-05-01,s1,13.5", "tool: no tool is marked R9; tools.csv names every tool")]
    [InlineData("R1,widht,2026-05-01,s1,13.5", "gauge: R1 has no gauge mark widht; it has width, overall")]
    [InlineData("R1,width,2026-05-01,s9,13.5", "session: there is no session s9; sessions.csv names every session")]
    [InlineData(
        "R1,width,2026-05-01,,\"1,013.5\"",
        "size_mm: \"1,013.5\" is no size in mm: a bare number with a point, such as 36.5"
    )]
    [InlineData("R1,width,2026-05-01,,", "size_mm: the cell is empty and cannot be left out")]
    [InlineData(
        "R1,width,2026-01-01,,13.5",
        "tool: R1 was made on 2026-01-02: nothing can have happened to it on 2026-01-01"
    )]
    [InlineData("R1,width,2026-04-30,s1,13.5", "tool: a reading of 2026-04-30 cannot follow session s1 of 2026-05-01")]
    public void A_bad_reading_is_told_at_its_cell(string row, string fault) =>
        Assert.Equal(
            "readings.csv:2: " + fault,
            Faults(
                ("tools.csv", Tools),
                ("gauge-marks.csv", Gauges),
                ("sessions.csv", Sessions),
                ("readings.csv", "tool,gauge,on,session,size_mm\r\n" + row + "\r\n")
            )
        );

    [Fact]
    public void A_faulty_tool_or_session_is_told_once_and_not_at_every_row_that_names_it() =>
        Assert.Equal(
            "tools.csv:2: made_on: \"soon\" is no day; write one that there is like 2026-05-01\n"
                + "sessions.csv:2: on: \"2026-13-01\" is no day; write one that there is like 2026-05-01",
            Faults(
                ("tools.csv", "tool,form,made_on\r\nR1,drift,soon\r\nR2,drift,\r\n"),
                ("gauge-marks.csv", Gauges),
                ("sessions.csv", "session,on\r\ns1,2026-13-01\r\n"),
                ("heats.csv", "session,tool,work,heats\r\ns1,R1,cheeks,3\r\ns1,R2,cheeks,3\r\n"),
                ("readings.csv", "tool,gauge,on,session,size_mm\r\nR1,nose,2026-05-01,s1,13.5\r\n")
            )
        );

    [Fact]
    public void Where_the_tools_cannot_be_read_nothing_is_said_of_rows_that_name_them() =>
        Assert.Equal(
            "tools.csv:1: form: the column is missing and cannot be left out",
            Faults(
                ("tools.csv", "tool\r\nR1\r\n"),
                ("sessions.csv", Sessions),
                ("heats.csv", "session,tool,work,heats\r\ns1,R1,cheeks,3\r\n")
            )
        );

    [Fact]
    public void Ranks_are_filled_in_everywhere_or_nowhere_and_each_is_used_once()
    {
        Assert.Equal(
            "sessions.csv:2: entry: empty here, but filled in heats.csv:2; fill it in every row of every file or in none",
            Faults(
                ("tools.csv", Tools),
                ("sessions.csv", Sessions),
                ("heats.csv", "entry,session,tool,work,heats\r\n2,s1,R1,cheeks,3\r\n")
            )
        );
        Assert.Equal(
            "heats.csv:3: entry: 2 stands in heats.csv:2 already; each row has a number of its own",
            Faults(
                ("tools.csv", Tools),
                ("sessions.csv", "entry,session,on\r\n1,s1,2026-05-01\r\n"),
                ("heats.csv", "entry,session,tool,work,heats\r\n2,s1,R1,cheeks,3\r\n2,s1,R2,cheeks,3\r\n")
            )
        );
    }

    [Fact]
    public void The_first_hundred_faults_are_shown_and_the_rest_counted()
    {
        string rows = string.Concat(Enumerable.Repeat("R1,hammer\r\n", 130));
        CsvImported imported = CsvSet.Import([RoundTrip.File("tools.csv", "tool,form\r\n" + rows)], Today);
        Assert.Equal(100, imported.Faults.Length);
        Assert.Equal(159, imported.MoreFaults);
        Assert.Empty(imported.Entries);
    }

    [Fact]
    public void A_file_that_does_not_belong_to_the_set_is_named_and_other_files_are_passed_over()
    {
        Assert.StartsWith(
            "reading.csv:1: no file of this name belongs to the set; there are shop.csv, eyes.csv, ",
            Faults(("tools.csv", Tools), ("reading.csv", "tool\r\n"), ("README.txt", "hello")),
            StringComparison.Ordinal
        );
        Assert.StartsWith(
            "tools.csv:1: there is no file of the set here; it is made of shop.csv, ",
            Faults(("README.txt", "hello")),
            StringComparison.Ordinal
        );
    }

    private static string Faults(params (string Name, string Text)[] files)
    {
        CsvImported imported = CsvSet.Import(files.Select(file => RoundTrip.File(file.Name, file.Text)), Today);
        Assert.True(imported.Faults.IsEmpty || imported.Entries.IsEmpty);
        return RoundTrip.FaultsOf(imported);
    }
}
