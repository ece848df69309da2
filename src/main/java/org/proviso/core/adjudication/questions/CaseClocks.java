package org.proviso.core.adjudication.questions;

import java.util.Optional;
import org.proviso.core.calendar.Deadline;
import org.proviso.core.rules.Ask;

/** The state of a case's deadlines at the as-of time. There is no other clock. */
public interface CaseClocks {

    AskStatus ask(Ask ask);

    /** The deadline of an ask, where one can be computed. */
    Optional<Deadline> deadline(Ask ask);

    /** Whether the voter has until the board meets, and no meeting is called yet. */
    boolean waitsForTheMeeting(Ask ask);

    /** Whether the deadline for mail ballots to arrive has passed; false when there is none or it is unknown. */
    boolean mailReceiptPassed();
}
