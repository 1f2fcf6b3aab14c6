namespace ToolWear;

/// <content>What the columns of CSV files and the keys of JSON results mean.</content>
public static partial class Words
{
    internal const string InResults = "in results";

    /// <summary>Name, unit and meaning of each, a line each with | between; money is the shop's own.</summary>
    internal const string ColumnMeanings = """
        a_mm|mm|its length along the eye
        after_mm|mm|the size after a rework
        answer||whether to pull a tool before it fails: pull it, use it, not enough data
        area_mm2|mm2|the area of a section
        at_risk||tools that still stood just before so many heats
        b10|heats|the heats by which one tool in ten has failed
        b_mm|mm|a section's greatest width; empty for a round
        before_mm|mm|the size before a rework
        blows||blows before the tool comes out of the work
        by||who measured, looked or found
        cause||why a tool was scrapped: worn, cracked, broken, bent, soft, glass-hard, lost, made-into, other
        closed||yes where a session has ended, no where it is open
        cooling||what cools the tool between heats: air, dip when black, compressed air, other; in hand-over what to do
        cost|money|what a rework, a batch or a tool cost
        cost_a_finish_heat|money|what a heat on the finish drift costs
        cost_a_rough_heat|money|what a heat on the rough drift costs
        cost_at_best|money|what the heats of a head cost at the best number, were there parts of heats
        cost_at_whole|money|the same at the better of the two whole numbers about it
        cost_of_changing|money|what changing the tool before the session costs
        cost_of_staying|money|what it costs on the average to leave it in
        cost_without|money|what the heats of a head cost without rough heats
        cover|0 to 1|the certainty, by the number of new tools, none first
        demand_heats|heats|weighted heats that the open orders ask of a place
        depth_mm|mm|how deep the eye goes through the head
        drift_mm|mm|the cold size of the drift that makes an eye
        driven||how an eye is driven: both faces, one face, through
        due_on||the day an order is due
        entry||the entry's number in the ledger; in the CSV set the rank of the row among all rows of all event files
        expected||how many new tools are needed on the average
        eye||the eye's name; in card and make-into the figures of the eye
        eye_mm|mm|the cold size of an eye
        failed||1 where the tool cracked or broke, 0 where it did not; tools that failed at so many heats
        failures||tools that cracked or broke
        finding||what was found: sound, mushroomed, chipped, cracked, broken, bent, soft, glass-hard, picked-up, heat-checked, blunt, loose-handle, stuck, mark-gone
        fit||how the handle sits in the eye: wedged, slip-on
        forge_hours|hours|hours at the forge for one tool
        form||the form of tool: drift, slitter, slot punch, punch, fuller, flatter, swage, hot cut, cut-off, die, bolster, other
        from_heats|heats|heats a tool had when the records began; empty means from new
        from_mark_mm|mm|how far from the shank mark towards the nose; below zero towards the struck end
        gauge||the gauge mark's name; in rack the one that ends the tool first
        greatest_length_mm|mm|the greatest length that the eye's tolerance allows
        greatest_mm|mm|the greatest usable size at a gauge mark
        greatest_width_mm|mm|the greatest width that the eye's tolerance allows
        grind_hours|hours|hours of grinding for one tool
        guess_heats|heats|how many heats one of these usually lasts, by the smith's guess
        hand||who worked in a session
        handle||the handle's name
        handle_fits||how the handle sat in a measured eye: yes, tight, loose
        heads||heads forged in a session, or ordered
        heats|heats|in heats.csv as worked, in halves; in histories and survival weighted by the work, since the stretch began
        heats_a_head|heats|heats of a stage for one head
        heats_before|heats|heats a tool had before these records
        heats_before_how||how those are known: counted, estimated, unknown
        heats_from_new|heats|weighted heats of the tool since it was made
        hi95|0 to 1|nineteen times in twenty at most so much
        hours|hours|hours that a rework or a batch takes
        how||how heats are known: counted, estimated
        in_service||tools of that place in service that are counted on
        into||the tool it was made into; the place it could be made into
        large_radius_mm|mm|the large radius of a teardrop
        learned||where the heats a head come from: from records, first guess
        least_finish_heats|heats|finish heats that a head always needs
        least_length_mm|mm|the least length that the eye's tolerance allows
        least_mm|mm|the least usable size at a gauge mark
        least_width_mm|mm|the least width that the eye's tolerance allows
        length_mm|mm|a length along the eye, of a bar or of a piece to cut
        lo95|0 to 1|nineteen times in twenty at least so much
        load||how hard a pattern's work is against the usual, which is 1
        log_likelihood||the logarithm of the likelihood at the best Weibull curve
        lubricant||the lubricant of the session, else the shop's usual
        made_mm|mm|the size at which a tool in use was made, where known
        made_on||the day the tool was made
        mass_kg|kg|a mass of steel
        mean_shape||the mean of the Weibull shape, prior and records together
        measures||what a gauge mark measures: length, width, nose-radius, edge, flat, overall, other
        median_life|heats|the heats by which half have failed
        more_without_rough|heats|finish heats that it needs besides where there are no rough ones
        needed||the least number of new tools that is sure enough
        new_a_heat|money|a heat of a new tool in the place of a worn one
        new_a_heat_hi90|money|nine times in ten at most so much
        new_a_heat_lo90|money|nine times in ten at least so much
        new_tools||how many new tools
        nose_radius_mm|mm|the radius of the nose of an eye
        note||a note, as it was typed
        on||the day, as year-month-day
        order||the order's name
        part||the part of a tool: nose, taper, full-size, shank, struck-end, body
        pattern||the pattern's name
        peg||where a tool or a bar hangs
        perimeter_mm|mm|the way round a section
        place||the place in the series: opener, rough, second, finish; none where empty
        pull_at_heats|heats|the heats from new at which pulling such tools costs least
        radius_mm|mm|the edge radius of a rectangle or the nose radius of a teardrop
        ready_days|days|from forging to ready: hardening and grinding
        reforge|money|what re-forging a worn tool comes to
        resolution_mm|mm|what the caliper reads to
        rework_a_heat|money|a heat that a rework gains
        rough_heats|heats|the best number of rough heats a head
        rough_heats_that_help|heats|rough heats that take two thirds of those besides away
        run_to_failure_a_heat|money|what a heat costs where tools are run till they fail
        saving|money|what the better number saves on a head against none
        scale||the scale of the Weibull curve, in heats
        se|0 to 1|the standard error of the share that survives
        seat_tolerance_mm|mm|how far it may sit either way
        section||the shape cut across: round, rectangle, oval, teardrop, other
        session||the session's name
        session_heats|heats|heats of the next usual session
        setting||the setting's name: toolwear set --help
        shape||the shape of the Weibull curve; a shape in words
        shift_mm|mm|how much deeper a tapered drift is driven
        size_mm|mm|the size that the caliper read, or the size now
        stage||the stage of a pattern
        start_mm|mm|the starting size at a gauge mark; for fit the wear at the start of the segment
        started_as||how a tool came into the records: new, in use
        state||of a tool: in service, set aside, scrapped; of an order: open, done, dropped
        steel_cost|money|what a tool's steel cost
        stretch||how much a slit stretches, as a share
        sure_without|0 to 1|the certainty with no new tool
        survival||the steps of the survival curve
        surviving|0 to 1|the share that has not failed by so many heats
        taper||the taper of a handle, mm of size a mm
        taper_length||mm of length a mm of depth, over the whole length
        taper_width||mm of width a mm of depth, over the whole width
        tool||the tool's mark
        tools||tools that a figure rests on
        treat_cost|money|what hardening a tool cost
        treated||whether tools of a place are hardened: yes, no
        usual||the value where the shop said nothing
        value||the setting's value; empty is the usual
        volume_mm3|mm3|a volume of steel
        warning||what to mind
        wears||the main direction of wear: smaller, larger
        weibull||the Weibull curve of the records alone; null where they are too few
        weibull_with_prior||the Weibull curve of records and prior together
        what||what was done or happened, in words; of loans: out, back; of reworks: dressed, re-forged, straightened, welded, re-hardened
        where||where an eye was measured: top, waist, bottom
        whole_heats|heats|the better whole number of rough heats a head
        why||one sentence why
        width_mm|mm|a width across the eye, or the short way of a bar
        work||the work: slitting, opening, cheeks, sizing, fullering, other
        """;
}
