package org.proviso.core.adjudication.finding;

import org.proviso.core.Code;

/** Where a piece of evidence comes from. */
public enum EvidenceSource implements Code {
    ENVELOPE,
    ROLL,
    MATCH,
    STREET_FILE,
    MAIL_BALLOT_RECORD,
    POLL_BOOK,
    STATE_LIST,
    OTHER_ENVELOPES,
    COURT,
    CURE,
    PERSON
}
