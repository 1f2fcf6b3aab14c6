namespace ToolWear;

/// <content>What the columns of CSV files and the keys of JSON results mean.</content>
public static partial class Words
{
    internal const string InResults = "in results";

    /// <summary>Name, unit and meaning of each, a line each with | between; money is the shop's own.</summary>
    internal const string ColumnMeanings = """
        a||the first of two groups that are compared
        a_mm|mm|its length along the eye
        added||tools that came in the year: made in it, or entered in it where the day of making is not known
        after_mm|mm|the size after a rework
        answer||whether to pull a tool before it fails: pull it, use it, not enough data
        area_mm2|mm2|the area of a section
        at_its_limit||yes where a slitter's edge is narrower than its slit needs
        at_risk||tools that still stood just before so many heats
        b||the second of two groups that are compared
        b10|heats|the heats by which one tool in ten has failed
        b_mm|mm|a section's greatest width; empty for a round
        bar||the bars that a batch is cut from
        batch_kg|kg|what the pieces of a batch weigh as cut
        before_mm|mm|the size before a rework
        blows||blows before the tool comes out of the work
        buy||the bars that have to be bought
        by||who measured, looked or found
        cause||why a tool was scrapped: worn, cracked, broken, bent, soft, glass-hard, lost, made-into, other
        causes||what ended tools in the year
        chance_a_lasts_longer|0 to 1|the chance that tools of the first group last longer
        chance_lasts_session|0 to 1|the chance that it is inside its limits after its next usual session
        chance_lasts_session_with_cracks|0 to 1|the same, and that it neither cracks nor breaks
        chance_past_limit|0 to 1|the chance that its wear is past the limit now
        clearance_mm|mm|the least room between two sections; below zero the inner one bursts the outer
        closed||yes where a session has ended, no where it is open
        cooling||what cools the tool between heats: air, dip when black, compressed air, other; in hand-over what to do
        cost|money|what a rework, a batch or a tool cost
        cost_a_finish_heat|money|what a heat on the finish drift costs
        cost_a_head|money|tooling for one head
        cost_a_head_hi90|money|nine times in ten at most so much
        cost_a_head_lo90|money|nine times in ten at least so much
        cost_a_heat|money|tooling for one heat
        cost_a_heat_hi90|money|nine times in ten at most so much
        cost_a_heat_lo90|money|nine times in ten at least so much
        cost_a_rough_heat|money|what a heat on the rough drift costs
        cost_at_best|money|what the heats of a head cost at the best number, were there parts of heats
        cost_at_whole|money|the same at the better of the two whole numbers about it
        cost_of_changing|money|what changing the tool before the session costs
        cost_of_staying|money|what it costs on the average to leave it in
        cost_without|money|what the heats of a head cost without rough heats
        cover|0 to 1|the certainty, by the number of new tools, none first
        crossed_out_by||the entry that crosses this one out
        cut_mm|mm|how long a piece is cut for one tool
        deeper_mm|mm|how much deeper than its present mark the drift is driven; below zero less deep
        demand_heats|heats|weighted heats that the open orders ask of a place
        depth_mm|mm|how deep the eye goes through the head
        done_on||the session day on which an order is done
        dressings||how often the edge was dressed
        dressings_left||how often it can still be dressed before it is too short
        drift_mm|mm|the cold size of the drift that makes an eye
        driven||how an eye is driven: both faces, one face, through
        due_on||the day an order is due
        ended||tools whose life had ended by the end of the year for a cause that lies in the tool, with heats from new known
        entered_on||the shop's day on which an entry was made
        entries||what happened to the tool, entry by entry
        entry||the entry's number in the ledger; in the CSV set the rank of the row among all rows of all event files
        expected||how many new tools are needed on the average
        expected_from_mm|mm|the least size that a sound reading is expected to have, 49 times in 50 with the greatest
        expected_to_mm|mm|the greatest such size
        eye||the eye's name; in card and make-into the figures of the eye
        eye_judged||how the eye lies to its tolerance, in words
        eye_length_mm|mm|the length of the cold eye that the drift makes now
        eye_mm|mm|the cold size of an eye
        eye_width_mm|mm|the width of the cold eye that the drift makes now
        failed||1 where the tool cracked or broke, 0 where it did not; tools that failed at so many heats
        failures||tools that cracked or broke
        far_length_mm|mm|the length of a slip-on eye at its far face
        far_width_mm|mm|its width there
        finding||what was found: sound, mushroomed, chipped, cracked, broken, bent, soft, glass-hard, picked-up, heat-checked, blunt, loose-handle, stuck, mark-gone
        first_guess|heats|heats a head by the smith's first guess
        fit||how the handle sits in the eye: wedged, slip-on
        fitted_mm|mm|the wear to be expected at that reading by the forecast of today
        forge_by||the day by which to forge a batch
        forge_hours|hours|hours at the forge for one tool
        form||the form of tool: drift, slitter, slot punch, punch, fuller, flatter, swage, hot cut, cut-off, die, bolster, other
        found_on_heads||measured heads that the prediction was corrected by
        from_heats|heats|heats a tool had when the records began; empty means from new
        from_mark_mm|mm|how far from the shank mark towards the nose; below zero towards the struck end
        gauge||the gauge mark's name; in rack the one that ends the tool first
        gauges||the gauge marks of a tool, as in forecast
        greatest_length_mm|mm|the greatest length that the eye's tolerance allows
        greatest_mm|mm|the greatest usable size at a gauge mark
        greatest_width_mm|mm|the greatest width that the eye's tolerance allows
        grind_hours|hours|hours of grinding for one tool
        group||the kind and the steel: tools of a group share what is learned most
        guess_heats|heats|how many heats one of these usually lasts, by the smith's guess
        hand||who worked in a session
        handle||the handle's name
        handle_fits||how the handle sat in a measured eye: yes, tight, loose
        heads||heads forged in a session, or ordered
        heads_late||heads of an order that come after its due day
        heats|heats|in heats.csv as worked, in halves; in histories and survival weighted by the work, since the stretch began
        heats_a_dressing|heats|weighted heats between two dressings
        heats_a_head|heats|heats of a stage for one head
        heats_before|heats|heats a tool had before these records
        heats_before_how||how those are known: counted, estimated, unknown
        heats_by_length|heats|heats until dressing has made it too short
        heats_by_records|heats|heats a head by closed sessions; empty until two tell them
        heats_from||where the heats a head come from: records, first guess
        heats_from_new|heats|weighted heats of the tool since it was made
        heats_left|heats|about so many weighted heats until the limit, the middle of the forecast
        heats_now|heats|weighted heats since the last rework of that gauge mark
        heats_read|heats|those after which the tool was read before it was reworked or scrapped
        heats_rest_on||what a stage's heats a head rest on
        heats_since|heats|weighted heats since a gauge mark was read
        hi90||nine times in ten at most so much
        hi95|0 to 1|nineteen times in twenty at most so much
        hours|hours|hours that a rework or a batch takes
        how||how heats are known: counted, estimated
        if_forge_by||the day by which to forge under what was supposed
        if_number||how many to forge under what was supposed
        in_service||tools of that place in service that are counted on
        in_use||tools not scrapped at the end of the year, or today
        into||the tool it was made into; the place it could be made into
        kind||form, place and gauge mark: tools of a kind are forecast together, kinds never influence each other
        large_radius_mm|mm|the large radius of a teardrop
        late||yes where the day to forge by is past
        learned||where the heats a head come from: from records, first guess
        least_at||where the room is least: nose, back, cheek, ends
        least_finish_heats|heats|finish heats that a head always needs
        least_length_mm|mm|the least length that the eye's tolerance allows
        least_mm|mm|the least usable size at a gauge mark
        least_overall_mm|mm|the length over all under which a tool is too short
        least_width_mm|mm|the least width that the eye's tolerance allows
        left_hi80|heats|eight times in ten at most so many heats are left
        left_hi90|heats|nine times in ten at most so many heats are left; empty where the readings set no bound
        left_lo80|heats|eight times in ten at least so many heats are left
        left_lo90|heats|nine times in ten at least so many heats are left
        left_on_the_shelf|money|what is left of tools that were made for an odd eye
        length_mm|mm|a length along the eye, of a bar or of a piece to cut
        length_there_mm|mm|the eye's length at the new mark
        life_heats|heats|the middle of its life since it was new or reworked: heats now and heats left together
        life_hi90|heats|nine times in ten it lasts at most so many heats
        life_lo90|heats|nine times in ten it lasts at least so many heats
        life_ratio||how many times as long the first group lasts as the second
        limit_mm|mm|the wear at which the tool is done
        line_rate_mm_per_heat|mm a heat|the slope of a straight line through this tool's own readings
        line_readings||readings that the line rests on
        line_se|mm a heat|the standard error of that slope
        lo90||nine times in ten at least so much
        lo95|0 to 1|nineteen times in twenty at least so much
        load||how hard a pattern's work is against the usual, which is 1
        log_likelihood||the logarithm of the likelihood at the best Weibull curve
        looked_for_on||the day of the last stock-take that asked for the tool
        looked_over||times that a tool was looked over in the year
        looked_over_on||the day the tool was last looked over
        loss_a_dressing_mm|mm|what one dressing takes off the length
        lubricant||the lubricant of the session, else the shop's usual
        made_into||what the tool can still be made into
        made_mm|mm|the size at which a tool in use was made, where known
        made_on||the day the tool was made
        mark_mm|mm|the mark to drive to, from the shank mark
        mass_kg|kg|a mass of steel
        mean_shape||the mean of the Weibull shape, prior and records together
        measured||how much was measured in the year
        measures||what a gauge mark measures: length, width, nose-radius, edge, flat, overall, other
        median_heats|heats|half of such tools have ended by so many weighted heats from new; empty is not enough data
        median_hi95|heats|nineteen times in twenty at most so many; empty where the records set no bound
        median_life|heats|the heats by which half have failed
        median_lo95|heats|nineteen times in twenty at least so many
        missing||yes where the tool was not seen then and nothing shows it since
        more_without_rough|heats|finish heats that it needs besides where there are no rough ones
        needed||the least number of new tools that is sure enough
        new_a_heat|money|a heat of a new tool in the place of a worn one
        new_a_heat_hi90|money|nine times in ten at most so much
        new_a_heat_lo90|money|nine times in ten at least so much
        new_mark_mm|mm|the new mark, from the shank mark
        new_tools||how many new tools
        next||yes for the tool to take next
        no_depth||why no depth makes the eye any more
        nose_radius_mm|mm|the radius of the nose of an eye
        not_noted||parts of the cost that nobody ever noted
        note||a note, as it was typed
        number||how many tools of a batch
        of_other_eyes||tools of other eyes that serve
        off_each_cheek_mm|mm|what has to come off each cheek
        off_each_end_mm|mm|what has to come off each end
        on||the day, as year-month-day
        order||the order's name
        overall_mm|mm|the length over all
        p_faster|0 to 1|the chance that the last part of this sort's wear, past half its limit, runs faster
        p_first_cut|0 to 1|the chance that this sort has a first cut: a share of the limit gone in the first few heats
        p_slower|0 to 1|the chance that the last part of this sort's wear, past half its limit, runs slower
        part||the part of a tool: nose, taper, full-size, shank, struck-end, body
        pattern||the pattern's name
        peg||where a tool or a bar hangs
        perimeter_mm|mm|the way round a section
        piece_kg|kg|what one piece weighs as cut
        place||the place in the series: opener, rough, second, finish; none where empty
        possible||yes where it can be
        predicted_length_mm|mm|the eye's length by shrinkage alone
        predicted_width_mm|mm|its width by shrinkage alone
        pull_at_heats|heats|the heats from new at which pulling such tools costs least
        radius_mm|mm|the edge radius of a rectangle or the nose radius of a teardrop
        rate_mm_per_heat|mm a heat|the wear a weighted heat over that life, from its start to the limit
        rate_ratio||how many times as fast the first group wears as the second
        read_on||the day of the last reading
        readings||caliper readings since the last rework; in card the readings themselves
        ready_by||the session day before which the first of a batch must be ready
        ready_days|days|from forging to ready: hardening and grinding
        reforge|money|what re-forging a worn tool comes to
        resolution_mm|mm|what the caliper reads to
        rework_a_heat|money|a heat that a rework gains
        rough_heats|heats|the best number of rough heats a head
        rough_heats_that_help|heats|rough heats that take two thirds of those besides away
        run_to_failure_a_heat|money|what a heat costs where tools are run till they fail
        saving|money|what the better number saves on a head against none
        scale||the scale of the Weibull curve, in heats
        scrap_length_mm|mm|the drift's length under which its eye is out of tolerance
        scrap_mm|mm|the size at which a tool in use is scrapped
        scrap_width_mm|mm|the drift's width under which its eye is out of tolerance
        scrapped||scrapped tools: in costs those whose lives are known, in year those scrapped in it
        se|0 to 1|the standard error of the share that survives
        seat_mm|mm|how far from its place a slip-on head sits on the handle
        seat_tolerance_mm|mm|how far it may sit either way
        section||the shape cut across: round, rectangle, oval, teardrop, other
        seen||whether a tool was there at a stock-take: yes, no
        seen_as||what shows it: stock-take, heats, reading, finding, rework, moved, entered
        seen_on||the last day on which the ledger shows that the tool was there
        segment||the stretch between two reworks of a gauge mark, 1 first
        session||the session's name
        session_heats|heats|heats of the next usual session
        sessions||sessions in the year; in patterns those that the records are of; in heat-split those that its figures rest on, 0 where they were given
        set_cost|money|a whole set of tools for an odd eye
        set_cost_a_head|money|the same for one head
        setting||the setting's name: toolwear set --help
        shape||the shape of the Weibull curve; a shape in words
        share_read|0 to 1|the share of the heats that a reading followed
        shift_mm|mm|how much deeper a tapered drift is driven
        size_mm|mm|the size that the caliper read, or the size now
        slit||the figures of a slit
        slit_mm|mm|the slit that an edge opens
        slit_needs_mm|mm|the edge that the wanted slit needs
        slit_stretch||how much the slit stretches round the eye, as a share
        slit_warning||what to mind of the slit
        stage||the stage of a pattern
        stages||stages of a pattern
        start_mm|mm|the starting size at a gauge mark; for fit the wear at the start of the segment
        started_as||how a tool came into the records: new, in use
        state||of a tool: in service, set aside, scrapped; of an order: open, done, dropped
        steel_cost|money|what a tool's steel cost
        step||the place in the order, 1 first
        stock||which bars a batch is cut from, in words
        stop_after_heats|heats|heats of that work after which the tool is near its limit
        stretch||how much a slit stretches, as a share
        sure|0 to 1|the certainty that was asked for or that a batch gives
        sure_with_one_fewer|0 to 1|the certainty with one tool fewer
        sure_without|0 to 1|the certainty with no new tool
        survival||the steps of the survival curve
        surviving|0 to 1|the share that has not failed by so many heats
        taper||the taper of a handle, mm of size a mm
        taper_length||mm of length a mm of depth, over the whole length
        taper_width||mm of width a mm of depth, over the whole width
        then_take||tools to take when the first has done its heats, in order
        tool||the tool's mark
        tools||tools that a figure rests on
        treat_cost|money|what hardening a tool cost
        treated||whether tools of a place are hardened: yes, no
        true_cost_a_head|money|tooling for one head as found on scrapped tools
        true_cost_a_heat|money|tooling for one heat as found on scrapped tools
        true_life_heats|heats|the life as found on scrapped tools
        true_stages||stages that the found cost covers
        uncounted||sessions in which nobody counted the heads
        until_near_heats|heats|weighted heats until the tool is near its limit, as at the hammer
        usual||the value where the shop said nothing
        value||the setting's value; empty is the usual
        verdict||out, dress first, past its limit, near its limit, look it over, measure it, inside its limit; in comparisons who lasts longer
        volume_mm3|mm3|a volume of steel
        waist_length_mm|mm|the length of a wedged eye in the middle of its depth
        waist_width_mm|mm|its width there
        warning||what to mind
        wear_cost_a_head|money|what tools lose in worth for one head
        wear_mm|mm|start less size, or size less start where it wears larger, since the stretch began
        wear_now_mm|mm|the wear to be expected now
        wears||the main direction of wear: smaller, larger
        weibull||the Weibull curve of the records alone; null where they are too few
        weibull_with_prior||the Weibull curve of records and prior together
        what||what was done or happened, in words; of loans: out, back; of reworks: dressed, re-forged, straightened, welded, re-hardened
        where||where an eye was measured: top, waist, bottom
        whole_heats|heats|the better whole number of rough heats a head
        why||one sentence why
        width_mm|mm|a width across the eye, or the short way of a bar
        width_there_mm|mm|the eye's width at the new mark
        without_stages||stages that nothing is known of
        work||the work: slitting, opening, cheeks, sizing, fullering, other
        worn_out||tools scrapped as worn
        year||the year
        """;
}
