package org.proviso.core.calendar;

import org.proviso.core.Code;

/** The day from which a deadline is counted. */
public enum DeadlineAnchor implements Code {
    ELECTION_DAY,
    NOTICE_SENT,
    FINDING_MADE,
    BOARD_MEETING,
    CERTIFICATION,
    MAIL_RECEIPT;

    /** As it reads in a sentence. */
    public String words() {
        return code().replace('_', ' ');
    }
}
