package org.proviso.board.motion;

import jakarta.validation.constraints.NotNull;
import org.proviso.board.MotionKey;
import org.proviso.core.UserName;
import org.proviso.core.deciding.Vote;

/** Notes how a member votes on a motion that was put; a vote noted again replaces the first until the vote closes. */
public record CastVote(
        @NotNull MotionKey motion,
        @NotNull UserName userName,
        @NotNull Vote vote) {}
