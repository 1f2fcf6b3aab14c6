namespace ToolWear;

/// <content>What the columns of CSV files and the keys of JSON results mean.</content>
public static partial class Words
{
    internal const string InResults = "in results";

    /// <summary>Name, unit and meaning of each, a line each with | between; money is the shop's own.</summary>
    internal const string ColumnMeanings = """
        answer||whether to pull a tool before it fails: pull it, use it, not enough data
        area_mm2|mm2|the area of a section
        at_risk||tools that still stood just before so many heats
        b10|heats|the heats by which one tool in ten has failed
        cooling||what to do between heats
        cost|money|what a batch or a tool cost
        cost_a_finish_heat|money|what a heat on the finish drift costs
        cost_a_rough_heat|money|what a heat on the rough drift costs
        cost_at_best|money|what the heats of a head cost at the best number, were there parts of heats
        cost_at_whole|money|the same at the better of the two whole numbers about it
        cost_of_changing|money|what changing the tool before the session costs
        cost_of_staying|money|what it costs on the average to leave it in
        cost_without|money|what the heats of a head cost without rough heats
        cover|0 to 1|the certainty, by the number of new tools, none first
        demand_heats|heats|weighted heats that the open orders ask of a place
        drift_mm|mm|the cold size of the drift that makes an eye
        entry||the entry's number in the ledger; in the CSV set the rank of the row among all rows of all event files
        expected||how many new tools are needed on the average
        eye||the figures of the eye
        eye_mm|mm|the cold size of an eye
        failed||1 where the tool cracked or broke, 0 where it did not; tools that failed at so many heats
        failures||tools that cracked or broke
        from_heats|heats|heats a tool had when the records began; empty means from new
        from_mark_mm|mm|below zero towards the struck end
        gauge||the gauge mark that ends the tool first
        heats|heats|weighted by the work, since the stretch began
        heats_from_new|heats|weighted heats of the tool since it was made
        hi95|0 to 1|nineteen times in twenty at most so much
        hours|hours|hours that a batch takes
        in_service||tools of that place in service that are counted on
        into||the place it could be made into
        learned||where the heats a head come from: from records, first guess
        least_finish_heats|heats|finish heats that a head always needs
        length_mm|mm|the length of a piece to cut
        lo95|0 to 1|nineteen times in twenty at least so much
        log_likelihood||the logarithm of the likelihood at the best Weibull curve
        mass_kg|kg|a mass of steel
        mean_shape||the mean of the Weibull shape, prior and records together
        median_life|heats|the heats by which half have failed
        more_without_rough|heats|finish heats that it needs besides where there are no rough ones
        needed||the least number of new tools that is sure enough
        new_a_heat|money|a heat of a new tool in the place of a worn one
        new_a_heat_hi90|money|nine times in ten at most so much
        new_a_heat_lo90|money|nine times in ten at least so much
        new_tools||how many new tools
        perimeter_mm|mm|the way round a section
        pull_at_heats|heats|the heats from new at which pulling such tools costs least
        reforge|money|what re-forging a worn tool comes to
        rework_a_heat|money|a heat that a rework gains
        rough_heats|heats|the best number of rough heats a head
        rough_heats_that_help|heats|rough heats that take two thirds of those besides away
        run_to_failure_a_heat|money|what a heat costs where tools are run till they fail
        saving|money|what the better number saves on a head against none
        scale||the scale of the Weibull curve, in heats
        se|0 to 1|the standard error of the share that survives
        session_heats|heats|heats of the next usual session
        shape||the shape of the Weibull curve; a shape in words
        shift_mm|mm|how much deeper a tapered drift is driven
        start_mm|mm|the wear at the start of the segment
        state||of a tool: in service, set aside, scrapped
        stretch||how much a slit stretches, as a share
        sure_without|0 to 1|the certainty with no new tool
        survival||the steps of the survival curve
        surviving|0 to 1|the share that has not failed by so many heats
        tools||tools that a figure rests on
        usual||the value where the shop said nothing
        volume_mm3|mm3|a volume of steel
        warning||what to mind
        weibull||the Weibull curve of the records alone; null where they are too few
        weibull_with_prior||the Weibull curve of records and prior together
        what||what happened, in words
        whole_heats|heats|the better whole number of rough heats a head
        why||one sentence why
        """;
}
