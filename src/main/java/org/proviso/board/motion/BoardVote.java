package org.proviso.board.motion;

import java.time.Instant;
import org.jspecify.annotations.Nullable;
import org.proviso.core.UserName;
import org.proviso.core.deciding.Vote;

/**
 * One member's vote on a motion, and who noted it: the member, or another who keeps the record. {@code confirmed} is what
 * the member says of a vote that another noted: theirs or not; null while they said nothing.
 */
public record BoardVote(
        UserName userName,
        Vote vote,
        String notedBy,
        Instant castAt,
        @Nullable Boolean confirmed) {

    /** Whether another member recorded it for this one; that one is recused is no vote to confirm. */
    public boolean isByAnother() {
        return vote != Vote.RECUSED && !notedBy.equals(userName.value());
    }
}
