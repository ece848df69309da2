package org.proviso.notices.told;

import java.time.LocalDateTime;
import org.jspecify.annotations.Nullable;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.rules.Ask;

/**
 * A voter whose newest notice of an ask gave another date than the board's meeting is at now (null where none is called any
 * more); both on the county's clock. A date before the meeting is not wrong: the voter has more time than was told.
 */
public record ToldDate(
        EnvelopeKey key,
        int noticeNo,
        Ask ask,
        LocalDateTime told,
        @Nullable LocalDateTime meeting) {

    /** Whether the voter relies on a time after the meeting, when it is too late. */
    public boolean isLaterThanTheMeeting() {
        return meeting != null && told.isAfter(meeting);
    }
}
