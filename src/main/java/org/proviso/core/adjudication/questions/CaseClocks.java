package org.proviso.core.adjudication.questions;

import java.util.Optional;
import org.proviso.core.calendar.Deadline;
import org.proviso.core.rules.Ask;

/** How the deadlines of a case stand at the as-of moment. There is no other clock. */
public interface CaseClocks {

    AskStatus ask(Ask ask);

    /** The deadline of an ask, where one can be computed. */
    Optional<Deadline> deadline(Ask ask);

    /** Whether the deadline for mail ballots to arrive has passed; not when there is none or nobody knows it. */
    boolean mailReceiptPassed();
}
