package org.proviso.board;

import org.proviso.review.CaseKey;

/** Which session of an election's deciding bodies, numbered from 1 over all of them. */
public record SessionKey(String electionId, int sessionNo) {

    public CaseKey caseOf(String envelopeNo) {
        return new CaseKey(electionId, envelopeNo);
    }

    /** As the ledger names it. */
    public String subject() {
        return "session-" + sessionNo;
    }
}
