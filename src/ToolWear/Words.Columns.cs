namespace ToolWear;

/// <content>What the columns of CSV files and the keys of JSON results mean.</content>
public static partial class Words
{
    internal const string InResults = "in results";

    /// <summary>Name, unit and meaning of each, a line each with | between; money is the shop's own.</summary>
    internal const string ColumnMeanings = """
        b10|heats|the heats by which one tool in ten has failed
        cooling||what to do between heats
        cost|money|what a batch or a tool cost
        entry||the entry's number in the ledger; in the CSV set the rank of the row among all rows of all event files
        eye||the figures of the eye
        from_heats|heats|heats a tool had when the records began; empty means from new
        from_mark_mm|mm|below zero towards the struck end
        gauge||the gauge mark that ends the tool first
        heats|heats|weighted by the work, since the stretch began
        hours|hours|hours that a batch takes
        into||the place it could be made into
        length_mm|mm|the length of a piece to cut
        log_likelihood||the logarithm of the likelihood at the best Weibull curve
        mean_shape||the mean of the Weibull shape, prior and records together
        median_life|heats|the heats by which half have failed
        scale||the scale of the Weibull curve, in heats
        shape||the shape of the Weibull curve; a shape in words
        start_mm|mm|the wear at the start of the segment
        state||of a tool: in service, set aside, scrapped
        survival||the steps of the survival curve
        tools||tools that a figure rests on
        weibull||the Weibull curve of the records alone; null where they are too few
        weibull_with_prior||the Weibull curve of records and prior together
        what||what happened, in words
        why||one sentence why
        """;
}
