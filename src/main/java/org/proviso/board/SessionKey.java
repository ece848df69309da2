package org.proviso.board;

import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;

/** Which session of an election's deciding bodies, numbered from 1 over all of them. */
public record SessionKey(ElectionId electionId, int sessionNo) {

    public EnvelopeKey caseOf(EnvelopeNumber envelopeNo) {
        return new EnvelopeKey(electionId, envelopeNo);
    }

    /** As the ledger names it. */
    public String subject() {
        return "session-" + sessionNo;
    }
}
