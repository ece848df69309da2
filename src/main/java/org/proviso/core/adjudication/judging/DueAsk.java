package org.proviso.core.adjudication.judging;

import java.util.Optional;
import org.proviso.core.adjudication.questions.AskStatus;
import org.proviso.core.calendar.Deadline;
import org.proviso.core.rules.Ask;
import org.proviso.core.rules.Reason;

/**
 * What the voter may still bring for a reason, and until when; its notice is due at once. Without a deadline where no
 * source gives one, or where {@code untilTheMeeting}: the voter has until the board meets, and no meeting is called yet.
 */
public record DueAsk(Ask ask, Reason reason, AskStatus clock, Optional<Deadline> deadline, boolean untilTheMeeting) {}
