package org.proviso.core.adjudication.questions;

import org.proviso.core.Code;

/** How an ask stands at the moment of the assessment. */
public enum AskStatus implements Code {
    /** The voter still has time. */
    RUNNING,
    /** Time ran out, and the notice is logged as sent in time, or the law asks for none. */
    OVER,
    /** Time ran out, and the notice that the law demands is not logged: a person must look. */
    OVER_WITHOUT_NOTICE,
    /** No source says until when: the office must rule. */
    NOT_SETTLED
}
