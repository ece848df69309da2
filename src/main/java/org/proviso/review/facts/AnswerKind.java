package org.proviso.review.facts;

import org.proviso.core.Code;

/** How a person came to record a fact of a case. */
public enum AnswerKind implements Code {
    /** Answered otherwise than the records, with a reason. */
    OTHERWISE,
    /** Looked at the signature in the poll book of another location. */
    POLL_BOOK_SEEN,
    FIRST_SIGNATURE_LOOK,
    SECOND_SIGNATURE_LOOK,
    /** Heard from another desk: what the mail-ballot desk answered. */
    OTHER
}
