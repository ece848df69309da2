package org.proviso.intake.correction;

import java.util.LinkedHashMap;
import java.util.Map;
import org.proviso.core.Envelope;
import org.proviso.intake.CodeColumn;

/** Where and how an envelope was cast, box by box as text, by the names that the columns of {@code envelopes.csv} have. */
final class CastBoxes {

    private CastBoxes() {}

    static Map<String, String> of(Envelope.Cast cast) {
        Map<String, String> boxes = new LinkedHashMap<>();
        boxes.put("voting_location", cast.votingLocation());
        boxes.put("precinct_cast", cast.precinct());
        boxes.put("ballot_style_cast", cast.ballotStyle());
        boxes.put("party_ballot_cast", cast.partyBallot());
        boxes.put("cast_at", cast.at() == null ? "" : cast.at().toString());
        boxes.put("extended_hours", CodeColumn.word(cast.extendedHours()));
        boxes.put("in_line_at_close", CodeColumn.word(cast.inLineAtClose()));
        boxes.put(
                "issue_reasons",
                CodeColumn.joined(cast.issueReasons().stream().sorted().toList()));
        return boxes;
    }
}
