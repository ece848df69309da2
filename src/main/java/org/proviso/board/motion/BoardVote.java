package org.proviso.board.motion;

import java.time.Instant;
import org.proviso.core.UserName;
import org.proviso.core.deciding.Vote;

/** One member's vote on a motion, and who noted it: the member, or another who keeps the record. */
public record BoardVote(UserName userName, Vote vote, String notedBy, Instant castAt) {}
