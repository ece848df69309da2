package org.proviso.review.facts;

import org.proviso.core.Code;

/** How a person came to record a fact of a case. */
public enum AnswerKind implements Code {
    /** Answered otherwise than the records, with a reason. */
    OTHERWISE,
    /** Looked at the signature in the poll book of another location. */
    POLL_BOOK_SEEN,
    /** A look at the signature by itself: the first, or one by somebody who knew of the first. */
    FIRST_SIGNATURE_LOOK,
    /** The look of a second reviewer who did not know of the first. */
    SECOND_SIGNATURE_LOOK,
    /** Heard from another desk: what the mail-ballot desk answered. */
    OTHER
}
