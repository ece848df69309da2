package org.proviso.core.adjudication.finding;

import java.time.LocalDateTime;
import org.proviso.core.rules.Ask;

/**
 * What a voter brought after election day. The stamp of its arrival decides whether it is in time, never the moment
 * it was keyed; both local to the county.
 */
public record CureEvidence(Ask ask, LocalDateTime receivedAt, LocalDateTime recordedAt, String words) {

    Evidence evidence() {
        return new Evidence(
                EvidenceSource.CURE, words + ", stamped " + DateWords.moment(receivedAt), receivedAt, recordedAt);
    }
}
