package org.proviso.review;

import org.proviso.core.act.Refusal;

/** What an act does to a case. */
public sealed interface CaseTransition {

    /** The case goes on to this state. */
    record To(CaseState state) implements CaseTransition {}

    /** The act is not legal in the state the case is in. */
    record Refused(Refusal refusal) implements CaseTransition {}
}
